package org.nextpull.window.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.report.MapText;
import org.nextpull.report.Shown;
import org.nextpull.session.SessionResult;

/**
 * A map to set, or that stays, as a row of speeds and degrees.
 *
 * @param cells its cells, of rising speed
 */
record MapStrip(List<Cell> cells) {
    public MapStrip {
        cells = List.copyOf(cells);
    }

    /**
     * A cell.
     *
     * @param rpm speed in rpm
     * @param deg advance in degrees
     * @param change against what is set now, empty where it stays or that is not known
     */
    public record Cell(String rpm, String deg, String change) {}

    /** The map of the next step of a day; empty where the setting is none. */
    static Optional<MapStrip> of(SessionResult result) {
        return result.verdict()
                .flatMap(verdict -> setting(verdict.advice())
                        .flatMap(EngineSetting::map)
                        .map(map ->
                                of(map, result.verdict().flatMap(Verdict::map).map(MapState::last))));
    }

    private static Optional<EngineSetting> setting(Advice advice) {
        return advice.action() == Action.STOP ? advice.leave().map(Chosen::setting) : advice.setting();
    }

    private static MapStrip of(SparkMap map, Optional<SparkMap> set) {
        List<Cell> cells = new ArrayList<>();
        for (int index = 0; index < map.cells().size(); index++) {
            int cell = index;
            cells.add(new Cell(
                    Shown.fixed(map.cells().get(cell).rpm(), 0),
                    Shown.fixed(map.cells().get(cell).advance().deg(), 1),
                    set.map(last -> MapText.change(map, cell, last)).orElse("")));
        }
        return new MapStrip(cells);
    }

    /** Speeds in one line, degrees in the next, with tabs between. */
    String tabbed() {
        return cells.stream().map(Cell::rpm).collect(Collectors.joining("\t")) + "\n"
                + cells.stream().map(Cell::deg).collect(Collectors.joining("\t")) + "\n";
    }

    /** The row in words, for whoever does not see it. */
    String spoken() {
        return cells.stream()
                .map(cell -> cell.rpm() + " rpm " + cell.deg() + " deg"
                        + (cell.change().isEmpty() ? "" : ", change " + cell.change()))
                .collect(Collectors.joining("; "));
    }
}
