package org.nextpull.window.compared;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.FindingCode;
import org.nextpull.report.Shown;
import org.nextpull.report.text.CompareText;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.past.SampleNotebook;
import org.nextpull.window.past.Shelf;

class ComparedPresenterTest {
    private static final String PLAN = "sweep-plans/hillclimb-manifold.toml";
    private static final Shown METRIC = new Shown(UnitSystem.METRIC);

    @TempDir
    private Path folder = Path.of(".");

    private static ComparedInput read(List<Contender> contenders, String plan, Shelf shelf) {
        return ComparedReader.read(contenders, plan, shelf).value().orElseThrow();
    }

    private Shelf none() {
        return new Shelf(folder.resolve("none.db"));
    }

    @Test
    void thePageSaysWhatTheCommandLineSays() {
        ComparedInput input = read(List.of(new Contender("", "sample-logs/hillclimb-manifold.csv")), PLAN, none());
        ComparedPresenter.Compared compared = ComparedPresenter.compare(input, Optional.of("before"));
        ComparedPage page = new ComparedPresenter(METRIC).page(compared);
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
        ComparedInput input = read(List.of(new Contender("", "sample-logs/hillclimb-manifold.csv")), PLAN, none());
        ComparedPresenter.Compared first = ComparedPresenter.compare(input, Optional.empty());
        assertThat(new ComparedPresenter(METRIC).page(first).verdicts().get(0))
                .contains("against " + first.labels().get(0));
    }

    @Test
    void sessionsWithoutLabelsAreToldApartByTheirNumbers() throws Exception {
        Shelf shelf = new Shelf(SampleNotebook.with(folder, List.of("hillclimb-e10-timing", "hillclimb-e10-mixture")));
        ComparedInput input = read(List.of(Contender.ofSession(1), Contender.ofSession(2)), "", shelf);
        ComparedPresenter.Compared compared = ComparedPresenter.compare(input, Optional.empty());
        assertThat(compared.labels()).containsExactly("session 1", "session 2");
        ComparedPage page = new ComparedPresenter(METRIC).page(compared);
        assertThat(page.verdicts().get(0)).startsWith("session 2 against session 1: ");
        assertThat(page.basis()).anyMatch(line -> line.contains("was run at more than one setting"));
        assertThat(page.basis()).anyMatch(line -> line.contains("2 days are compared"));
    }

    @Test
    void aKeptSessionStandsBesideALogUnderItsOwnLabels() throws Exception {
        Shelf shelf = new Shelf(SampleNotebook.with(folder, List.of("hillclimb-manifold")));
        ComparedInput kept = read(List.of(Contender.ofSession(1)), "", shelf);
        assertThat(ComparedPresenter.compare(kept, Optional.empty()).labels()).contains("before");
        ComparedInput both = read(
                List.of(Contender.ofSession(1), new Contender("again", "sample-logs/hillclimb-e10-timing.csv")),
                PLAN,
                shelf);
        assertThat(ComparedPresenter.compare(both, Optional.empty()).labels()).contains("again");
    }

    @Test
    void whatCannotBeComparedSaysWhy() {
        Contender log = new Contender("a", "sample-logs/hillclimb-manifold.csv");
        assertThat(ComparedReader.read(List.of(log), "", none()).findings())
                .extracting(finding -> finding.code())
                .containsExactly(FindingCode.COMPARE_WITHOUT_PLAN);
        assertThat(ComparedReader.read(List.of(Contender.ofSession(4)), "", none())
                        .isFailed())
                .isTrue();
        assertThat(ComparedReader.read(List.of(log), "no-such.toml", none()).isFailed())
                .isTrue();
        ComparedPage one = new ComparedPresenter(METRIC)
                .page(ComparedPresenter.compare(read(List.of(log), PLAN, none()), Optional.empty()));
        assertThat(one.verdicts()).hasSize(1).first().asString().contains("needs two");
        ComparedPage missing = new ComparedPresenter(METRIC)
                .page(ComparedPresenter.compare(
                        read(List.of(new Contender("a", "no-such.csv")), PLAN, none()), Optional.empty()));
        assertThat(missing.verdicts()).anyMatch(line -> line.contains("no-such.csv"));
    }
}
