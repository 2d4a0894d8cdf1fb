package org.nextpull.report;

import java.util.stream.Collectors;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Ignition;
import org.nextpull.advice.PlannerDecision;
import org.nextpull.advice.Reason;
import org.nextpull.fit.TorqueLeft;

/** Why, in two lengths: each reason's short and long wording side by side. */
final class ReasonText implements Reason.Cases<ReasonText.Words> {
    private static final String WITHIN_KNOCK = " within what knock leaves";

    private final AdviceText words;
    private final Advice advice;

    ReasonText(AdviceText words, Advice advice) {
        this.words = words;
        this.advice = advice;
    }

    /**
     * The wording of a reason.
     *
     * @param brief one sentence that can be read from a distance
     * @param full the same with its numbers
     */
    record Words(String brief, String full) {
        /** Words whose first sentence says it alone. */
        static Words of(String full) {
            int end = full.indexOf(". ");
            return new Words(end < 0 ? full : full.substring(0, end + 1), full);
        }
    }

    @Override
    public Words first(Reason.First first) {
        if (!first.ignition().isMap()) {
            return Words.of("Baseline: the plan's start setting.");
        }
        String moved = first.shiftDeg() == 0 ? "" : " moved by " + AdviceText.signed(first.shiftDeg()) + " deg";
        return Words.of("Baseline: the present map" + moved + ".");
    }

    @Override
    public Words searching(Reason.Searching search) {
        boolean isMap = search.ignition().isMap();
        String everywhere = isMap ? " at each speed" : "";
        String aim = switch (search.purpose()) {
            case CLIMB ->
                "Torque still rises with advance; " + (isMap ? "each speed goes" : "this goes")
                        + " as far as step and knock allow.";
            case BRACKET_BELOW ->
                "Less advance than the likely best" + everywhere + ", to see how far torque falls on that side.";
            case BRACKET_ABOVE ->
                "Slightly more advance than the likely best" + everywhere + ", to see where torque begins to fall.";
            case UP_TO_KNOCK ->
                "Knock decides, not the peak: this goes as far as its margin permits" + everywhere + ".";
            case EXPLORE -> explore(search.ignition());
            case LOOK_AGAIN ->
                "One knock flag stands alone, so its speed is run again: listen, and close the throttle at once if it knocks.";
            case PROVE -> "Confirm the final " + (isMap ? "map." : "setting.");
        };
        String listen = search.listen() ? " Knock is not measured: listen during this pull, and mark it." : "";
        String within = search.purpose() == PlannerDecision.Purpose.UP_TO_KNOCK ? WITHIN_KNOCK : "";
        Words words = Words.of(aim + " " + left(search.left()) + within + " after "
                + Shown.count(search.pulls(), "pull") + "; scatter taken as "
                + MapText.percent(search.scatterPercent()) + "."
                + listen);
        return search.rise()
                .map(ReasonText::rise)
                .map(rise -> new Words(rise, words.full() + " " + rise))
                .orElse(words);
    }

    private static String rise(Reason.Searching.Rise rise) {
        return "About " + Shown.count(rise.pulls(), "pull") + ": a speed that was not held rises by at most "
                + Shown.fixed(rise.stepDeg(), 1) + " deg a pull.";
    }

    private static String explore(Ignition ignition) {
        return switch (ignition) {
            case MAP -> "This map and mixture tell most about the peak.";
            case FLAT, OFFSET -> "This spark and mixture tell most about the peak.";
            case STANDING -> "This mixture tells most about the peak.";
        };
    }

    @Override
    public Words outOfWindow(Reason.OutOfWindow window) {
        double now = window.now().kelvins();
        double want = window.want().kelvins();
        return Words.of(AdviceText.name(window.condition()) + " " + words.temperature(now) + ", needs at "
                + (now < want ? "least " : "most ") + words.temperature(want) + ".");
    }

    @Override
    public Words knocked(Reason.Knocked knocked) {
        return Words.of(
                "Knock in pull " + knocked.pull() + " at " + Shown.fixed(knocked.heardAtDeg(), 1) + " deg: with the "
                        + Shown.fixed(knocked.marginDeg(), 1)
                        + " deg margin no advance is left in the plan. Richen, change the fuel, or lower least_deg.");
    }

    @Override
    public Words limitReached(Reason.LimitReached reached) {
        String what = words.against(reached.limit(), reached.worst(), reached.allowed()) + ", in pull " + reached.pull()
                + ".";
        return switch (advice.code()) {
            case COOL_EXHAUST ->
                new Words(
                        what + " Let it cool. Next pull: " + (isRicher() ? "richer." : "more advanced."),
                        what + " Let it cool. Next pull: "
                                + (isRicher() ? "richer." : "more advanced, which cools it; or richen by hand.")
                                + " Do not retard: it heats the exhaust.");
            case TOO_LEAN -> new Words(what + " Next pull: richer.", what + " Next pull: richer.");
            default -> new Words(what, what + heldBy(reached));
        };
    }

    private static String heldBy(Reason.LimitReached reached) {
        return switch (reached.limit()) {
            case EXHAUST ->
                " The plan allows no richer setting: the sweep ends. Richen by hand, or begin less retarded.";
            case LEAN -> " The plan allows no richer setting: the sweep ends.";
            default -> " Sweep held. Find the cause. Then override pull " + reached.pull() + " to go on.";
        };
    }

    /** Whether a richer mixture is what answers the limit; else it is more advance. */
    private boolean isRicher() {
        return advice.setting().filter(setting -> setting.lambda().isPresent()).isPresent();
    }

    @Override
    public Words notWatched(Reason.NotWatched missing) {
        if (!missing.byHand()) {
            return Words.of(
                    "No live channel measures lambda, so no mixture sweep is run and nothing leaner is asked for."
                            + " Fix the sensor, name its column in [log] columns, and run a pull at this setting.");
        }
        String limits = missing.limits().stream().map(WatchText::name).collect(Collectors.joining(" and "));
        return Words.of("No live channel watches " + limits
                + ", which must be watched for the next step. Fix that and repeat this setting,"
                + " or watch it yourself and say so (unwatched); until then no step goes that way.");
    }

    @Override
    public Words ended(Reason.Ended end) {
        String where = end.ignition().isMap() ? " at some speeds" : "";
        String left = left(end.left());
        String why = switch (advice.code()) {
            case SETTLED -> left + ": less than a pull can show.";
            case SCATTER_LIMITED ->
                "Repeatability of " + MapText.percent(end.scatterPercent())
                        + " hides the rest. Find why pulls differ before you run more. " + left + ".";
            case KNOCK_LIMITED ->
                (end.ignition() == Ignition.STANDING
                                ? "Knock limits the mixture. "
                                : "MBT is further advanced" + where + "; do not chase it. ")
                        + left + WITHIN_KNOCK + ".";
            case PLAN_LIMIT ->
                "At the plan's limit" + where + ": torque may still rise beyond it. " + left
                        + " within what the plan allows.";
            case BUDGET -> "Out of pulls (" + end.pulls() + "): the answer is not settled. " + left + ".";
            default -> "The sweep ends. " + left + ".";
        };
        return Words.of(
                why + " Chance of more than 0.5 % left: " + chance(end.left().chanceOfMuch()) + ".");
    }

    private static String left(TorqueLeft left) {
        String percent = MapText.percent(left.expectedPercent());
        return (percent.equals(MapText.percent(0)) ? "Under 0.01 %" : "About " + percent) + " of torque still to find";
    }

    private static String chance(double share) {
        double hundredths = 100 * share;
        return (hundredths < 1 ? "under 1" : Shown.fixed(hundredths, 0)) + " in 100";
    }

    @Override
    public Words changeOver(Reason.ChangeOver to) {
        String fuel = to.fuel().map(name -> " (" + name + ")").orElse("");
        String duty = to.flow()
                .filter(flow -> flow.litresTimes() > 1)
                .map(ReasonText::duty)
                .orElse("");
        return new Words(
                "Change over to \"" + to.label() + "\": drain, flush, prime, warm; the first pull is discarded.",
                "Change over to \"" + to.label() + "\"" + fuel + ": " + String.join(", ", CandidateWords.steps(to))
                        + "." + duty + " The first pull after it flushes the line and is discarded.");
    }

    private static String duty(Reason.Flow flow) {
        if (flow.duty().isEmpty()) {
            return " Multiply the injector duty of the last pull by that; do not run where the product passes what they can give.";
        }
        return flow.isBeyond()
                ? " DO NOT RUN IT: that passes " + Shown.fixed(100 * flow.most(), 0)
                        + " % duty, so the engine would run lean. Fit larger injectors first."
                : "";
    }

    @Override
    public Words deciding(Reason.Deciding run) {
        String full = "Decision run " + run.run() + " of " + run.planned() + ": \"" + run.label()
                + "\" at its own best setting, re-set.";
        return new Words(full, full);
    }

    @Override
    public Words decided(Reason.Decided end) {
        String full = "The decision runs are done. "
                + (end.settled() ? "" : "Not every difference is settled. ")
                + "\"" + end.best() + "\" is the best that the runs show.";
        return new Words(full, full);
    }

    @Override
    public Words nothing(Reason.Nothing end) {
        return Words.of(
                advice.code() == AdviceCode.BUDGET
                        ? "Out of pulls (" + end.pulls() + "): none gave torque."
                        : "After " + Shown.count(end.pulls(), "pull")
                                + " nothing that the plan allows is left to run.");
    }
}
