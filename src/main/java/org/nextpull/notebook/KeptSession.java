package org.nextpull.notebook;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.EngineSetting;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.session.SourcePulls;

/**
 * A session out of the notebook. {@code Session.evaluate(input, sources)} gives its result again.
 *
 * @param summary what a list says of it
 * @param start what was known when it began
 * @param input what its result is made from, with all that was done by hand; without recordings
 * @param sources its logs or wires with their pulls and samples
 * @param acts what the operator did, in order of time
 * @param pulls the pulls with the figures that were made at the time
 * @param advice what was advised at the time
 */
public record KeptSession(
        SessionSummary summary,
        SessionStart start,
        SessionInput input,
        List<SourcePulls> sources,
        List<Act> acts,
        List<Pull> pulls,
        List<Advice> advice) {
    public KeptSession {
        sources = List.copyOf(sources);
        acts = List.copyOf(acts);
        pulls = List.copyOf(pulls);
        advice = List.copyOf(advice);
    }

    /** The result again, by the one chain that makes results. */
    public SessionResult result() {
        return Session.evaluate(input, sources);
    }

    public long id() {
        return summary.id();
    }

    /**
     * A pull with the figures that were made of it when it was last kept.
     *
     * @param number number over the day
     * @param at when it was first kept
     * @param source name of its source
     * @param standing whether it counted, as JSON writes it
     * @param setting what it was run with
     * @param figures what came out
     * @param knock what was known of knock: heard, none or not-measured
     */
    public record Pull(
            int number,
            Instant at,
            String source,
            String standing,
            KeptSetting setting,
            KeptFigures figures,
            String knock) {
        /**
         * What a pull was run with.
         *
         * @param advanceDeg flat advance
         * @param offsetDeg degrees added to the present map
         * @param lambda measured mixture
         */
        public record KeptSetting(
                OptionalDouble advanceDeg,
                OptionalDouble offsetDeg,
                OptionalDouble lambda,
                Optional<String> fuel,
                Optional<String> label,
                Optional<String> note) {}

        /**
         * What came out, corrected.
         *
         * @param order place in the day, from 0
         * @param meanTorqueNm band average, N.m
         * @param meanPowerW band average, W
         * @param factor correction factor
         */
        public record KeptFigures(
                double order, OptionalDouble meanTorqueNm, OptionalDouble meanPowerW, OptionalDouble factor) {}
    }

    /**
     * Something that the operator did by hand.
     *
     * @param at when
     * @param pulls how many pulls there were then
     * @param act what
     */
    public record Act(Instant at, int pulls, OperatorAction act) {}

    /**
     * What was advised at the time.
     *
     * @param at when
     * @param pulls how many pulls there were then
     * @param action what to do, as JSON writes it
     * @param code why, as JSON writes it
     * @param setting what was to be set
     * @param leave what was to be left in the engine if the day had ended then; empty parts where nothing was
     * @param leaveBy what had decided that, as JSON writes it
     */
    public record Advice(
            Instant at,
            int pulls,
            String action,
            String code,
            EngineSetting setting,
            EngineSetting leave,
            Optional<String> leaveBy) {}
}
