package org.nextpull.report.text;

import java.util.List;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Verdict;
import org.nextpull.report.AdviceText;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.Replay;

/** What each of several days says alone, and what it adds to those before it. */
final class DaysTable {
    private DaysTable() {}

    static String of(List<Replay.OneDay> days) {
        TextTable table = new TextTable("day", "pulls", "stop after", "alone", "with the days before", "from");
        int number = 0;
        for (Replay.OneDay day : days) {
            number++;
            MeasuredPull first = day.steps().get(0).pull();
            table.row(
                    String.valueOf(number),
                    String.valueOf(day.steps().size()),
                    day.stoppedAfter().isPresent()
                            ? String.valueOf(day.stoppedAfter().getAsInt())
                            : "-",
                    answer(day.alone()),
                    answer(day.together()),
                    first.origin().source());
        }
        return "Day by day: the final setting, and the torque still to find.\n" + table.text();
    }

    private static String answer(Verdict verdict) {
        String leave =
                verdict.chosen().map(Chosen::setting).map(AdviceText::setting).orElse("nothing yet");
        return leave
                + verdict.map()
                        .map(state -> ", " + Shown.fixed(state.leftAtPeak().expectedPercent(), 2) + " %")
                        .orElse("");
    }
}
