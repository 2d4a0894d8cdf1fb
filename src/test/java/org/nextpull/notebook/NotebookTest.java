package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.advice.Verdict;
import org.nextpull.math.Series;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionResult;

class NotebookTest {
    @TempDir
    private Path folder;

    static Stream<String> names() {
        return SampleDays.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    void aKeptSessionGivesTheIdenticalResult(String name) throws IOException {
        SampleDays.Day day = SampleDays.of(name);
        SessionResult before = day.result();
        assertThat(before.hasPulls()).isTrue();
        long id;
        try (Notebook notebook = Notebook.open(folder.resolve("notebook.db"))) {
            id = SampleDays.keep(notebook, day);
        }
        try (Notebook notebook = Notebook.openReadOnly(folder.resolve("notebook.db"))) {
            KeptSession kept = notebook.session(id);
            SessionResult after = Session.evaluate(kept.input(), kept.sources());
            assertSame(after, before);
        }
    }

    @Test
    void aSessionKeptPullByPullGivesTheIdenticalResult() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        int candidates = day.sources().get(0).candidates().size();
        try (Notebook notebook = Notebook.open(folder.resolve("notebook.db"))) {
            long id = notebook.begin(day.start());
            for (int count = 1; count <= candidates; count++) {
                SampleDays.Day soFar = day.first(count);
                notebook.keepPull(id, SampleDays.MORNING.plusSeconds(60L * count), soFar.input(), soFar.result());
            }
            KeptSession kept = notebook.session(id);
            assertSame(Session.evaluate(kept.input(), kept.sources()), day.result());
            assertThat(kept.advice()).hasSize(candidates);
            assertThat(kept.pulls().get(2).at()).isEqualTo(SampleDays.MORNING.plusSeconds(180));
            assertThat(kept.summary().closed()).isEmpty();
        }
    }

    @Test
    void whatTheOperatorDidComesBackInOrderAndCounts() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        try (Notebook notebook = Notebook.open(folder.resolve("notebook.db"))) {
            long id = SampleDays.keep(notebook, day);
            OperatorAction strike = new OperatorAction.Strike(3, "tyre; \"slip\"\t'quoted'\n");
            OperatorAction note = new OperatorAction.Note(OptionalInt.empty(), "=cmd|'/c calc'!A1");
            notebook.keepAct(id, SampleDays.MORNING.plusSeconds(4000), strike);
            notebook.keepAct(id, SampleDays.MORNING.plusSeconds(4001), note);
            KeptSession kept = notebook.session(id);
            assertThat(kept.acts()).extracting(KeptSession.Act::act).containsExactly(strike, note);
            assertThat(kept.acts())
                    .extracting(KeptSession.Act::pulls)
                    .containsOnly(day.result().pulls().size());
            assertThat(kept.input().amendments().struck()).containsOnlyKeys(3);
            SessionResult struck = Session.evaluate(kept.input(), kept.sources());
            assertThat(struck.pulls().get(2).isUsed()).isFalse();
        }
    }

    @Test
    void theMapsOfAnAdviceAreKept() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-map");
        try (Notebook notebook = Notebook.open(folder.resolve("notebook.db"))) {
            long id = notebook.begin(day.start());
            Verdict early = day.first(2).result().verdict().orElseThrow();
            notebook.keepPull(
                    id, SampleDays.MORNING, day.first(2).input(), day.first(2).result());
            notebook.keepPull(id, SampleDays.MORNING, day.input(), day.result());
            List<KeptSession.Advice> advice = notebook.session(id).advice();
            assertThat(advice.get(0).setting().map())
                    .isPresent()
                    .isEqualTo(early.advice().setting().orElseThrow().map());
            assertThat(advice.get(advice.size() - 1).leave().map())
                    .isPresent()
                    .isEqualTo(day.result()
                            .verdict()
                            .flatMap(Verdict::chosen)
                            .orElseThrow()
                            .setting()
                            .map());
        }
    }

    @Test
    void listsAreNewestFirstAndSearchesFindEveryWord() throws IOException {
        try (Notebook notebook = Notebook.open(folder.resolve("notebook.db"))) {
            long timing = SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-timing"));
            long manifold = SampleDays.keep(notebook, SampleDays.of("hillclimb-manifold"));
            notebook.keepAct(
                    timing, SampleDays.MORNING, new OperatorAction.Note(OptionalInt.empty(), "100% new_plugs"));
            assertThat(notebook.list()).extracting(SessionSummary::id).containsExactly(manifold, timing);
            assertThat(notebook.list().get(0).labels()).containsExactly("before", "after");
            assertThat(ids(notebook.find("new_plugs"))).containsExactly(timing);
            assertThat(ids(notebook.find("newxplugs"))).isEmpty();
            assertThat(ids(notebook.find("100%"))).containsExactly(timing);
            assertThat(ids(notebook.find("AFTER e10"))).containsExactly(manifold);
            assertThat(ids(notebook.find("' or 1=1 --"))).isEmpty();
            assertThat(ids(notebook.find(""))).containsExactly(manifold, timing);
        }
    }

    private static List<Long> ids(List<SessionSummary> sessions) {
        return sessions.stream().map(SessionSummary::id).toList();
    }

    /** Record by record, the samples bit by bit; what has no equality of its own, as the standards of curves, by its parts. */
    private static void assertSame(SessionResult actual, SessionResult expected) {
        assertThat(actual.pulls()).isEqualTo(expected.pulls());
        assertThat(actual.repeatability()).isEqualTo(expected.repeatability());
        assertThat(actual.findings()).isEqualTo(expected.findings());
        assertThat(actual)
                .usingRecursiveComparison()
                .ignoringFields("verdict", "repeatability", "findings")
                .withEqualsForType(Arrays::deepEquals, double[][].class)
                .withEqualsForType(Series::equals, Series.class)
                .isEqualTo(expected);
    }
}
