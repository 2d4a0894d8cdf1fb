package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
        assertThat(draft(PlanWriter.write(plan)).plan("again.toml").value()).contains(plan);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void everyCommentOfAShippedPlanIsKept(Path file) throws IOException {
        String text = Files.readString(file);
        assertThat(comments(draft(text).text())).isEqualTo(comments(text));
    }

    private static List<String> comments(String text) {
        return Comments.of(text).stream().map(Comments.Comment::text).toList();
    }

    @Test
    void commentsStayWithTheirKeys() {
        PlanDraft draft = draft("""
                # of the whole
                [engine] # the engine
                # of the name
                name = "a # b" # no comment inside
                cylinders = 4

                [limits]
                exhaust_c = 900 # hot
                # the end
                """);
        assertThat(draft.with("engine", "name", KeyKind.TEXT, "c").text()).isEqualTo("""
                # of the whole
                [engine]  # the engine
                # of the name
                name = "c"  # no comment inside
                cylinders = 4

                [limits]
                exhaust_c = 900  # hot

                # the end
                """);
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
                e = [ # 5
                  1, # 6
                ] # 7
                """;
        assertThat(comments(text)).containsExactly("# 1", "# 2", "# 3", "# 4", "# 5", "# 6", "# 7");
        assertThat(comments(draft(text).text())).hasSize(7);
        assertThat(draft(draft(text).text())).isEqualTo(draft(text));
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

    @Test
    void defaultsFollowTheKeysThatTheyDependOn() {
        Map<String, String> natural = PlanDefaults.of(PlanDraft.empty());
        assertThat(natural)
                .containsEntry("timing.largest_step_deg", "2")
                .containsEntry("dyno.torque_at", "crank")
                .containsEntry("wire.baud", "115200")
                .containsEntry("limits.lean_for_s", "0.3")
                .doesNotContainKeys("timing.start_deg", "limits.exhaust_c", "dyno.inertia_in_log");
        PlanDraft draft = PlanDraft.empty()
                .with("engine", "induction", KeyKind.WORD, "boosted")
                .with("dyno", "kind", KeyKind.WORD, "chassis-inertia");
        assertThat(PlanDefaults.of(draft))
                .containsEntry("timing.largest_step_deg", "1")
                .containsEntry("dyno.torque_at", "wheel")
                .containsEntry("engine.induction", "natural");
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
            assertThat(PlanTextTest.read(PlanWriter.write(plan))).isEqualTo(plan);
            assertThat(RandomPlan.typedAgain(draft).plan("p").value()).contains(plan);
        }
    }
}
