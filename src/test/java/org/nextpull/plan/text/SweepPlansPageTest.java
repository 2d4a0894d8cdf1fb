package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.channel.Role;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;

/** The handbook page on plans and the plans that ship say what the reader does. */
class SweepPlansPageTest {
    private static final Path PAGE = Path.of("src/site/markdown/sweep-plans.md");
    private static final Path PLANS = Path.of("sweep-plans");
    private static final Pattern RANGE = Pattern.compile("(-?[0-9.]+) to (-?[0-9.]+)");

    private static final String MINIMAL = """
            [band]
            from_rpm = 2000
            to_rpm = 6000
            [timing]
            start_deg = 20
            least_deg = 10
            most_deg = 30
            [mixture]
            start_lambda = 0.87
            richest_lambda = 0.8
            leanest_lambda = 0.95
            [limits]
            lean_lambda = 0.97
            [[wire]]
            """;

    /** A row of the page; {@code table} as its heading writes it. */
    record PageRow(String table, String key, String fallback, String range) {}

    static Stream<PageRow> rows() throws IOException {
        List<PageRow> rows = new ArrayList<>();
        String table = "";
        for (String line : Files.readAllLines(PAGE)) {
            if (line.startsWith("## ")) {
                table = line.substring(3).replace("`", "");
            } else if (table.startsWith("[") && line.startsWith("| `")) {
                String[] cells = line.split("\\|", -1);
                rows.add(new PageRow(table, bare(cells[1]), bare(cells[2]), cells[3].strip()));
            }
        }
        return rows.stream();
    }

    static Stream<PageRow> rowsWithARange() throws IOException {
        return rows().filter(row -> RANGE.matcher(row.range()).matches());
    }

    static Stream<Path> plans() throws IOException {
        try (Stream<Path> files = Files.list(PLANS)) {
            return files.sorted().toList().stream();
        }
    }

    private static String bare(String cell) {
        return cell.strip().replace("`", "");
    }

    /** Each written line as table and line. */
    private static List<String> written(String text) {
        List<String> lines = new ArrayList<>();
        String table = "";
        for (String line : PlanWriter.write(PlanTextTest.read(text)).lines().toList()) {
            if (line.startsWith("[")) {
                table = line;
            } else if (!line.isEmpty()) {
                lines.add(table + " " + line);
            }
        }
        return lines;
    }

    @Test
    void everyKeyThatIsReadIsOnThePageAndNoOther() throws IOException {
        List<String> onPage = rows().map(row -> row.table() + " " + row.key()).toList();
        List<String> read = written(FullPlan.TEXT).stream()
                .map(line -> line.substring(0, line.indexOf(" = ")))
                .distinct()
                .toList();
        assertThat(onPage).doesNotHaveDuplicates().containsAll(read);
        // nitrogen is the one key that the full plan leaves out: a blend of four elements is none that is sold
        assertThat(onPage).hasSize(read.size() + 1).contains("[[blend]] nitrogen");
    }

    @Test
    void everyDefaultIsOnThePage() throws IOException {
        List<String> given =
                MINIMAL.lines().filter(line -> line.contains(" = ")).toList();
        List<String> defaults = written(MINIMAL).stream()
                .filter(line -> given.stream().noneMatch(line::endsWith))
                .toList();
        List<String> onPage = rows().map(row -> row.table() + " " + row.key() + " = " + row.fallback())
                .toList();
        assertThat(onPage).containsAll(defaults);
        long said = rows().filter(
                        row -> !row.fallback().equals("-") && !row.fallback().startsWith("needed"))
                .filter(row -> !row.table().equals("[[blend]]"))
                .count();
        assertThat(defaults).hasSize((int) said);
    }

    @ParameterizedTest
    @MethodSource("rowsWithARange")
    void theReaderKeepsTheRangeOfThePage(PageRow row) {
        Matcher range = RANGE.matcher(row.range());
        assertThat(range.matches()).isTrue();
        double above = Double.parseDouble(range.group(2)) * 2 + 1;
        String value = row.table().equals("[start]") && row.key().endsWith("_c")
                ? "[" + above + ", " + above + "]"
                : String.valueOf(above);
        Finding finding = PlanText.read(row.table() + "\n" + row.key() + " = " + value, "plan.toml").findings().stream()
                .filter(found -> found.code() == FindingCode.PLAN_OUT_OF_RANGE)
                .findFirst()
                .orElseThrow();
        assertThat(finding.text("low")).contains(range.group(1));
        assertThat(finding.text("high")).contains(range.group(2));
    }

    @Test
    void everyCodeAndEveryRoleIsOnThePage() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(Arrays.stream(FindingCode.values())
                        .map(FindingCode::id)
                        .filter(id -> id.startsWith("plan-"))
                        .map(id -> "| `" + id + "` |"))
                .allMatch(page::contains);
        assertThat(Arrays.stream(Role.values()).map(role -> "`" + role.id() + "`"))
                .allMatch(page::contains);
    }

    @ParameterizedTest
    @MethodSource("plans")
    void aPlanThatShipsIsReadWithoutAFinding(Path plan) throws IOException {
        String text = Files.readString(plan);
        var outcome = PlanText.read(text, plan.toString());
        assertThat(outcome.findings()).isEmpty();
        assertThat(outcome.value().orElseThrow().band()).isPresent();
        assertThat(text).startsWith("# Invented");
    }

    @Test
    void thePlansOfTheScenarioShip() throws IOException {
        assertThat(plans().map(plan -> plan.getFileName().toString()))
                .contains(
                        "hatchback-roller-mixture.toml",
                        "hillclimb-e10-mixture.toml",
                        "hillclimb-e10-timing.toml",
                        "hillclimb-knock.toml",
                        "hillclimb-manifold.toml");
    }
}
