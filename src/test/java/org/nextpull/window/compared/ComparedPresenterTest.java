package org.nextpull.window.compared;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.app.DayInput;
import org.nextpull.app.DayReader;
import org.nextpull.app.LabelledLog;
import org.nextpull.app.NotebookAccess;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.report.Shown;
import org.nextpull.report.text.CompareText;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.past.SampleNotebook;

class ComparedPresenterTest {
    private static final String PLAN = "sweep-plans/hillclimb-manifold.toml";
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);

    @TempDir
    private Path folder = Path.of(".");

    private static Outcome<DayInput> all(List<LabelledLog> contenders, String plan, NotebookAccess notebook) {
        return DayReader.day(notebook, Optional.of(plan).filter(name -> !name.isEmpty()), contenders);
    }

    private static DayInput read(List<LabelledLog> contenders, String plan, NotebookAccess notebook) {
        return all(contenders, plan, notebook).value().orElseThrow();
    }

    private NotebookAccess none() {
        return new NotebookAccess(folder.resolve("none.db"), false);
    }

    @Test
    void thePageSaysWhatTheCommandLineSays() {
        DayInput input = read(List.of(LabelledLog.unlabelled("sample-logs/hillclimb-manifold.csv")), PLAN, none());
        ComparedPresenter.Compared compared = ComparedPresenter.compare(input, Optional.of("before"));
        ComparedPresenter.Page page = new ComparedPresenter(METRIC).page(compared);
        String printed = new CompareText(METRIC)
                .text(
                        compared.day(),
                        compared.day().outcome().value().orElseThrow(),
                        compared.result().plan().goal().response());
        assertThat(page.verdicts())
                .isNotEmpty()
                .allSatisfy(verdict -> assertThat(printed).contains(verdict));
        assertThat(compared.labels()).contains("before").hasSizeGreaterThan(1);
        assertThat(page.curves()).isPresent();
        assertThat(page.differences()).hasSameSizeAs(page.labels());
        assertThat(page.rows().get(0)).allSatisfy(row -> assertThat(printed).contains(row.percent()));
    }

    @Test
    void withoutANamedReferenceTheFirstThatRanIsIt() {
        DayInput input = read(List.of(LabelledLog.unlabelled("sample-logs/hillclimb-manifold.csv")), PLAN, none());
        ComparedPresenter.Compared first = ComparedPresenter.compare(input, Optional.empty());
        assertThat(new ComparedPresenter(METRIC).page(first).verdicts().get(0))
                .contains("vs \"" + first.labels().get(0));
    }

    @Test
    void sessionsWithoutLabelsAreToldApartByTheirNumbers() throws Exception {
        NotebookAccess notebook = new NotebookAccess(
                SampleNotebook.with(folder, List.of("hillclimb-knock", "hillclimb-e10-mixture")), false);
        DayInput input = read(List.of(LabelledLog.ofSession(1), LabelledLog.ofSession(2)), "", notebook);
        ComparedPresenter.Compared compared = ComparedPresenter.compare(input, Optional.empty());
        assertThat(compared.labels()).containsExactly("session 1", "session 2");
        ComparedPresenter.Page page = new ComparedPresenter(METRIC).page(compared);
        assertThat(page.verdicts().get(0)).startsWith("\"session 2\" vs \"session 1\": ");
        assertThat(page.basis()).anyMatch(line -> line.contains("was run at more than one setting"));
        assertThat(page.basis()).anyMatch(line -> line.contains("2 days are compared"));
    }

    @Test
    void aKeptSessionStandsBesideALogUnderItsOwnLabels() throws Exception {
        NotebookAccess notebook = new NotebookAccess(SampleNotebook.with(folder, List.of("hillclimb-manifold")), false);
        DayInput kept = read(List.of(LabelledLog.ofSession(1)), "", notebook);
        assertThat(ComparedPresenter.compare(kept, Optional.empty()).labels()).contains("before");
        DayInput both = read(
                List.of(
                        LabelledLog.ofSession(1),
                        new LabelledLog(Optional.of("again"), "sample-logs/hillclimb-e10-timing.csv")),
                PLAN,
                notebook);
        assertThat(ComparedPresenter.compare(both, Optional.empty()).labels()).contains("again");
    }

    @Test
    void whatCannotBeComparedSaysWhy() {
        LabelledLog log = new LabelledLog(Optional.of("a"), "sample-logs/hillclimb-manifold.csv");
        assertThat(all(List.of(log), "", none()).findings())
                .extracting(finding -> finding.code())
                .containsExactly(FindingCode.COMPARE_WITHOUT_PLAN);
        assertThat(all(List.of(LabelledLog.ofSession(4)), "", none()).isFailed())
                .isTrue();
        assertThat(all(List.of(log), "no-such.toml", none()).isFailed()).isTrue();
        ComparedPresenter.Page one = new ComparedPresenter(METRIC)
                .page(ComparedPresenter.compare(read(List.of(log), PLAN, none()), Optional.empty()));
        assertThat(one.verdicts()).hasSize(1).first().asString().contains("needs two");
        assertThat(all(List.of(new LabelledLog(Optional.of("a"), "no-such.csv")), PLAN, none())
                        .findings())
                .extracting(finding -> finding.place().file().orElse(""))
                .contains("no-such.csv");
    }
}
