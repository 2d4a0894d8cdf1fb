package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import org.nextpull.fit.ResponseCurve;
import org.nextpull.unit.Span;

/** The fitted curve of a sweep over the settings that were run; worked out where it is first drawn, since most answers are only read. */
public final class FittedCurve {
    private static final int POINTS = 81;
    private static final double NOTHING = 1e-9;

    private final Optional<Span> run;
    private final DoubleFunction<ResponseCurve.At> at;
    private Optional<List<Point>> points = Optional.empty();

    /**
     * @param run the settings that were run; empty where none was
     * @param at the figure at a setting
     */
    FittedCurve(Optional<Span> run, DoubleFunction<ResponseCurve.At> at) {
        this.run = run;
        this.at = at;
    }

    /**
     * A point of it.
     *
     * @param setting degrees, or lambda
     * @param response posterior median of the drift-free response there: N.m, or W where power is fitted
     * @param interval 5 to 95 % of it
     */
    public record Point(double setting, double response, Span interval) {}

    /** Its points from the least setting to the most; none where no more than one setting was run. */
    public synchronized List<Point> points() {
        List<Point> known = points.orElseGet(() ->
                run.filter(span -> span.width() > NOTHING).map(this::along).orElse(List.of()));
        points = Optional.of(known);
        return known;
    }

    private List<Point> along(Span span) {
        return IntStream.range(0, POINTS)
                .mapToDouble(index -> span.low() + index * span.width() / (POINTS - 1))
                .mapToObj(setting -> {
                    ResponseCurve.At there = at.apply(setting);
                    return new Point(setting, there.median(), there.interval());
                })
                .toList();
    }

    /** Curves through the same points are the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof FittedCurve curve && points().equals(curve.points());
    }

    @Override
    public int hashCode() {
        return points().hashCode();
    }
}
