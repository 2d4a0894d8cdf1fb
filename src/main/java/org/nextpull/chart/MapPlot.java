package org.nextpull.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.knowm.xchart.style.markers.SeriesMarkers;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AnswerRow;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.MapState;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;

/**
 * The data of a chart of spark advance over speed, for an ignition that holds a map. Points are speed in rpm and advance in degrees.
 *
 * @param tried what each pull that counts ran over several speeds, in the order of the day
 * @param held what stood at held speeds
 * @param chosen the map that stays if the day ends now; empty while there is none
 * @param next the map to set next; empty at the end
 * @param interval 90 % interval of the best advance by speed; empty where it is known nowhere
 * @param nearTop from the least advance near enough to the peak up to the peak; empty where it is known nowhere
 * @param nearTopPercent how much torque that gives away at most, in percent
 * @param knock the most advance that knock leaves, by speed
 * @param most the plan's most advance in degrees
 */
public record MapPlot(
        List<List<Point>> tried,
        List<Point> held,
        List<Point> chosen,
        List<Point> next,
        Optional<Plot.Band> interval,
        Optional<Plot.Band> nearTop,
        double nearTopPercent,
        List<Point> knock,
        double most)
        implements Plot {
    public MapPlot {
        tried = tried.stream().map(List::copyOf).toList();
        held = List.copyOf(held);
        chosen = List.copyOf(chosen);
        next = List.copyOf(next);
        knock = List.copyOf(knock);
    }

    /** The chart; empty where the ignition holds no map, or no pull gave torque yet. */
    public static Optional<MapPlot> of(SessionResult result) {
        return result.verdict().flatMap(verdict -> verdict.map().map(state -> plot(result, verdict, state)));
    }

    private static MapPlot plot(SessionResult result, Verdict verdict, MapState state) {
        List<Point> low = new ArrayList<>();
        List<Point> high = new ArrayList<>();
        for (AnswerRow row : state.rows()) {
            row.answer().flatMap(AnswerRow.Best::interval).ifPresent(span -> {
                low.add(new Point(row.rpm(), span.low()));
                high.add(new Point(row.rpm(), span.high()));
            });
        }
        Map<Boolean, List<List<Point>>> runs = result.pulls().stream()
                .filter(MeasuredPull::isUsed)
                .map(MapPlot::run)
                .collect(Collectors.partitioningBy(run -> run.size() > 1));
        return new MapPlot(
                runs.getOrDefault(true, List.of()),
                runs.getOrDefault(false, List.of()).stream()
                        .flatMap(List::stream)
                        .toList(),
                points(verdict.chosen().map(Chosen::setting)),
                points(Optional.of(verdict.advice()).flatMap(Advice::setting)),
                band(low, high),
                band(over(state, state.least()), over(state, state.peak())),
                result.plan().goal().nearBestPercent(),
                state.knockLimits().stream()
                        .map(limit -> new Point(limit.rpm(), limit.deg()))
                        .toList(),
                result.plan().timing().map(timing -> timing.most().deg()).orElseThrow());
    }

    private static Optional<Plot.Band> band(List<Point> low, List<Point> high) {
        return low.size() < 2 ? Optional.empty() : Optional.of(new Plot.Band(low, high));
    }

    private static List<Point> over(MapState state, SparkMap map) {
        return state.rows().stream()
                .map(row -> new Point(row.rpm(), map.degAt(row.rpm())))
                .toList();
    }

    private static List<Point> points(Optional<EngineSetting> setting) {
        return setting.flatMap(EngineSetting::map).stream()
                .flatMap(map -> map.cells().stream())
                .map(cell -> new Point(cell.rpm(), cell.advance().deg()))
                .toList();
    }

    private static List<Point> run(MeasuredPull pull) {
        return pull.figures().map(Figures::rows).orElse(List.of()).stream()
                .flatMap(row -> row.advance().map(deg -> new Point(row.rpm(), deg.deg())).stream())
                .toList();
    }

    @Override
    public ChartFrame frame(ChartSize size, ChartLook look) {
        ChartFrame frame =
                new ChartFrame(size, look, ChartFrame.Titles.overSpeed("Spark map", "advance, deg before TDC"));
        interval.ifPresent(band -> frame.band("best, 90 %", band, Palette.SKY_BLUE.color()));
        nearTop.ifPresent(
                band -> frame.darkBand("within " + nearTopPercent + " % of peak", band, Palette.BLUISH_GREEN.color()));
        for (int pull = 0; pull < tried.size(); pull++) {
            String name = pull == 0 ? "tried" : "tried " + pull;
            frame.line(name, tried.get(pull), Stroke.solid(look.ink()).thin());
            if (pull > 0) {
                frame.hideFromLegend(name);
            }
        }
        if (!held.isEmpty()) {
            frame.marks("held", held, new ChartFrame.Mark(look.ink(), SeriesMarkers.CIRCLE));
        }
        line(
                frame,
                next.isEmpty() ? "final" : "final if it ended now",
                chosen,
                Stroke.solid(Palette.BLUISH_GREEN.color()));
        line(frame, "next pull", next, Stroke.next());
        if (!knock.isEmpty()) {
            frame.marks("knock limit", knock, ChartFrame.Mark.knock());
        }
        List<Point> all = all();
        Extent x = Extent.of(all, Point::x);
        Extent y = Extent.of(all, Point::y);
        if (y.contains(most)) {
            frame.level("plan's limit", x, most, Stroke.dotted(look.ink()));
        }
        frame.limitsOverSpeed(x, y);
        return frame;
    }

    private static void line(ChartFrame frame, String name, List<Point> points, Stroke stroke) {
        if (points.size() > 1) {
            frame.line(name, points, stroke);
        }
    }

    private List<Point> all() {
        List<Point> all = new ArrayList<>();
        tried.forEach(all::addAll);
        List.of(held, chosen, next, knock).forEach(all::addAll);
        List.of(interval, nearTop).forEach(band -> band.ifPresent(drawn -> all.addAll(drawn.points())));
        return all;
    }
}
