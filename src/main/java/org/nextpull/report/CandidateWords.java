package org.nextpull.report;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.plan.Goal;
import org.nextpull.session.CandidateDay;
import org.nextpull.unit.Span;

/** What a day says of its candidates, in sentences. */
public final class CandidateWords {
    private final CandidateDay day;
    private final Goal.Response response;

    /** Words on the response that the operator goes by. */
    public CandidateWords(CandidateDay day, Goal.Response response) {
        this.day = day;
        this.response = response;
    }

    /** Where the gain of each comes from, a sentence each; none before the decision runs tell one. */
    public List<String> shares() {
        return day.candidates().stream()
                .filter(state -> day.gain(state, response).isPresent())
                .map(this::shares)
                .toList();
    }

    private String shares(CandidateDay.State state) {
        String label = state.plan().label();
        String there = "at the setting of " + day.reference().label();
        return state.shares()
                .map(shares -> label + " " + there + ": " + share(shares.itself()) + ", which is "
                        + (isFuel(state) ? "the fuel" : "what is fitted") + "; its own spark and mixture add "
                        + share(shares.setting()) + ".")
                .orElse("What " + label + " makes " + there + " is not known: its sweep did not go there.");
    }

    private boolean isFuel(CandidateDay.State state) {
        return state.swap().isPresent()
                && !state.plan().fuel().equals(day.reference().fuel());
    }

    private static String share(CandidateDay.Share share) {
        return CompareWords.signed(share.percent()) + " % (95 % interval " + CompareWords.interval(share.interval())
                + ")";
    }

    /** What the same power takes of each, a sentence each; none for fuels that are not known. */
    public List<String> consumptions() {
        return day.candidates().stream()
                .flatMap(state -> day.consumption(state, response).map(used -> consumption(state, used)).stream())
                .toList();
    }

    private String consumption(CandidateDay.State state, CandidateDay.Consumption used) {
        return "The same power takes of " + state.plan().label() + " " + Shown.fixed(used.mass(), 2)
                + " times the mass of " + day.reference().label()
                + times(used.volume(), ", ", " times the volume")
                + times(used.energy(), ", ", " times the energy")
                + times(used.cost(), ", and costs ", " times as much an hour") + ".";
    }

    private static String times(OptionalDouble value, String before, String after) {
        return value.isPresent() ? before + Shown.fixed(value.getAsDouble(), 2) + after : "";
    }

    /** The speeds at which one knocked. */
    public static String knock(Span rpm) {
        return Shown.fixed(rpm.low(), 0) + "-" + Shown.fixed(rpm.high(), 0) + " rpm";
    }
}
