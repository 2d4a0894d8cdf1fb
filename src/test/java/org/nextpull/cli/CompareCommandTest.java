package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Comparing from the command line. All data here is invented. */
class CompareCommandTest {
    private static final String PLAN = """
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            [air]
            standard = "none"
            [band]
            from_rpm = 3000
            to_rpm = 5000
            """;

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSS", Locale.ROOT);

    /** Scatter of invented pulls, percent. */
    private static final double[] SCATTER = {0.11, -0.16, 0.05, 0.14, -0.12, 0.02, -0.08, 0.07};

    @TempDir
    private Path folder;

    @BeforeEach
    void plan() throws IOException {
        write("plan.toml", PLAN);
    }

    private String write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private Run compare(String... more) {
        List<String> args = new ArrayList<>(
                List.of("compare", "--plan", folder.resolve("plan.toml").toString()));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    @Test
    void aTableOfPowerIsComparedInKilowatts() throws IOException {
        String table = write("power.csv", table("ABBAABBA", 2).replace("torque_nm", "power_kw"));
        Run text = compare("--against", "A", table);
        JsonNode one = compare("--json", "--against", "A", table).json().at("/comparisons/0");

        assertThat(text.out()).contains(" kW").doesNotContain("N·m");
        assertThat(one.path("difference_nm").isNull()).isTrue();
        assertThat(one.path("difference_kw").asDouble()).isBetween(2.0, 6.0);
    }

    /** A table of results in which {@code B} is by so many percent better; one letter a pull. */
    private static String table(String labels, double percent) {
        StringBuilder text = new StringBuilder("order,torque_nm,label\n");
        for (int pull = 0; pull < labels.length(); pull++) {
            int step = labels.charAt(pull) - 'A';
            double torque = 200 * (1 + (step * percent + SCATTER[pull % SCATTER.length]) / 100);
            text.append(String.format(Locale.ROOT, "%d,%.3f,%s%n", pull + 1, torque, labels.charAt(pull)));
        }
        return text.toString();
    }

    /** A log with pulls of 2900 to 5100 rpm at the torque of each, idle between them. */
    private static String log(String unit, String column, LocalDateTime start, double... torques) {
        StringBuilder text =
                new StringBuilder("Time,Engine speed [rpm],Torque [" + unit + "],Throttle [%]" + column + "\n");
        double factor = unit.equals("lbf.ft") ? 1.3558179483314003 : 1;
        String value = column.isEmpty() ? "" : "," + column.substring(1).toLowerCase(Locale.ROOT);
        int tick = 0;
        for (double torque : torques) {
            for (int row = 0; row < 260; row++) {
                boolean pull = row >= 60 && row < 200;
                double rpm = pull ? 2800 + 2400.0 * (row - 60) / 140 : 2800;
                text.append(STAMP.format(start.plusNanos(50_000_000L * tick++)))
                        .append(String.format(
                                Locale.ROOT,
                                ",%.1f,%.4f,%d%s%n",
                                rpm,
                                (pull ? torque : 20) / factor,
                                pull ? 100 : 15,
                                value));
            }
        }
        return text.toString();
    }

    @Test
    void aTableWithLabelsGivesTheKeysAndTheOrderColumn() throws IOException {
        Run run = compare("--against", "A", write("day.csv", table("ABBAABBA", 2)), "--json");
        assertThat(run.status()).as(run.err()).isZero();
        JsonNode json = run.json();
        assertThat(json.fieldNames())
                .toIterable()
                .contains(
                        "schema",
                        "reference",
                        "order_from",
                        "interval_percent",
                        "worth_percent",
                        "comparisons",
                        "groups",
                        "findings");
        assertThat(json.at("/order_from").asText()).isEqualTo("order-column");
        assertThat(json.at("/interval_percent").asInt()).isEqualTo(95);
        JsonNode one = json.at("/comparisons/0");
        assertThat(one.fieldNames())
                .toIterable()
                .containsExactly(
                        "label",
                        "difference_nm",
                        "difference_kw",
                        "difference_percent",
                        "low_percent",
                        "high_percent",
                        "verdict",
                        "pulls_needed",
                        "rows");
        assertThat(one.at("/verdict").asText()).isEqualTo("more");
        assertThat(one.at("/difference_kw").isNull()).isTrue();
        assertThat(one.at("/difference_percent").asDouble()).isCloseTo(2, within(0.3));
        assertThat(one.at("/low_percent").asDouble()).isPositive();
    }

    @Test
    void severalLabelsAreRankedWithGroups() throws IOException {
        Run run = compare("--against", "A", write("day.csv", table("ABCDDCBAABCDDCBA", 2)), "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().at("/ranking").toString()).isEqualTo("[\"D\",\"C\",\"B\",\"A\"]");
        assertThat(run.json().at("/groups")).hasSize(4);
        assertThat(run.json().at("/comparisons")).hasSize(3);
        assertThat(compare("--against", "A", write("day.csv", table("ABCDDCBAABCDDCBA", 2)))
                        .out())
                .contains("Ranked: D, C, B, A. Each differs from the next.");
    }

    @Test
    void cannotTellIsNoFailureAndSaysHowToGoOn() throws IOException {
        String day = write("day.csv", table("ABBA", 0.4));
        Run text = compare("--against", "A", day, "--worth", "0.3");
        assertThat(text.status()).as(text.err()).isZero();
        assertThat(text.out()).contains("NOT SETTLED. ", " more: A B", "--planned", "--looks-before 1");
        JsonNode json =
                compare("--against", "A", day, "--worth", "0.3", "--json").json();
        assertThat(json.at("/worth_percent").asDouble()).isEqualTo(0.3);
        int needed = json.at("/comparisons/0/pulls_needed").asInt();
        assertThat(needed).isPositive();
        assertThat(json.at("/further/order")).hasSize(needed);
        assertThat(json.at("/further/planned").asInt()).isEqualTo(4 + needed);
    }

    @Test
    void beforeThePlannedPullsAreRunNothingIsFinal() throws IOException {
        String day = write("day.csv", table("ABBA", 0));
        Run run = compare("--against", "A", day, "--planned", "8");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("Not final", "Run 4 more: A B B A", "--planned 8");
        JsonNode json =
                compare("--against", "A", day, "--planned", "8", "--json").json();
        assertThat(json.at("/final").asBoolean()).isFalse();
        assertThat(json.at("/comparisons/0/verdict").asText()).isEqualTo("cannot-tell");
        assertThat(json.at("/comparisons/0/pulls_needed").asInt()).isEqualTo(4);
    }

    /** A plan without a sweep has no next setting; the first line says where its answer is. */
    @Test
    void adviceOnAComparisonPlanNamesTheCommandThatAnswersIt() {
        Run advised = Run.of(
                "advise --no-notebook --plan sweep-plans/hillclimb-manifold.toml sample-logs/hillclimb-manifold.csv");
        assertThat(advised.status()).as(advised.err()).isZero();
        assertThat(advised.out()).startsWith("Comparison plan: run its labels A-B-B-A, then compare.\n");
    }

    @Test
    void whatCannotBeComparedIsRefusedInAClearSentence() throws IOException {
        String day = write("day.csv", table("ABBAABBA", 1));
        Run misspelt = compare(
                "--against", "befor", write("named.csv", table("ABBA", 1).replace(",A", ",before")));
        assertThat(misspelt.status()).isEqualTo(1);
        assertThat(misspelt.err()).contains("the label \"befor\"", "did you mean \"before\"?", "before, B");
        Run unknown = compare("--against", "zzz", day);
        assertThat(unknown.status()).isEqualTo(1);
        assertThat(unknown.err()).contains("the label \"zzz\"", "choose one of A, B");
        Run single = compare("--against", "A", write("single.csv", table("AB", 1)));
        assertThat(single.status()).isEqualTo(1);
        assertThat(single.err()).contains("Only one pull of A", "Only one pull of B");
        Run alone = compare("--against", "A", write("alone.csv", table("AAAA", 1)));
        assertThat(alone.status()).isEqualTo(1);
        assertThat(alone.err()).contains("All pulls carry the label A");
        Run none = compare("--against", "A", write("none.csv", "order,advance_deg,torque_nm\n1,20,200\n2,20,201\n"));
        assertThat(none.status()).isEqualTo(1);
        assertThat(none.err()).contains("No pull carries a label");
        assertThat(single.out() + alone.out() + none.out()).isEmpty();
    }

    @Test
    void settingsThatDifferBetweenLabelsAreFlagged() throws IOException {
        String day = write("set.csv", """
                order,advance_deg,lambda,torque_nm,label
                1,24,0.87,200.1,A
                2,27,0.91,202.2,B
                3,27,0.91,202.0,B
                4,24,0.87,199.8,A
                5,24,0.87,200.2,A
                6,27,0.91,201.9,B
                """);
        Run run = compare("--against", "A", day);
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.err()).contains("Advance of B differed from that of A by 3.0 deg", "Lambda of B differed");
    }

    @Test
    void orderNumbersThatRepeatFromFileToFileAreNotUsed() throws IOException {
        String first = write("first.csv", table("AAAA", 1));
        String second = write("second.csv", table("BBBB", 1));
        Run run = compare("--against", "A", first, second, "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().at("/order_from").asText()).isEqualTo("command-line");
        assertThat(compare("--against", "A", first, second).out() + run.err()).contains("as the files were named");
    }

    @Test
    void labelsOfTheCommandLineAreTakenInTheOrderOfTheClock() throws IOException {
        LocalDateTime morning = LocalDateTime.of(2026, 4, 18, 9, 0);
        String first = write("a1.csv", log("N.m", "", morning, 200.2));
        String second = write("b.csv", log("N.m", "", morning.plusMinutes(5), 203.7, 204.2, 203.9));
        String third = write("a2.csv", log("N.m", "", morning.plusMinutes(10), 199.9, 200.1));
        Run run = compare("--against", "before", "before=" + third, "after=" + second, "before=" + first, "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().at("/order_from").asText()).isEqualTo("clock");
        Run sorted = compare("--against", "before", "before=" + first, "after=" + second, "before=" + third, "--json");
        assertThat(run.json().at("/comparisons/0/low_percent").asDouble())
                .isEqualTo(sorted.json().at("/comparisons/0/low_percent").asDouble());
        assertThat(run.json().at("/comparisons/0/rows").size()).isGreaterThan(3);
    }

    @Test
    void unitsOfTheFilesDoNotTouchTheVerdict() throws IOException {
        LocalDateTime morning = LocalDateTime.of(2026, 4, 18, 9, 0);
        String label = ",Label";
        String a = write("a.csv", log("N.m", label, morning, 200.2, 199.8).replace(",label", ",A"));
        String b = write(
                "b.csv",
                log("N.m", label, morning.plusMinutes(5), 203.7, 204.2, 203.9).replace(",label", ",B"));
        String pounds = write(
                "lb.csv",
                log("lbf.ft", label, morning.plusMinutes(5), 203.7, 204.2, 203.9)
                        .replace(",label", ",B"));
        JsonNode equal = compare("--against", "A", a, b, "--json").json();
        JsonNode mixed = compare("--against", "A", a, pounds, "--json").json();
        assertThat(mixed.at("/comparisons/0/verdict")).isEqualTo(equal.at("/comparisons/0/verdict"));
        assertThat(mixed.at("/comparisons/0/difference_percent").asDouble())
                .isCloseTo(equal.at("/comparisons/0/difference_percent").asDouble(), within(0.001));
    }

    @Test
    void labelsMayStandInTheSettingsFile() throws IOException {
        write("plan.toml", PLAN + "[log]\nsettings = \"settings.csv\"\n");
        String day = write("day.csv", log("N.m", "", LocalDateTime.of(2026, 4, 18, 9, 0), 200.2, 203.7, 204.2, 199.8));
        write("settings.csv", "file,pull,order,label\nday.csv,1,1,A\nday.csv,2,2,B\nday.csv,3,3,B\nday.csv,4,4,A\n");
        Run run = compare("--against", "A", day, "--json");
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.json().at("/order_from").asText()).isEqualTo("order-column");
        assertThat(run.json().at("/comparisons/0/difference_nm").asDouble()).isCloseTo(3.95, within(0.05));
    }

    @Test
    void meanCurvesAndDifferencesAreWrittenAsPictures() throws IOException {
        LocalDateTime morning = LocalDateTime.of(2026, 4, 18, 9, 0);
        String a = write("a.csv", log("N.m", "", morning, 200.2, 199.8, 200.1));
        String b = write("b.csv", log("N.m", "", morning.plusMinutes(5), 203.7, 204.2, 203.9));
        Path charts = folder.resolve("charts");
        Run run = compare("--against", "A", "A=" + a, "B=" + b, "--charts", charts.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(Files.size(charts.resolve("mean-curves.png"))).isGreaterThan(1000);
        assertThat(Files.size(charts.resolve("b-vs-a.png"))).isGreaterThan(1000);
        assertThat(run.err()).contains("changed over only once");
    }

    @Test
    void wrongUsageIsStatusTwo() throws IOException {
        String day = write("day.csv", table("ABBA", 1));
        assertThat(compare(day).status()).isEqualTo(2);
        assertThat(compare("--against", "A", day, "--planned", "2").status()).isEqualTo(2);
        assertThat(compare("--against", "A", day, "--worth", "0").status()).isEqualTo(2);
        assertThat(compare("--against", "A", day, "--planned", "8", "--each-block")
                        .status())
                .isEqualTo(2);
    }
}
