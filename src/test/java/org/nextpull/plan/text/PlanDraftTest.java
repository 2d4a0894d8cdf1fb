package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.SweepPlan;

class PlanDraftTest {
    private static PlanDraft draft(String text) {
        return PlanDraft.of(text, "plan.toml").value().orElseThrow();
    }

    static Stream<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sweep-plans"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aShippedPlanIsTheSamePlanAfterItsDraftIsWritten(Path file) throws IOException {
        String text = Files.readString(file);
        SweepPlan plan = PlanTextTest.read(text);
        PlanDraft draft = draft(text);
        assertThat(draft.plan("again.toml").value()).as(draft.text()).contains(plan);
        assertThat(draft(draft.text())).isEqualTo(draft);
        assertThat(draft(PlanText.write(plan)).plan("again.toml").value()).contains(plan);
    }

    /** Each key taken out and typed in again, each table switched off and on: the file as it was, to the last blank. */
    @ParameterizedTest
    @MethodSource("shipped")
    void aShippedPlanTypedAgainIsTheSameText(Path file) throws IOException {
        String text = Files.readString(file);
        PlanDraft draft = draft(text);
        for (PlanTable<?> table : PlanKeys.tables()) {
            String name = table.isList() ? lastOf(draft, table) : table.name();
            for (PlanKey<?> key : table.keys()) {
                Optional<String> typed = draft.typed(name, key.name());
                if (typed.isPresent() && key.kind() != KeyKind.IN_TEXT) {
                    draft = draft.with(name, key.name(), key.kind(), "")
                            .with(name, key.name(), key.kind(), typed.get());
                }
            }
            draft = draft.has(name)
                    ? draft.withoutTable(name).withTable(name)
                    : draft.withTable(name).withoutTable(name);
        }
        assertThat(draft.text().stripTrailing()).isEqualTo(text.stripTrailing());
    }

    /** The last member of a list: one that is taken out and put back comes last. */
    private static String lastOf(PlanDraft draft, PlanTable<?> list) {
        int last = 1;
        while (draft.has(list.name() + "[" + (last + 1) + "]")) {
            last++;
        }
        return list.name() + "[" + last + "]";
    }

    @Test
    void aChangeLeavesAllOtherLinesAsTheyAre() {
        PlanDraft draft = draft("""
                # of the whole

                [engine] # the engine
                  # of the name
                  name   = "a # b"   # what we call it
                cylinders=4


                [limits]
                exhaust_c = 900 # hot
                # the end
                """);
        assertThat(draft.with("engine", "name", KeyKind.TEXT, "c")
                        .with("limits", "oil_c", KeyKind.NUMBER, "120")
                        .with("limits", "exhaust_c", KeyKind.NUMBER, "")
                        .with("band", "to_rpm", KeyKind.NUMBER, "6000")
                        .text())
                .isEqualTo("""
                # of the whole

                [engine] # the engine
                  # of the name
                  name   = "c"   # what we call it
                cylinders=4


                [band]
                to_rpm = 6000

                [limits]
                oil_c = 120
                # the end
                """);
    }

    @Test
    void whatIsClearedAndTypedAgainStandsWhereItStood() {
        String text = "[engine]\nname = 'a' # ours\ncylinders = 4\n";
        assertThat(draft(text)
                        .with("engine", "name", KeyKind.TEXT, "")
                        .with("engine", "name", KeyKind.TEXT, "b")
                        .text())
                .isEqualTo("[engine]\nname = \"b\" # ours\ncylinders = 4\n");
        assertThat(draft(text).withoutTable("engine").withTable("engine").text())
                .isEqualTo(text);
    }

    @Test
    void aTableGoesWithItsCommentsAndThoseAboveItsHeaderStay() {
        assertThat(draft("""
                # invented

                # spark
                [timing]
                # on the retarded side
                start_deg = 18

                [limits] # stop
                """).withoutTable("timing").text()).isEqualTo("""
                # invented

                # spark
                [limits] # stop
                """);
    }

    /** Dotted keys, tables in a line, sub-tables and lists over several lines are TOML as well. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '^',
            value = {
                "engine.name = 'a'~[air] | engine | cylinders | engine.name = 'a'~engine.cylinders = 4~[air]~",
                "engine = { name = 'a' } # x | engine | cylinders | engine = { name = \"a\", cylinders = 4 } # x~",
                "[log.columns]~torque = 'x' | log | sample_hz | [log]~sample_hz = 4~~[log.columns]~torque = 'x'~",
                "[log]~columns.torque = 'x'~ | log | sample_hz | [log]~columns.torque = 'x'~sample_hz = 4~",
                "wire = [{ device = 'a' }, { device = 'b' }] | wire[2] | baud | wire = [{ device = \"a\" }, { device = \"b\", baud = 4 }]~",
                "[[wire]]~device = 'a'~~[[wire]]~device = 'b'~ | wire[1] | baud | [[wire]]~device = 'a'~baud = 4~~[[wire]]~device = 'b'~",
                "[engine]~cylinders = [ # one~ 1, # two~] # beside~ | engine | cylinders | [engine]~# one~# two~cylinders = 4 # beside~",
                "[engine]~\"cylinders\" = 6~ | engine | cylinders | [engine]~\"cylinders\" = 4~",
            })
    void aKeyIsSetHoweverItsTableIsWritten(String text, String table, String key, String wanted) {
        PlanDraft draft = draft(text.replace('~', '\n')).with(table, key, KeyKind.NUMBER, "4");
        assertThat(draft.text().replace('\n', '~')).isEqualTo(wanted);
        assertThat(draft.typed(table, key)).contains("4");
        assertThat(draft.with(table, key, KeyKind.NUMBER, "").typed(table, key)).isEmpty();
    }

    @Test
    void linesThatEndAsOnWindowsStaySo() {
        PlanDraft draft = draft("[engine]\r\nname = 'a' # b\r\n").with("engine", "cylinders", KeyKind.NUMBER, "4");
        assertThat(draft.with("engine", "name", KeyKind.TEXT, "c").text())
                .isEqualTo("[engine]\r\nname = \"c\" # b\r\ncylinders = 4\r\n");
    }

    @Test
    void signsOfCommentsInsideStringsAreNone() {
        String text = """
                a = "# no" # 1
                b = '# no' # 2
                c = \"""
                # no \\\"""
                # no\"""\" # 3
                d = '''
                # no
                ''' # 4
                """;
        PlanDraft draft = draft(text);
        for (String key : List.of("a", "b", "c", "d")) {
            draft = draft.with("", key, KeyKind.NUMBER, "1");
        }
        assertThat(draft.text()).isEqualTo("a = 1 # 1\nb = 1 # 2\nc = 1 # 3\nd = 1 # 4\n");
    }

    @Test
    void unknownKeysAndTablesStayUntilTheyAreTakenOut() {
        PlanDraft draft = draft("""
                loose = 2020-01-02T03:04:00Z
                [engine]
                horses = [1, [2.5, "x"], { a = 07:32:00 }]
                [strange]
                deep.er = { b = true }
                """);
        assertThat(draft(draft.text())).isEqualTo(draft);
        assertThat(draft.plan("p").findings())
                .extracting(finding -> finding.place().key())
                .containsExactlyInAnyOrder(Optional.of("loose"), Optional.of("engine.horses"), Optional.of("strange"));
        PlanDraft mended = draft.with("", "loose", KeyKind.TEXT, "")
                .with("engine", "horses", KeyKind.TEXT, "")
                .withoutTable("strange");
        assertThat(mended.plan("p").value()).contains(SweepPlan.defaults());
    }

    @Test
    void whatIsTypedWrongIsNamedAtItsKeyAndTheRestStays() {
        PlanDraft draft = PlanDraft.empty()
                .with("engine", "displacement_l", KeyKind.NUMBER, "2,0")
                .with("engine", "cylinders", KeyKind.NUMBER, "four\"\n[limits]")
                .with("start", "coolant_c", KeyKind.WINDOW, "95 to 80")
                .with("start", "oil_c", KeyKind.WINDOW, "warm")
                .with("limits", "most_rpm", KeyKind.NUMBER, "99999999999999999999999")
                .with("goal", "learn_from_notebook", KeyKind.FLAG, "maybe")
                .with("goal", "max_pulls", KeyKind.NUMBER, "012");
        assertThat(draft.plan("p").findings())
                .extracting(Finding::code, finding -> finding.place().key().orElse(""))
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WRONG_TYPE, "engine.displacement_l"),
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WRONG_TYPE, "engine.cylinders"),
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WINDOW_REVERSED, "start.coolant_c"),
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WRONG_TYPE, "start.oil_c"),
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WRONG_TYPE, "limits.most_rpm"),
                        org.assertj.core.groups.Tuple.tuple(FindingCode.PLAN_WRONG_TYPE, "goal.learn_from_notebook"));
        assertThat(draft.typed("goal", "max_pulls")).contains("12");
        assertThat(draft.typed("engine", "displacement_l")).contains("2,0");
    }

    @ParameterizedTest
    @ValueSource(strings = {"80 to 95", "80, 95", "80..95", "80 95", " 80 to 95 ", "80;95"})
    void aWindowIsTypedAsPeopleWriteIt(String typed) {
        PlanDraft draft = PlanDraft.empty().with("start", "coolant_c", KeyKind.WINDOW, typed);
        assertThat(draft.text()).contains("coolant_c = [80, 95]");
        assertThat(draft.typed("start", "coolant_c")).contains("80 to 95");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3500: 18, 5000: 21.5",
                "3500 18; 5000 21.5",
                "3500\t18\n5000\t21.50",
                "3500=18,5000 = 21.5",
                "3500\t18 5000\t21.5"
            })
    void aMapIsTypedAsCellsOrPasted(String typed) {
        PlanDraft draft = PlanDraft.empty().with("timing", "present_map", KeyKind.CELLS, typed);
        assertThat(draft.text()).contains("present_map = [[3500, 18], [5000, 21.5]]");
        assertThat(draft.typed("timing", "present_map")).contains("3500: 18, 5000: 21.5");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3500, 4000, 4500", "3500 4000 4500", "3500\t4000\t4500", "3500;4000; 4500"})
    void speedsAreTypedOrPasted(String typed) {
        PlanDraft draft = PlanDraft.empty().with("timing", "map_rpm", KeyKind.NUMBERS, typed);
        assertThat(draft.text()).contains("map_rpm = [3500, 4000, 4500]");
        assertThat(draft.typed("timing", "map_rpm")).contains("3500, 4000, 4500");
    }

    @Test
    void ofAListTheTablesAfterOneThatGoesMoveUp() {
        PlanDraft draft = PlanDraft.empty()
                .with("wire[1]", "device", KeyKind.TEXT, "COM1")
                .with("wire[2]", "device", KeyKind.TEXT, "COM2")
                .with("wire[3]", "device", KeyKind.TEXT, "COM3")
                .with("wire[2]", "columns", KeyKind.TEXTS, "rpm, torque [N.m]")
                .withoutTable("wire[1]");
        assertThat(draft.tables()).containsExactly("wire[1]", "wire[2]");
        assertThat(draft.typed("wire[1]", "device")).contains("COM2");
        assertThat(draft.typed("wire[1]", "columns")).contains("rpm, torque [N.m]");
        assertThat(draft.plan("p").value().orElseThrow().wires()).hasSize(2);
    }

    @Test
    void tablesStandInTheOrderOfTheHandbook() {
        PlanDraft draft = PlanDraft.empty()
                .with("wire[1]", "device", KeyKind.TEXT, "COM1")
                .with("limits", "exhaust_c", KeyKind.NUMBER, "900")
                .with("engine", "name", KeyKind.TEXT, "x")
                .with("fuel", "blend", KeyKind.WORD, "e10");
        assertThat(draft.tables()).containsExactly("engine", "fuel", "limits", "wire[1]");
    }

    private static Optional<String> usual(PlanDraft draft, String name) {
        String table = name.substring(0, name.indexOf('.'));
        return PlanKeys.tables().stream()
                .filter(one -> one.name().equals(table))
                .flatMap(one -> one.keys().stream())
                .filter(key -> name.equals(table + "." + key.name()))
                .findFirst()
                .flatMap(key -> draft.usual(table, key));
    }

    @Test
    void defaultsFollowTheKeysThatTheyDependOn() {
        PlanDraft natural = PlanDraft.empty();
        assertThat(usual(natural, "timing.largest_step_deg")).contains("2");
        assertThat(usual(natural, "dyno.torque_at")).contains("crank");
        assertThat(usual(natural, "wire.baud")).contains("115200");
        assertThat(usual(natural, "limits.lean_for_s")).contains("0.3");
        assertThat(List.of("timing.start_deg", "limits.exhaust_c", "dyno.inertia_in_log"))
                .allSatisfy(key -> assertThat(usual(natural, key)).isEmpty());
        PlanDraft draft = natural.with("engine", "induction", KeyKind.WORD, "boosted")
                .with("dyno", "kind", KeyKind.WORD, "chassis-inertia");
        assertThat(usual(draft, "timing.largest_step_deg")).contains("1");
        assertThat(usual(draft, "dyno.torque_at")).contains("wheel");
        assertThat(usual(draft, "engine.induction")).contains("natural");
        PlanDraft wrong = natural.with("engine", "induction", KeyKind.WORD, "bosted");
        assertThat(usual(wrong, "timing.largest_step_deg")).contains("2");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16, 17, 18})
    void aRandomPlanIsTheSameAfterItsDraftIsWritten(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 25; trial++) {
            String text = RandomPlan.text(random);
            SweepPlan plan = PlanTextTest.read(text);
            PlanDraft draft = draft(text);
            assertThat(draft.plan("p").value()).as("seed %d:%n%s", seed, text).contains(plan);
            assertThat(PlanTextTest.read(PlanText.write(plan))).isEqualTo(plan);
            assertThat(RandomPlan.typedAgain(draft).plan("p").value()).contains(plan);
        }
    }
}
