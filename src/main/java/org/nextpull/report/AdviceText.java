package org.nextpull.report;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.Factor;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.advice.WaitFor;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.EngineSetting;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Quantity;

/** The sentences of an advice, with the numbers behind it. */
public final class AdviceText {
    static final String NOTHING_TO_LEAVE = "No clean setting was run. Go back to the original map.";

    private final Shown shown;

    public AdviceText(Shown shown) {
        this.shown = shown;
    }

    /** What to do, the act first: {@code SET 28.0 deg, lambda 0.870}. */
    public String headline(Advice advice) {
        String setting = advice.setting().map(AdviceText::setting).orElse("");
        if (advice.reason() instanceof Reason.ChangeOver to && advice.action() != Action.STOP) {
            return "CHANGE OVER to \"" + to.label() + "\". Then set " + setting;
        }
        return switch (advice.action()) {
            case PULL -> "SET " + setting;
            case REPEAT -> "REPEAT " + setting;
            case WAIT -> "WAIT. Then set " + setting;
            case STOP ->
                (isDone(advice) ? "DONE. " : "STOP. ")
                        + advice.leave().map(AdviceText::leave).orElse(NOTHING_TO_LEAVE);
        };
    }

    /** A sweep that found its peak, or a day that told its candidates apart, is good news, which is calm; any other stop is loud. */
    static boolean isDone(Advice advice) {
        boolean isAtPeak =
                advice.leave().filter(chosen -> chosen.by() == ChosenBy.PEAK).isPresent();
        return (advice.reason() instanceof Reason.Decided end && end.settled())
                || (advice.code() == AdviceCode.SETTLED && isAtPeak);
    }

    private ReasonText.Words words(Advice advice) {
        return advice.reason().in(new ReasonText(this, advice));
    }

    /** Why, in one sentence that can be read from a distance. */
    public String brief(Advice advice) {
        return words(advice).brief();
    }

    /** Why, in a sentence or two that an operator understands. */
    public String because(Advice advice) {
        String sentence = words(advice).full();
        String wait = advice.waitFor().map(this::waiting).orElse("");
        String leave = advice.action() == Action.WAIT
                ? advice.leave()
                        .map(chosen -> " Until then leave " + setting(chosen.setting()) + " set.")
                        .orElse(" " + NOTHING_TO_LEAVE)
                : "";
        return sentence
                + wait
                + leave
                + advice.earlier()
                        .map(stop -> StopText.sentence(stop, advice.action() == Action.STOP))
                        .orElse("");
    }

    /** A setting to run in words: {@code 28.0 deg, lambda 0.870}; one without values is the map as it stands. */
    public static String setting(EngineSetting setting) {
        String values = values(setting);
        return values.isEmpty() ? "the present map" : values;
    }

    /** Spark and mixture in words, as far as they are there. */
    public static String values(EngineSetting setting) {
        String advance = setting.advance()
                .map(value -> Shown.fixed(value.deg(), 1) + " deg")
                .or(() -> setting.offset().map(value -> signed(value.deg()) + " deg on the present map"))
                .orElse("");
        String lambda = setting.lambda()
                .map(value -> "lambda " + Shown.fixed(value.value(), 3))
                .orElse("");
        String spark = setting.map().map(MapText::range).orElse(advance);
        return spark.isEmpty() || lambda.isEmpty() ? spark + lambda : spark + ", " + lambda;
    }

    /** Degrees that are added to a map, with their sign. */
    public static String signed(double deg) {
        return (deg < 0 ? "" : "+") + Shown.fixed(deg, 1);
    }

    /** What stays in the engine and what decided it; before the end of the day the best so far. */
    public static Optional<String> stays(Verdict verdict) {
        return verdict.chosen().map(chosen -> kept(verdict, chosen) + " " + by(chosen));
    }

    /** What stays in the engine; before the end of the day the best so far. */
    public static String kept(Verdict verdict, Chosen chosen) {
        return verdict.advice().action() == Action.STOP
                ? finalSetting(chosen)
                : "Best so far: " + setting(chosen.setting()) + ".";
    }

    private static String finalSetting(Chosen chosen) {
        return "Final setting: " + setting(chosen.setting()) + ".";
    }

    static String leave(Chosen chosen) {
        return finalSetting(chosen) + " " + by(chosen);
    }

    /** What decided a setting, a sentence. */
    public static String by(Chosen chosen) {
        return switch (chosen.by()) {
            case PEAK ->
                (chosen.setting().map().isPresent() ? "Close to MBT at each speed" : peak(chosen.proof()))
                        + unproven(chosen.proof()) + ".";
            case KNOCK_LIMIT ->
                knockLimited(chosen.proof().besideBestDeg()) + ": knock decides, not the peak"
                        + unproven(chosen.proof()) + ".";
            case PLAN_LIMIT -> "A limit of the plan decides, not the peak" + unproven(chosen.proof()) + ".";
            case HIGHEST_TRIED ->
                chosen.proof().standing() == Chosen.Standing.ONLY_ONE
                        ? "It is the only clean setting that was run."
                        : "It is the clean setting that read highest so far; it is not known to be the best.";
        };
    }

    /** What is left by its peak: only of factors that were swept and bracketed, and proven only where it was run again. */
    private static String peak(Chosen.Proof proof) {
        if (proof.bracketed().isEmpty()) {
            return "Little is still to find, though the peak is not bracketed";
        }
        String best = proof.bracketed().stream()
                .map(factor -> factor == Factor.TIMING ? mbt(proof.besideBestDeg()) : "on the rich side of best lambda")
                .collect(Collectors.joining(", and "));
        String open = proof.open().stream()
                .map(factor ->
                        (factor == Factor.TIMING ? "; the spark sweep" : "; the mixture sweep") + " is not bracketed")
                .collect(Collectors.joining());
        return "That is " + best + open;
    }

    private static String mbt(double besideDeg) {
        return beside(besideDeg).map(by -> by + " MBT").orElse("MBT");
    }

    /** What was run and proven need not be the number that the sweep works out, to the half degree. */
    private static String knockLimited(double besideDeg) {
        return beside(Math.min(0, besideDeg))
                .map(by -> "That is " + by + " the knock-limited advance")
                .orElse("Knock-limited");
    }

    private static Optional<String> beside(double deg) {
        String by = Shown.fixed(Math.abs(deg), 1);
        return Optional.of(by + " deg " + (deg > 0 ? "above" : "below")).filter(words -> Double.parseDouble(by) != 0);
    }

    private static String unproven(Chosen.Proof proof) {
        return switch (proof.standing()) {
            case PROVEN -> "";
            case NOT_PROVEN, ONLY_ONE -> "; not run again to confirm it";
            case NOT_RUN -> "; no pull was run at it";
        };
    }

    private String waiting(WaitFor wait) {
        return wait.condition() == WaitFor.Condition.EXHAUST
                ? " Wait until the exhaust is below " + temperature(wait.want().kelvins()) + ", min "
                        + Shown.fixed(wait.atLeastSeconds(), 0) + " s."
                : " Min " + Shown.fixed(wait.atLeastSeconds(), 0) + " s.";
    }

    /** What passed its limit, and by how much. */
    public String passed(Alarm alarm) {
        return decapitalised(against(alarm.limit(), alarm.worst(), alarm.allowed()));
    }

    String against(Limit limit, double value, double allowed) {
        return name(limit) + " " + quantity(limit, value) + ", limit " + quantity(limit, allowed);
    }

    String temperature(double kelvins) {
        return shown.value(Quantity.TEMPERATURE, kelvins);
    }

    private String quantity(Limit limit, double si) {
        return limit == Limit.KNOCK ? Shown.count(Math.round(si), "event") : shown.value(limit.quantity(), si);
    }

    static String name(WaitFor.Condition condition) {
        return switch (condition) {
            case COOLANT -> "Coolant";
            case OIL -> "Oil";
            case INLET_AIR -> "Inlet air";
            case EXHAUST -> "Exhaust";
        };
    }

    static String name(Limit limit) {
        return switch (limit) {
            case KNOCK -> "Knock";
            case LEAN -> "Lambda";
            case EXHAUST -> "Exhaust temperature";
            case COOLANT -> "Coolant temperature";
            case OIL -> "Oil temperature";
            case INLET_AIR -> "Inlet air temperature";
            case OIL_PRESSURE -> "Oil pressure";
            case FUEL_PRESSURE -> "Fuel pressure";
            case BOOST -> "Boost";
            case SPEED -> "Engine speed";
            case INJECTOR_DUTY -> "Injector duty";
        };
    }

    static String capitalised(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static String decapitalised(String sentence) {
        return Optional.of(sentence)
                .filter(text -> !text.isEmpty())
                .map(text -> text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1))
                .orElse("");
    }
}
