package org.nextpull.window.bench;

import java.util.List;
import java.util.Optional;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.report.NextStep;
import org.nextpull.window.look.Tone;

/**
 * The page while a pull runs.
 *
 * @param heading which pull, and for how long
 * @param figures what is read from a distance
 * @param course the curve as it comes, over the best so far
 * @param nearest the limit nearest to being met; empty while none is watched
 */
record PullPage(String heading, List<Live> figures, Optional<SpeedPlot> course, Optional<Nearest> nearest) {
    public PullPage {
        figures = List.copyOf(figures);
    }

    /**
     * A figure of the moment.
     *
     * @param figure number, unit, name, and what it is held against
     * @param tone how it stands against its limit
     */
    public record Live(NextStep.Figure figure, Tone tone) {}

    /**
     * A limit.
     *
     * @param words reading and limit
     * @param used how much of the way to it is used, 1 at the limit, dimensionless
     * @param tone how it is to be taken
     */
    public record Nearest(String words, double used, Tone tone) {}
}
