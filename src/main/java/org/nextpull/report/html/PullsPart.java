package org.nextpull.report.html;

import java.util.List;
import java.util.stream.Collectors;
import org.nextpull.report.PullColumn;
import org.nextpull.report.Shown;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;

/** The pulls: what was set and what came out, and the conditions of each. */
final class PullsPart {
    private static final List<PullColumn> FIGURES = List.of(
            PullColumn.NUMBER,
            PullColumn.ADVANCE,
            PullColumn.LAMBDA,
            PullColumn.MEAN_TORQUE,
            PullColumn.MEAN_POWER,
            PullColumn.PEAK_TORQUE,
            PullColumn.PEAK_TORQUE_SPEED,
            PullColumn.PEAK_POWER,
            PullColumn.PEAK_POWER_SPEED,
            PullColumn.KNOCK,
            PullColumn.STANDING,
            PullColumn.LABEL,
            PullColumn.FUEL,
            PullColumn.NOTE);
    private static final List<PullColumn> CONDITIONS = List.of(
            PullColumn.NUMBER,
            PullColumn.CORRECTION,
            PullColumn.BAROMETER,
            PullColumn.AIR,
            PullColumn.HUMIDITY,
            PullColumn.COOLANT,
            PullColumn.OIL,
            PullColumn.EXHAUST,
            PullColumn.SOURCE,
            PullColumn.LINE);

    private final SessionResult result;
    private final Shown shown;

    PullsPart(SessionResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
    }

    Section figures() {
        return section("Pulls", "Settings, corrected averages over the band, and peaks", FIGURES);
    }

    Section conditions() {
        return section(
                "Conditions and correction",
                "Medians over the band of each pull; the exhaust is the highest value. Logs: "
                        + result.pulls().stream()
                                .map(pull -> pull.origin().source())
                                .distinct()
                                .collect(Collectors.joining(", ")),
                CONDITIONS);
    }

    private Section section(String title, String caption, List<PullColumn> all) {
        List<MeasuredPull> pulls = result.pulls();
        List<PullColumn> columns = PullColumn.telling(all, pulls, shown);
        Grid grid = Grid.of(
                caption, columns.stream().map(column -> column.heading(shown)).toArray(String[]::new));
        for (MeasuredPull pull : pulls) {
            grid = grid.row(
                    columns.stream().map(column -> column.cell(pull, shown)).toArray(String[]::new));
        }
        return Section.of(title).withGrids(grid.isEmpty() ? List.of() : List.of(grid));
    }
}
