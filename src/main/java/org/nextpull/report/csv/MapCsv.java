package org.nextpull.report.csv;

import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.report.Shown;

/** The map to set, or after a stop the one to leave, as {@code rpm,advance_deg}: a line a cell. */
public final class MapCsv {
    private MapCsv() {}

    /** Empty where the setting of an advice is no map. */
    public static Optional<String> of(Advice advice) {
        Optional<EngineSetting> setting =
                advice.action() == Action.STOP ? advice.leave().map(Chosen::setting) : advice.setting();
        return setting.flatMap(EngineSetting::map).map(MapCsv::text);
    }

    private static String text(SparkMap map) {
        StringBuilder text = new StringBuilder(CsvLine.of(List.of("rpm", "advance_deg")));
        for (SparkMap.Cell cell : map.cells()) {
            text.append(CsvLine.of(
                    List.of(Shown.plain(cell.rpm()), Shown.plain(cell.advance().deg()))));
        }
        return text.toString();
    }
}
