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
import org.nextpull.advice.Evidence;
import org.nextpull.advice.Factor;
import org.nextpull.advice.Proposal;
import org.nextpull.advice.Reason;
import org.nextpull.advice.WaitFor;
import org.nextpull.alarm.Alarm;
import org.nextpull.channel.AskedSetting;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Span;

/** The sentences of an advice, with the numbers behind it. */
public final class AdviceText {
    static final String NOTHING_TO_LEAVE =
            "Leave the engine at the setting it came with: none was run that is clean and allowed.";

    private final Shown shown;

    public AdviceText(Shown shown) {
        this.shown = shown;
    }

    /** What to do, in a few words: {@code Next pull: 28.0 deg, lambda 0.870}. */
    public String headline(Advice advice) {
        String setting = advice.setting().map(AdviceText::setting).orElse("");
        return switch (advice.action()) {
            case PULL -> "Next pull: " + setting;
            case REPEAT -> "Repeat: " + setting;
            case WAIT -> "Wait, then: " + setting;
            case STOP -> "Stop. " + advice.leave().map(this::leave).orElse(NOTHING_TO_LEAVE);
        };
    }

    /** Why, in a sentence or two that an operator understands. */
    public String because(Advice advice) {
        String sentence = reason(advice);
        String wait = advice.waitFor().map(this::waiting).orElse("");
        String leave = advice.action() == Action.WAIT
                ? " Meanwhile: " + decapitalised(advice.leave().map(this::leave).orElse(NOTHING_TO_LEAVE))
                : "";
        return sentence
                + wait
                + leave
                + advice.earlier().map(StopText::sentence).orElse("");
    }

    /** A setting to run in words: {@code 28.0 deg, lambda 0.870}; one without values is the map as it stands. */
    public static String setting(Proposal setting) {
        String values = values(setting);
        return values.isEmpty() ? "the map that stands in the engine" : values;
    }

    /** Spark and mixture in words, as far as they are there. */
    static String values(Proposal setting) {
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

    /** The spark and the mixture of what somebody asked for. */
    static Proposal asked(AskedSetting setting) {
        return new Proposal(setting.advance(), setting.offsetDeg(), setting.lambda());
    }

    /** Degrees that are added to a map, with their sign. */
    public static String signed(double deg) {
        return (deg < 0 ? "" : "+") + Shown.fixed(deg, 1);
    }

    /** What to leave in the engine and what decided it. */
    public String leave(Chosen chosen) {
        return "Leave " + setting(chosen.setting()) + " in the engine: " + by(chosen) + ".";
    }

    static String by(Chosen chosen) {
        return switch (chosen.by()) {
            case PEAK ->
                chosen.setting().map().isPresent()
                        ? "at each speed the least advance near enough to its peak" + unproven(chosen.proof())
                        : peak(chosen.proof());
            case KNOCK_LIMIT -> limited(chosen, "the knock limit decides, not the peak");
            case PLAN_LIMIT -> limited(chosen, "a limit of the plan decides, not the peak");
            case HIGHEST_TRIED ->
                chosen.proof().standing() == Chosen.Standing.ONLY_ONE
                        ? "the only clean setting that was run, so nothing is known of a better one"
                        : "the clean setting that read highest so far; it is not known to be the best";
        };
    }

    /** What is left by its peak: only of factors that were swept and bracketed, and proven only where it was run again. */
    private static String peak(Chosen.Proof proof) {
        String best = proof.bracketed().stream()
                .map(factor -> factor == Factor.TIMING ? "MBT" : "on the rich side of best lambda")
                .collect(Collectors.joining(", and "));
        String open = proof.open().stream()
                .map(factor ->
                        (factor == Factor.TIMING ? "; the spark sweep" : "; the mixture sweep") + " is not bracketed")
                .collect(Collectors.joining());
        return best + open + unproven(proof);
    }

    private static String limited(Chosen chosen, String decides) {
        boolean timing = chosen.setting().advance().or(chosen.setting()::offset).isPresent();
        return chosen.by() == ChosenBy.KNOCK_LIMIT && timing
                ? "the knock-limited advance, so " + decides + unproven(chosen.proof())
                : decides + unproven(chosen.proof());
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
        if (reason instanceof Reason.Baseline baseline) {
            return baseline(baseline);
        } else if (reason instanceof Reason.Searching searching) {
            return searching(advice.code(), searching);
        } else if (reason instanceof Reason.BackedOff backedOff) {
            return backedOff(advice.code(), backedOff);
        } else if (reason instanceof Reason.RichFirst) {
            return "The bracket goes rich first; the lean side is tried only if the rich step was clean.";
        } else if (reason instanceof Reason.Confirming confirming) {
            return confirming(confirming);
        } else if (reason instanceof Reason.OutOfWindow window) {
            return name(window.condition()) + " is " + temperature(window.now().kelvins())
                    + ", out of its window: wait until it has "
                    + (window.now().kelvins() < window.want().kelvins() ? "risen to " : "fallen to ")
                    + temperature(window.want().kelvins()) + ".";
        } else if (reason instanceof Reason.Knocked knocked) {
            return knocked(knocked);
        } else if (reason instanceof Reason.LimitReached reached) {
            return limit(advice.code(), reached);
        } else if (reason instanceof Reason.NotWatched missing) {
            return notWatched(missing);
        } else if (reason instanceof Reason.FirstMap first) {
            return MapText.first(first);
        } else if (reason instanceof Reason.MapSearch search) {
            return MapText.search(search);
        } else if (reason instanceof Reason.MapEnded end) {
            return MapText.ended(advice.code(), end);
        }
        return ended(advice.code(), (Reason.Ended) reason);
    }

    private static String baseline(Reason.Baseline baseline) {
        return baseline.done() == 0
                ? "The first pull is the start setting of the plan, from the retarded and rich side; it is the baseline for all that follows."
                : "The first setting once more, remade: two readings of one setting show how far pulls scatter (baseline "
                        + (baseline.done() + 1) + " of " + baseline.wanted() + ").";
    }

    private String searching(AdviceCode code, Reason.Searching searching) {
        Evidence evidence = searching.evidence();
        Factor factor = searching.factor();
        String where = "After " + Shown.count(evidence.pulls(), "pull") + " of this "
                + (factor == Factor.TIMING ? "spark" : "mixture") + " sweep the peak most likely lies from "
                + span(factor, evidence.peak()) + "; the " + (factor == Factor.TIMING ? "most advanced" : "leanest")
                + " clean setting is " + value(factor, evidence.mostDaring()) + ".";
        String last = evidence.lastStepPercent().isPresent()
                ? " The last step changed the response by "
                        + percent(evidence.lastStepPercent().getAsDouble(), true)
                        + ", with a scatter around the curve of "
                        + percent(evidence.scatterPercent(), false) + "."
                : "";
        String stake = " Stopping now would leave about "
                + percent(evidence.stake().leftPercent(), false) + " of the best that is permitted.";
        String aim = switch (code) {
            case CLIMB_TIMING -> " So go on by a step, no more.";
            case BRACKET_TIMING, BRACKET_MIXTURE -> " This setting tells most about where the top is.";
            case CLIMB_MIXTURE -> " So go leaner by a step, no more.";
            case CHECK_TIMING -> " The mixture has moved, so the timing is checked again at it.";
            case REPEAT_SETTING -> " Running this setting again tells more than a new one.";
            case REPEAT_DOUBTFUL -> " One pull alone carries this verdict, so it is run again before it is believed.";
            default -> "";
        };
        String listen =
                searching.listen() ? " Knock is not measured: listen during this pull and mark what you hear." : "";
        return where + last + stake + aim + listen;
    }

    private static String backedOff(AdviceCode code, Reason.BackedOff backedOff) {
        String spark = "The mixture bracket runs with the spark " + Shown.fixed(backedOff.backedOffDeg(), 1)
                + " deg below " + Shown.fixed(backedOff.fromDeg(), 1) + " deg, so that a lean step has room.";
        return code == AdviceCode.RICH_STEP
                ? spark + " The rich step comes first; the lean side is tried only if it was clean."
                : spark;
    }

    /** What ended the sweeps, where it was not that the answer is known. */
    static String endOfSweeps(ChosenBy by) {
        return switch (by) {
            case PEAK, HIGHEST_TRIED -> "The sweeps have ended";
            case KNOCK_LIMIT -> "Knock has ended the climb";
            case PLAN_LIMIT -> "A limit of the plan has ended the sweep";
        };
    }

    private static String confirming(Reason.Confirming confirming) {
        String gain = confirming.gainPercent().isPresent()
                ? " So far it reads " + percent(confirming.gainPercent().getAsDouble(), true)
                        + " against the first pull."
                : "";
        return endOfSweeps(confirming.by()) + "; the final setting is run to confirm it (" + (confirming.done() + 1)
                + " of " + confirming.wanted() + ")." + gain;
    }

    private static String knocked(Reason.Knocked knocked) {
        return "Knock was heard in pull " + knocked.pull() + " at " + Shown.fixed(knocked.heardAtDeg(), 1)
                + " deg; less the margin of " + Shown.fixed(knocked.marginDeg(), 1)
                + " deg no setting within the plan's limits is left. Lower the plan's least advance, richen, or change the fuel.";
    }

    String limit(AdviceCode code, Reason.LimitReached reached) {
        String what = name(reached.limit()) + (reached.limit().isLeast() ? " fell to " : " reached ")
                + quantity(reached.limit(), reached.worst()) + " in pull " + reached.pull() + "; the plan's limit is "
                + quantity(reached.limit(), reached.allowed()) + ".";
        return what
                + switch (code) {
                    case COOL_EXHAUST ->
                        " Lift and let it cool. Retard would heat it further, so the next pull is richer.";
                    case TOO_LEAN -> " The next pull is richer.";
                    default ->
                        reached.limit() == Limit.EXHAUST || reached.limit() == Limit.LEAN
                                ? " The plan allows no richer setting, so the sweep ends."
                                : " The sweep ends until you have found the cause and lift this limit by name.";
                };
    }

    private static String notWatched(Reason.NotWatched missing) {
        if (!missing.byHand()) {
            return "No live channel measures lambda, so no mixture bracket is run and nothing leaner is asked for."
                    + " Mend the sensor, name its column in [log] columns, and run a pull at this setting.";
        }
        String limits = missing.limits().stream().map(WatchText::name).collect(Collectors.joining(" and "));
        return "No live channel watches " + limits + ", which guards the way on. Mend that and run this setting again,"
                + " or watch it yourself and say so (unwatched); until then no step that way is asked for.";
    }

    private String ended(AdviceCode code, Reason.Ended ended) {
        String pulls = "After " + Shown.count(ended.pulls(), "pull") + " of this configuration ";
        String left =
                ended.evidence().map(evidence -> left(code, evidence.stake())).orElse("");
        return switch (code) {
            case SETTLED -> pulls + "what is left to gain is below what a pull can show." + left;
            case SCATTER_LIMITED ->
                pulls + "another pull would tell no more at this scatter around the curve"
                        + ended.evidence()
                                .map(evidence -> " of " + percent(evidence.scatterPercent(), false))
                                .orElse("")
                        + "." + left;
            case KNOCK_LIMITED -> pulls + "the knock limit ends the climb." + left;
            case PLAN_LIMIT -> pulls + "the plan's limit ends the climb; torque may still rise beyond it." + left;
            case LIMIT_MET -> pulls + "a limit that was met leaves no leaner mixture to try." + left;
            case BUDGET -> pulls + "the plan's budget of pulls is used up and the answer is not settled." + left;
            default -> pulls + "the sweep ends." + left;
        };
    }

    /** What may be left, against the peak where it is bracketed, and against what is permitted. */
    private static String left(AdviceCode code, Evidence.Stake stake) {
        String permitted = switch (code) {
            case KNOCK_LIMITED -> "the best that the knock limit permits";
            case PLAN_LIMIT -> "the best that the plan permits";
            default -> "the best that is permitted";
        };
        String left = percent(stake.leftPercent(), false);
        String chance = ", and the chance that it is over half a percent is "
                + percent(100 * stake.chanceOfMuchLeft(), false) + ".";
        String there = " At this setting about ";
        if (stake.belowPeakPercent().isEmpty()) {
            return there + left + " may be left against " + permitted + chance + " The peak is not bracketed.";
        }
        String belowPeak = percent(stake.belowPeakPercent().getAsDouble(), false);
        return belowPeak.equals(left)
                ? there + left + " may be left against the peak, which is permitted" + chance
                : there + belowPeak + " may be left against the peak, and " + left + " against " + permitted + chance;
    }

    private String waiting(WaitFor wait) {
        return wait.condition() == Condition.EXHAUST
                ? " Wait until the exhaust is below " + temperature(wait.want().kelvins()) + ", at least "
                        + Shown.fixed(wait.atLeastSeconds(), 0) + " s."
                : " At least " + Shown.fixed(wait.atLeastSeconds(), 0) + " s.";
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

    static String value(Factor factor, double value) {
        return factor == Factor.TIMING ? Shown.fixed(value, 1) + " deg" : "lambda " + Shown.fixed(value, 3);
    }

    static String span(Factor factor, Span span) {
        return factor == Factor.TIMING
                ? Shown.fixed(span.low(), 1) + " to " + Shown.fixed(span.high(), 1) + " deg"
                : "lambda " + Shown.fixed(span.low(), 3) + " to " + Shown.fixed(span.high(), 3);
    }

    private static String percent(double value, boolean signed) {
        String number = Shown.fixed(value, Math.abs(value) < 1 ? 2 : 1);
        return (signed && value >= 0 ? "+" : "") + number + " %";
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
