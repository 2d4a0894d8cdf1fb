package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
    private static final String HEAD = "| key | default | range | meaning |";

    /** A key with its table. */
    record Listed(PlanTable<?> table, PlanKey<?> key) {
        String row() {
            return key.handbookRow(TableReader.nothing());
        }

        @Override
        public String toString() {
            return table.header() + " " + key.name();
        }
    }

    static Stream<Listed> keys() {
        return PlanKeys.tables().stream().flatMap(table -> table.keys().stream().map(key -> new Listed(table, key)));
    }

    static Stream<Listed> numbers() {
        return keys().filter(listed ->
                listed.key().kind() == KeyKind.NUMBER || listed.key().kind() == KeyKind.WINDOW);
    }

    static Stream<Path> plans() throws IOException {
        try (Stream<Path> files = Files.list(PLANS)) {
            return files.sorted().toList().stream();
        }
    }

    /** The page with the rows of each of its tables made from the list of keys. */
    private static List<String> made(List<String> page) {
        List<String> made = new ArrayList<>();
        String table = "";
        boolean inRows = false;
        for (String line : page) {
            table = line.startsWith("## ") ? line.substring(3).replace("`", "") : table;
            inRows &= line.startsWith("|");
            if (!inRows) {
                made.add(line);
            }
            if (line.equals(HEAD)) {
                inRows = true;
                made.add("|---|---|---|---|");
                String header = table;
                keys().filter(listed -> listed.table().header().equals(header))
                        .forEach(listed -> made.add(listed.row()));
            }
        }
        return made;
    }

    /** The tables of the page are made: with {@code -Dnextpull.remake=true} anew. */
    @Test
    void theTablesOfThePageAreThoseOfTheList() throws IOException {
        if (Boolean.getBoolean("nextpull.remake")) {
            Files.write(PAGE, made(Files.readAllLines(PAGE)));
        }
        List<String> page = Files.readAllLines(PAGE);
        assertThat(page).isEqualTo(made(page));
        assertThat(page.stream()
                        .filter(line -> line.startsWith("## `["))
                        .map(line -> line.substring(3).replace("`", "")))
                .containsExactlyElementsOf(
                        PlanKeys.tables().stream().map(PlanTable::header).toList());
    }

    @Test
    void theFullPlanHasEveryKeyOfTheListButNitrogen() {
        PlanDraft full = PlanDraft.of(FullPlan.TEXT, "full").value().orElseThrow();
        List<String> written = full.tables().stream()
                .flatMap(table -> full.keys(table).stream().map(key -> PlanDraft.listOf(table) + "." + key))
                .distinct()
                .toList();
        // a blend of four elements is none that is sold
        assertThat(keys().map(listed ->
                                listed.table().name() + "." + listed.key().name())
                        .filter(key -> !key.equals("blend.nitrogen")))
                .containsExactlyInAnyOrderElementsOf(written);
    }

    @ParameterizedTest
    @MethodSource("numbers")
    void theReaderKeepsTheRangeThatTheHandbookNames(Listed listed) {
        String value = listed.key().kind() == KeyKind.WINDOW ? "[1e12, 1e12]" : "1e12";
        String text = listed.table().header() + "\n" + listed.key().name() + " = " + value;
        Finding finding = PlanText.read(text, "p").findings().stream()
                .filter(found -> found.code() == FindingCode.PLAN_OUT_OF_RANGE)
                .findFirst()
                .orElseThrow();
        String range = finding.text("low").orElseThrow() + " to "
                + finding.text("high").orElseThrow();
        assertThat(listed.row()).contains(listed.key().name().equals("stop") ? "1, 1.5, 2" : range);
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
