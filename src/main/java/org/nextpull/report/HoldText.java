package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.advice.HoldNow;
import org.nextpull.alarm.Counsel;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.PullChange;

/** What to do now at a held speed whose spark is set while the engine runs: as a sentence, and in large print. */
public final class HoldText {
    /** What is asked for after a held speed. */
    public static final String COOL = "Let it cool.";

    /** What is asked for when all speeds are done. */
    public static final String PROVE =
            "All held speeds are done. Run the map that is advised over the band, which confirms it.";

    private HoldText() {}

    /** One line. */
    public static String sentence(HoldNow now) {
        String speed = rpm(now) + " rpm";
        String advance = now.advanceDeg().isPresent() ? degrees(now) + " deg" : "the advance that stands";
        String left = left(now).map(seconds -> " " + seconds + ".").orElse("");
        return switch (now.step()) {
            case GO -> "Hold " + speed + " " + which(now) + " at full load with " + advance + ".";
            case SET -> "Set " + advance + " at " + speed + "." + other(now) + left;
            case HOLD -> "Hold still at " + speed + " and " + advance + "." + left;
            case PROVE -> PROVE;
            default -> AlarmText.act(Counsel.LIFT) + ". " + speed + " " + which(now) + " " + why(now) + " " + COOL;
        };
    }

    /** How the next advance at a held speed is found. */
    public static final String HOW =
            "At each held speed the advance goes up by the plan's step until torque falls, then back into the two gaps below.";

    /** At which speed the plan had a plateau held; empty for another pull, and of a plan that names no speeds. */
    public static Optional<String> held(MeasuredPull pull, SweepPlan plan) {
        OptionalDouble rpm = PullChange.heldRpm(pull);
        return plan.pull().held().speedsRpm().isEmpty() || rpm.isEmpty()
                ? Optional.empty()
                : Optional.of("held at " + Shown.fixed(rpm.getAsDouble(), 0) + " rpm");
    }

    /** The speed that comes next, while the engine cools down. */
    public static String afterCoolDown(HoldNow now, double leftS) {
        String next = sentence(now);
        return "WAIT " + whole(leftS) + " s. Then " + Character.toLowerCase(next.charAt(0)) + next.substring(1);
    }

    /** Why the throttle is to be closed at once; empty where it is not, or where the speed is done as it should be. */
    public static Optional<String> ended(HoldNow now) {
        return now.step().isClose() && now.step() != HoldNow.Step.CLOSE_DONE
                ? Optional.of(rpm(now) + " rpm " + why(now))
                : Optional.empty();
    }

    /**
     * In large print: what to set and hold; empty once all speeds are done.
     *
     * @param coolDownS what is left of the plan's time between pulls, in s, where the engine is to cool down before the next speed
     */
    public static Optional<NextStep> step(HoldNow now, OptionalDouble coolDownS) {
        OptionalDouble waitS = now.step() == HoldNow.Step.GO ? coolDownS : OptionalDouble.empty();
        return now.isOver() ? Optional.empty() : Optional.of(large(now, waitS));
    }

    private static NextStep large(HoldNow now, OptionalDouble waitS) {
        boolean closes = now.step().isClose();
        List<NextStep.Figure> figures = new ArrayList<>();
        if (!closes) {
            figures.add(new NextStep.Figure(
                    now.advanceDeg().isPresent() ? degrees(now) : "-",
                    "deg",
                    "spark advance",
                    now.advanceDeg().isPresent() ? "" : "as it stands"));
            figures.add(new NextStep.Figure(rpm(now), "rpm", "held speed", which(now)));
        }
        String because = sentence(now);
        return new NextStep(
                closes || waitS.isPresent() ? NextStep.Kind.WAIT : NextStep.Kind.PULL,
                closes
                        ? AlarmText.act(Counsel.LIFT).toLowerCase(Locale.ROOT)
                        : waitS.isPresent() ? "Wait " + whole(waitS.getAsDouble()) + " s" : word(now),
                figures,
                waitS.isPresent() ? "then hold" : left(now).orElse("at full load"),
                because,
                Optional.empty(),
                because);
    }

    /** The advance to set or hold, with the time that is left at load; when the throttle is to be closed, that. */
    public static NextStep.Figure advance(HoldNow now) {
        if (now.step().isClose()) {
            return new NextStep.Figure("CLOSE", "", "throttle", why(now));
        }
        boolean isKnown = now.advanceDeg().isPresent();
        return new NextStep.Figure(
                isKnown ? degrees(now) : "-",
                isKnown ? "deg" : "",
                "spark advance: " + word(now).toLowerCase(Locale.ROOT) + (isKnown ? "" : " what stands"),
                now.other()
                                .map(other -> "log says " + Shown.fixed(other.readDeg(), 1) + "; ")
                                .orElse("")
                        + left(now).orElse(""));
    }

    private static String word(HoldNow now) {
        return switch (now.step()) {
            case SET -> "Set";
            case HOLD -> "Hold still";
            default -> "Hold";
        };
    }

    private static String why(HoldNow now) {
        return switch (now.step()) {
            case CLOSE_KNOCK -> "knocked at the advance that stands: no more there.";
            case CLOSE_LIMIT -> "ends: a limit is passed, or the exhaust is about to pass it.";
            case CLOSE_TIME -> "ends: the time at load is over.";
            case CLOSE_CUT -> "is not watched: the data stopped. This speed is held again.";
            case CLOSE_ADVANCE ->
                "ends: more than a step beyond what ran clean." + other(now) + " This speed is held again.";
            case CLOSE_UNSEEN -> "cannot be led: the log shows no throttle, no torque or no advance.";
            default -> "is done after " + now.plateaus() + " steady points.";
        };
    }

    /** What stands where another advance was asked for, a sentence. */
    private static String other(HoldNow now) {
        return now.other()
                .map(other -> " Asked " + Shown.fixed(other.askedDeg(), 1) + ", the log says "
                        + Shown.fixed(other.readDeg(), 1) + " deg.")
                .orElse("");
    }

    private static String whole(double seconds) {
        return Shown.fixed(Math.ceil(seconds), 0);
    }

    private static String which(HoldNow now) {
        return "(" + now.number() + " of " + now.count() + ")";
    }

    private static Optional<String> left(HoldNow now) {
        return now.leftS().isPresent()
                ? Optional.of(Shown.fixed(Math.floor(now.leftS().getAsDouble()), 0) + " s left at load")
                : Optional.empty();
    }

    private static String rpm(HoldNow now) {
        return Shown.fixed(now.rpm(), 0);
    }

    private static String degrees(HoldNow now) {
        return Shown.fixed(now.advanceDeg().orElseThrow(), 1);
    }
}
