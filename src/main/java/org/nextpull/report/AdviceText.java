package org.nextpull.report;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.advice.Action;
import org.nextpull.advice.Advice;
import org.nextpull.advice.AdviceCode;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.ChosenBy;
import org.nextpull.advice.Condition;
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

    /** A sweep that found its peak is good news, which is calm; any other stop is loud. */
    static boolean isDone(Advice advice) {
        return advice.code() == AdviceCode.SETTLED
                && advice.leave().filter(chosen -> chosen.by() == ChosenBy.PEAK).isPresent();
    }

    /** Why, in a sentence or two that an operator understands. */
    public String because(Advice advice) {
        String sentence = reason(advice);
        String wait = advice.waitFor().map(this::waiting).orElse("");
        String leave = advice.action() == Action.WAIT
                ? advice.leave()
                        .map(chosen -> " Until then leave " + setting(chosen.setting()) + " set.")
                        .orElse(" " + NOTHING_TO_LEAVE)
                : "";
        return sentence
                + wait
                + leave
                + advice.earlier().map(StopText::sentence).orElse("");
    }

    /** A setting to run in words: {@code 28.0 deg, lambda 0.870}; one without values is the map as it stands. */
    public static String setting(EngineSetting setting) {
        String values = values(setting);
        return values.isEmpty() ? "the present map" : values;
    }

    /** Spark and mixture in words, as far as they are there. */
    static String values(EngineSetting setting) {
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
        boolean ended = verdict.advice().action() == Action.STOP;
        return verdict.chosen()
                .map(chosen -> ended ? leave(chosen) : "Best so far: " + setting(chosen.setting()) + ". " + by(chosen));
    }

    static String leave(Chosen chosen) {
        return "Final setting: " + setting(chosen.setting()) + ". " + by(chosen);
    }

    static String by(Chosen chosen) {
        return switch (chosen.by()) {
            case PEAK ->
                (chosen.setting().map().isPresent() ? "Close to MBT at each speed" : peak(chosen.proof()))
                        + unproven(chosen.proof()) + ".";
            case KNOCK_LIMIT -> "Knock-limited: knock decides, not the peak" + unproven(chosen.proof()) + ".";
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
                .map(factor -> factor == Factor.TIMING ? "MBT" : "on the rich side of best lambda")
                .collect(Collectors.joining(", and "));
        String open = proof.open().stream()
                .map(factor ->
                        (factor == Factor.TIMING ? "; the spark sweep" : "; the mixture sweep") + " is not bracketed")
                .collect(Collectors.joining());
        return "That is " + best + open;
    }

    private static String unproven(Chosen.Proof proof) {
        return switch (proof.standing()) {
            case PROVEN -> "";
            case NOT_PROVEN, ONLY_ONE -> "; not run again to confirm it";
            case NOT_RUN -> "; no pull was run at it";
        };
    }

    String reason(Advice advice) {
        Reason reason = advice.reason();
        if (reason instanceof Reason.OutOfWindow window) {
            return name(window.condition()) + " " + temperature(window.now().kelvins()) + ", needs at "
                    + (window.now().kelvins() < window.want().kelvins() ? "least " : "most ")
                    + temperature(window.want().kelvins()) + ".";
        } else if (reason instanceof Reason.Knocked knocked) {
            return knocked(knocked);
        } else if (reason instanceof Reason.LimitReached reached) {
            return limit(advice, reached);
        } else if (reason instanceof Reason.NotWatched missing) {
            return notWatched(missing);
        } else if (reason instanceof Reason.ChangeOver to) {
            return changeOver(to);
        } else if (reason instanceof Reason.Deciding run) {
            return "Decision run " + run.run() + " of " + run.planned() + ": \"" + run.label()
                    + "\" at its own best setting, re-set.";
        } else if (reason instanceof Reason.Decided end) {
            return "The decision runs are done. "
                    + (end.settled() ? "" : "Not everything could be told. ")
                    + "\"" + end.best() + "\" is the best that is proven.";
        } else if (reason instanceof Reason.First first) {
            return MapText.first(first);
        } else if (reason instanceof Reason.Searching search) {
            return MapText.search(search);
        } else if (reason instanceof Reason.Ended end) {
            return MapText.ended(advice.code(), end);
        }
        return MapText.nothing(advice.code(), (Reason.Nothing) reason);
    }

    /** The checklist of a change-over, in the order of the work. */
    private static String changeOver(Reason.ChangeOver to) {
        String fuel = to.fuel().map(name -> " (" + name + ")").orElse("");
        String litres = to.litresTimes().isPresent() && to.litresTimes().getAsDouble() > 1
                ? " It takes " + Shown.fixed(to.litresTimes().getAsDouble(), 2)
                        + " litres for each litre before: multiply the injector duty of the last pull by that, and do not run"
                        + " where the product passes what the injectors and the pump can give."
                : "";
        return "Change over to \"" + to.label() + "\"" + fuel
                + ": drain, flush, prime, set the fuelling for it, check fuel pressure and leaks, warm to the start range."
                + litres + " The first pull after it flushes the line and is discarded.";
    }

    private static String knocked(Reason.Knocked knocked) {
        return "Knock in pull " + knocked.pull() + " at " + Shown.fixed(knocked.heardAtDeg(), 1) + " deg: with the "
                + Shown.fixed(knocked.marginDeg(), 1)
                + " deg margin no advance is left in the plan. Richen, change the fuel, or lower least_deg.";
    }

    String limit(Advice advice, Reason.LimitReached reached) {
        String what =
                against(reached.limit(), reached.worst(), reached.allowed()) + ", in pull " + reached.pull() + ".";
        return what
                + switch (advice.code()) {
                    case COOL_EXHAUST ->
                        " Let it cool. Next pull: "
                                + (isRicher(advice) ? "richer." : "more advanced, which cools it; or richen by hand.")
                                + " Do not retard: it heats the exhaust.";
                    case TOO_LEAN -> " Next pull: richer.";
                    default ->
                        switch (reached.limit()) {
                            case EXHAUST ->
                                " The plan allows no richer setting: the sweep ends. Richen by hand, or begin less retarded.";
                            case LEAN -> " The plan allows no richer setting: the sweep ends.";
                            default ->
                                " Sweep held. Find the cause. Then override pull " + reached.pull() + " to go on.";
                        };
                };
    }

    /** Whether a richer mixture is what answers the limit; else it is more advance. */
    static boolean isRicher(Advice advice) {
        return advice.setting().filter(setting -> setting.lambda().isPresent()).isPresent();
    }

    private static String notWatched(Reason.NotWatched missing) {
        if (!missing.byHand()) {
            return "No live channel measures lambda, so no mixture sweep is run and nothing leaner is asked for."
                    + " Fix the sensor, name its column in [log] columns, and run a pull at this setting.";
        }
        String limits = missing.limits().stream().map(WatchText::name).collect(Collectors.joining(" and "));
        return "No live channel watches " + limits + ", which guards the way on. Fix that and repeat this setting,"
                + " or watch it yourself and say so (unwatched); until then no step goes that way.";
    }

    private String waiting(WaitFor wait) {
        return wait.condition() == Condition.EXHAUST
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

    private String temperature(double kelvins) {
        return shown.value(Quantity.TEMPERATURE, kelvins);
    }

    private String quantity(Limit limit, double si) {
        return limit == Limit.KNOCK ? Shown.count(Math.round(si), "event") : shown.value(limit.quantity(), si);
    }

    static String name(Condition condition) {
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
