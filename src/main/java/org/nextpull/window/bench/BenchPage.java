package org.nextpull.window.bench;

import java.util.List;
import java.util.Optional;
import org.nextpull.chart.MapPlot;
import org.nextpull.chart.SpeedPlot;
import org.nextpull.chart.SweepPlot;
import org.nextpull.finding.Finding;
import org.nextpull.report.ConditionText;
import org.nextpull.report.NextStep;
import org.nextpull.window.look.Tone;

/**
 * Everything that the bench page shows, in words and data; the views add nothing.
 *
 * @param heading what the day is about
 * @param link how the data arrives
 * @param recording whether it is kept
 * @param pull the pull in progress, which then is the page; empty between pulls
 * @param urgent what must be seen on every page, worst first
 * @param lead the next step
 * @param map the map to set or to leave, where the setting is one
 * @param conditions the start conditions
 * @param sweep the response against the factor that is swept now
 * @param other the same against the other factor, once both were swept
 * @param sparkMap advance over speed, where the ignition holds a map
 * @param speed torque and power over speed
 * @param cards the pulls, in the order of the day
 * @param next the setting of the next pull, for the empty card at the end; empty at a stop
 * @param day what the sweeps and the repeats say, and what is worth knowing of the day
 */
public record BenchPage(
        String heading,
        Remark link,
        Remark recording,
        Optional<PullPage> pull,
        List<Remark> urgent,
        NextStep lead,
        Optional<MapStrip> map,
        List<ConditionText.Line> conditions,
        Optional<SweepPlot> sweep,
        Optional<SweepPlot> other,
        Optional<MapPlot> sparkMap,
        Optional<SpeedPlot> speed,
        List<PullCard> cards,
        Optional<String> next,
        List<Remark> day) {
    public BenchPage {
        urgent = List.copyOf(urgent);
        conditions = List.copyOf(conditions);
        cards = List.copyOf(cards);
        day = List.copyOf(day);
    }

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

    /**
     * One pull in the strip.
     *
     * @param number its number over the day
     * @param setting what it was run with, a line each
     * @param response its response with unit, or why it has none
     * @param change its response against the first pull that counts; empty where there is no such figure
     * @param tone how it stands
     * @param mark its standing and what was met in a word or two; empty for a clean pull that counts
     * @param remarks findings and notes on it, in sentences
     */
    record PullCard(
            int number,
            List<String> setting,
            String response,
            String change,
            Tone tone,
            String mark,
            List<Remark> remarks) {
        public PullCard {
            setting = List.copyOf(setting);
            remarks = List.copyOf(remarks);
        }

        /** The card in one line, for whoever does not see it. */
        public String spoken() {
            StringBuilder line = new StringBuilder("Pull " + number);
            setting.forEach(part -> line.append(", ").append(part));
            line.append(", ").append(response);
            if (!change.isEmpty()) {
                line.append(", ").append(change);
            }
            if (!mark.isEmpty()) {
                line.append(", ").append(mark);
            }
            remarks.forEach(remark -> line.append(". ").append(remark.sentence()));
            return line.toString();
        }
    }

    /**
     * A sentence worth reading.
     *
     * @param tone how much it matters
     * @param sentence the sentence
     */
    public record Remark(Tone tone, String sentence) {
        /** A finding of that severity, in a sentence. */
        static Remark of(Finding.Severity severity, String sentence) {
            return new Remark(
                    switch (severity) {
                        case NOTE -> Tone.PLAIN;
                        case WARNING -> Tone.WARN;
                        case ERROR -> Tone.BAD;
                    },
                    sentence);
        }
    }
}
