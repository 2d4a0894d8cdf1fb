package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.Reason;
import org.nextpull.advice.SweepAnswer;
import org.nextpull.advice.Verdict;
import org.nextpull.compare.Comparison;
import org.nextpull.plan.Goal;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.KnockHeard;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;

/** What a day says of its candidates, in sentences. */
public final class CandidateWords {
    private static final String NOTHING = "-";

    private final CandidateDay day;
    private final Goal.Response response;
    private final Shown shown;

    /** Words on the response that the operator goes by. */
    public CandidateWords(CandidateDay day, Goal.Response response, Shown shown) {
        this.day = day;
        this.response = response;
        this.shown = shown;
    }

    /** The checklist of a change-over, in the order of the work. */
    public static List<String> steps(Reason.ChangeOver to) {
        List<String> steps = new ArrayList<>(List.of("drain", "flush", "prime", "set the fuelling for it"));
        to.flow()
                .filter(flow -> flow.litresTimes() > 1)
                .ifPresent(flow -> steps.add("check injectors and pump: "
                        + Shown.fixed(flow.litresTimes(), 2)
                        + " times the litres"
                        + (flow.duty().isPresent()
                                ? ", " + Shown.fixed(100 * flow.duty().getAsDouble(), 0) + " % duty"
                                : "")));
        steps.addAll(List.of("check fuel pressure and leaks", "warm to the start range"));
        return steps;
    }

    /** What heads the columns of {@link #row}. */
    public static List<String> heads() {
        return List.of("candidate", "fuel", "setting", "decided by", "gain %", "from", "to", "exhaust", "knock heard");
    }

    /** A candidate beside the others: its setting, its gain with 95 % limits, the hottest exhaust and where it knocked. */
    public List<String> row(CandidateDay.State state) {
        Optional<Comparison.Difference> gain = day.gain(state, response).map(Comparison::difference);
        return List.of(
                state.plan().label(),
                state.plan().fuel().orElse(NOTHING),
                state.chosen().map(Chosen::setting).map(AdviceText::setting).orElse("not yet found"),
                state.chosen().map(found -> found.by().id().replace('-', ' ')).orElse(NOTHING),
                gain.map(one -> CompareWords.signed(one.percent())).orElse(NOTHING),
                gain.map(one -> CompareWords.signed(one.interval().low())).orElse(NOTHING),
                gain.map(one -> CompareWords.signed(one.interval().high())).orElse(NOTHING),
                state.hottestExhaust()
                        .map(exhaust -> shown.value(Quantity.TEMPERATURE, exhaust.kelvins()))
                        .orElse(NOTHING),
                state.knockRpm()
                        .map(rpm -> KnockText.span(new KnockHeard.Speeds(rpm.low(), rpm.high())) + " rpm")
                        .orElse(NOTHING));
    }

    /** Which, by how much and at what setting; empty while the day has not decided. */
    public Optional<String> answer() {
        return day.comparison()
                .filter(told -> day.isDecided())
                .map(told -> day.best(response)
                        .map(this::best)
                        .orElse("None is shown to be better than " + quoted(day.reference()) + "."));
    }

    /** Which of them cannot be told apart by the decision runs so far. */
    public Optional<String> groups() {
        return day.comparison()
                .map(told -> new CompareWords(shown, response, told))
                .flatMap(told -> told.groups(told.deciding()));
    }

    /** Its gain over the reference in the decision runs, with 95 % limits; empty for that, and before there are two runs of each. */
    public Optional<String> gain(CandidateDay.State state) {
        return day.gain(state, response)
                .map(Comparison::difference)
                .map(gain -> CompareWords.signed(gain.percent()) + " % (95 % CI "
                        + CompareWords.interval(gain.interval()) + ") over " + quoted(day.reference()));
    }

    private String best(CandidateDay.State state) {
        return quoted(state.plan())
                + state.plan().fuel().map(fuel -> " (" + fuel + ")").orElse("")
                + ": " + gain(state).orElseThrow()
                + state.chosen()
                        .map(own -> ", at " + AdviceText.setting(own.setting()))
                        .orElse("") + ".";
    }

    /** How many candidates have a setting of their own, before the decision runs. */
    public String swept() {
        long found = day.candidates().stream()
                .filter(state -> state.chosen().isPresent())
                .count();
        return "Best setting found of " + found + " of " + day.candidates().size() + ". The decision runs follow.";
    }

    /** How many decision runs are done, and in which order all of them run. */
    public String runs() {
        return "Decision runs: " + day.done() + " of " + day.order().size()
                + (day.isDecided() && day.done() < day.order().size() ? ", which were enough" : "")
                + (day.runs().size() > day.done()
                        ? ", beside " + (day.runs().size() - day.done()) + " of earlier days"
                        : "")
                + ", in the order "
                + String.join(" ", day.order()) + ".";
    }

    /** What the own sweep of each says of spark and mixture, a sentence each. */
    public List<String> sweeps(SessionResult result) {
        AnswerText answers = new AnswerText(shown);
        return day.candidates().stream()
                .flatMap(state -> state.swept().stream()
                        .flatMap(swept -> Stream.concat(
                                swept.timing().map(answer -> answers.timing(result, answer)).stream(),
                                swept.mixture().map(answers::mixture).stream()))
                        .map(sentence -> quoted(state.plan()) + ": " + sentence))
                .toList();
    }

    /** What knock leaves to each, by speed where the ignition holds a map, a sentence each; none for those that did not knock. */
    public List<String> knockLimits() {
        return day.candidates().stream()
                .flatMap(state -> state
                        .swept()
                        .flatMap(CandidateWords::knockLimit)
                        .map(limit -> "Knock limit of " + quoted(state.plan()) + ", margin taken off: " + limit + ".")
                        .stream())
                .toList();
    }

    private static Optional<String> knockLimit(Verdict swept) {
        String rows = swept.map().stream()
                .flatMap(map -> map.knockLimits().stream())
                .map(row -> Shown.fixed(row.deg(), 1) + " deg at " + Shown.fixed(row.rpm(), 0))
                .collect(Collectors.joining(", "));
        return rows.isEmpty()
                ? swept.timing()
                        .map(SweepAnswer::limit)
                        .filter(OptionalDouble::isPresent)
                        .map(limit -> Shown.fixed(limit.getAsDouble(), 1) + " deg at every speed")
                : Optional.of(rows + " rpm");
    }

    /** Where the gain of each comes from, a sentence each; none before the decision runs tell one. */
    public List<String> shares() {
        return day.candidates().stream()
                .filter(state -> day.gain(state, response).isPresent())
                .map(this::shares)
                .toList();
    }

    private String shares(CandidateDay.State state) {
        String label = quoted(state.plan());
        String there = "at the setting of " + quoted(day.reference());
        return state.shares()
                .map(shares -> label + " " + there + ": " + share(shares.itself()) + ", which is "
                        + (isFuel(state) ? "the fuel" : "the part") + "; its own spark and mixture add "
                        + share(shares.setting()) + ".")
                .orElse("What " + label + " makes " + there + " is not known: its sweep did not go there.");
    }

    private boolean isFuel(CandidateDay.State state) {
        return state.swap().isPresent()
                && !state.plan().fuel().equals(day.reference().fuel());
    }

    private static String share(CandidateDay.Share share) {
        return CompareWords.signed(share.percent()) + " % (95 % CI " + CompareWords.interval(share.interval()) + ")";
    }

    /** What the same power takes of each, a sentence each; none for fuels that are not known. */
    public List<String> consumptions() {
        return day.candidates().stream()
                .flatMap(state -> day.consumption(state, response).map(used -> consumption(state, used)).stream())
                .toList();
    }

    private String consumption(CandidateDay.State state, CandidateDay.Consumption used) {
        return "For the same power as " + quoted(day.reference()) + ", " + quoted(state.plan()) + " takes "
                + Shown.fixed(used.mass(), 2) + " times the mass"
                + times(used.volume(), ", ", " times the volume")
                + times(used.energy(), ", ", " times the energy")
                + times(used.cost(), ", and costs ", " times as much an hour") + ".";
    }

    private static String quoted(SweepPlan.Candidate candidate) {
        return "\"" + candidate.label() + "\"";
    }

    private static String times(OptionalDouble value, String before, String after) {
        return value.isPresent() ? before + Shown.fixed(value.getAsDouble(), 2) + after : "";
    }
}
