package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Dimension;
import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.nextpull.report.NextStep;
import org.nextpull.report.NextStepText;
import org.nextpull.report.Shown;
import org.nextpull.session.DayByPull;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.SampleDays;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.page.DrivenPage;
import org.nextpull.window.page.Work;

/** The page of the candidates alone, on the shipped day. */
@Timeout(180)
class CandidatesPageIT {
    private static final Dimension SIZE = new Dimension(1280, 660);

    @Test
    void candidatesStandSideBySideAndAChangeOverIsConfirmedByKeys() {
        assumeFalse(GraphicsEnvironment.isHeadless(), "no display");
        List<OperatorAction> told = new ArrayList<>();
        List<CandidatesPage> pages = new ArrayList<>();
        DayByPull day = DayByPull.of(SampleDays.input("hillclimb-fuels"));
        SessionResult whole = day.whole();
        int swept = (int) whole.pulls().stream()
                .takeWhile(pull -> pull.setting().label().equals(Optional.of("pump")))
                .count();
        try (Work work = new Work();
                DrivenPage page = DrivenPage.open(
                        foot -> {
                            pages.add(new CandidatesPage(work, foot, told::add));
                            return pages.get(0);
                        },
                        SIZE)) {
            NextStep step = new NextStepText(new Shown(UnitSystem.METRIC)).of(day.after(swept), OptionalDouble.of(20));
            assertThat(step.spoken())
                    .as("fitted first, whatever the cool-down")
                    .startsWith("Change over, spark advance ");
            assertThat(step.about()).isEqualTo("to \"alcohol\"");
            NextStep end = new NextStepText(new Shown(UnitSystem.METRIC)).of(whole);
            assertThat(end.about()).isEqualTo("\"alcohol\", final setting");
            assertThat(end.because())
                    .as("knock of another candidate says nothing of it")
                    .startsWith("The decision runs are done.");
            pages.get(0).show(new DaySource.Moment("day", day.after(swept), Optional.empty(), Optional.empty()));
            page.settle(work);
            page.picture(Path.of("target/screens/candidates-change-over.png"));
            for (int done = 0; done < 7; done++) {
                assertThat(told).isEmpty();
                page.press("C");
            }
            assertThat(told).containsExactly(new OperatorAction.Next(Optional.of("alcohol"), Optional.of("e85")));
            pages.get(0).show(new DaySource.Moment("day", whole, Optional.empty(), Optional.empty()));
            page.settle(work);
            JTable table = (JTable) page.find("Candidates side by side").orElseThrow();
            assertThat(table.getColumnCount()).isEqualTo(4);
            assertThat(table.getValueAt(0, 2)).isEqualTo("alcohol");
            assertThat(page.said("Which of them")).contains("over \"pump\", at ");
            assertThat(page.said("What the candidates come to")).contains("which is the fuel");
            assertThat(table.getValueAt(3, 2)).asString().matches("0\\.8[0-9]{2}");
            assertThat(page.nameless()).isEmpty();
            page.pictures("candidates", work, () -> {});
        }
    }
}
