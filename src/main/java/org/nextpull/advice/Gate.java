package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * Holds a setting against all that the day forbids, whichever stage wants it: the plan's limits, the steps from the most daring clean
 * pull, the bans of knock and limits, no further retard after an exhaust that was too hot, and no setting again at which anything was
 * met. What it has to change it changes toward retard and rich.
 */
final class Gate {
    private static final double NOTHING = 1e-9;

    private final DayView view;
    private final Optional<Proposal> start;

    Gate(DayView view) {
        this.view = view;
        this.start = StartOfDay.of(view);
    }

    /**
     * The setting that may be run in place of the wanted one, mostly the wanted one itself; empty when none may.
     *
     * @param factor what gives way when a setting must not be run again
     */
    Optional<Proposal> pass(Proposal wanted, Factor factor) {
        Optional<Proposal> mixed = view.mixture().isEmpty() || wanted.lambda().isEmpty()
                ? Optional.of(wanted)
                : richEnough(view.mixture().get(), wanted);
        Optional<Proposal> timed = mixed.flatMap(setting -> view.timing().isEmpty()
                ? Optional.of(setting)
                : retardedEnough(view.timing().get(), setting));
        return timed.flatMap(setting -> unspoilt(setting, factor));
    }

    private Optional<Proposal> richEnough(Axis axis, Proposal wanted) {
        double leanest = axis.round(valueOf(axis, wanted).getAsDouble());
        OptionalDouble ban = view.timing().isPresent()
                ? view.bans().leanCeilingOfLimits(view.fuel())
                : view.bans().leanCeiling(view.fuel(), OptionalDouble.empty());
        if (ban.isPresent()) {
            leanest = Math.min(leanest, axis.below(ban.getAsDouble()));
        }
        double daring = view.mostDaring(axis, view.used()).orElse(axis.start());
        double reach = Reach.most(axis, view.guards().step(axis), daring);
        return within(axis, wanted, Math.min(leanest, axis.round(reach)));
    }

    private Optional<Proposal> retardedEnough(Axis axis, Proposal wanted) {
        OptionalDouble value = valueOf(axis, wanted);
        if (value.isEmpty()) {
            return Optional.of(wanted);
        }
        OptionalDouble mixture = view.mixtureOf(wanted);
        OptionalDouble daring = view.mostDaring(axis, view.used());
        double most = daring.isPresent()
                ? axis.round(Reach.most(axis, view.guards().step(axis), daring.getAsDouble()))
                : start.map(setting -> valueOf(axis, setting))
                        .orElse(OptionalDouble.empty())
                        .orElse(axis.start());
        OptionalDouble ban = view.bans().advanceCeiling(view.fuel(), mixture);
        if (ban.isPresent()) {
            most = Math.min(most, axis.below(ban.getAsDouble()));
        }
        double advance = Math.min(axis.round(value.getAsDouble()), most);
        OptionalDouble floor = floor(axis, wanted, advance);
        if (floor.isPresent() && advance < floor.getAsDouble() - NOTHING) {
            advance = axis.up(floor.getAsDouble());
        }
        OptionalDouble least = view.guards().leastAdvance(axis);
        if (least.isPresent()) {
            advance = Math.max(advance, Math.min(most, least.getAsDouble()));
        }
        return advance > most + NOTHING ? Optional.empty() : within(axis, wanted, advance);
    }

    /** Goes toward retard, or toward rich, until nothing was met at the setting. */
    private Optional<Proposal> unspoilt(Proposal wanted, Factor factor) {
        Optional<Axis> way = factor == Factor.MIXTURE || view.timing().isEmpty() ? view.mixture() : view.timing();
        Proposal setting = wanted;
        while (isSpoilt(setting)) {
            if (way.isEmpty() || valueOf(way.get(), setting).isEmpty()) {
                return Optional.empty();
            }
            Axis axis = way.get();
            double next =
                    axis.down(valueOf(axis, setting).getAsDouble() - axis.step().resolution());
            Optional<Proposal> gone = within(axis, setting, next).filter(this::isAboveFloor);
            if (gone.isEmpty()) {
                return Optional.empty();
            }
            setting = gone.get();
        }
        return Optional.of(setting);
    }

    private boolean isAboveFloor(Proposal setting) {
        if (view.timing().isEmpty()) {
            return true;
        }
        Axis axis = view.timing().get();
        OptionalDouble advance = valueOf(axis, setting);
        if (advance.isEmpty()) {
            return true;
        }
        OptionalDouble floor = floor(axis, setting, advance.getAsDouble());
        return floor.isEmpty() || advance.getAsDouble() >= floor.getAsDouble() - NOTHING;
    }

    /**
     * The advance that an exhaust which was too hot holds as the least: at mixtures less than a step richer than the hot one, but for
     * settings that a clean pull has proven, as retarded as they are and as lean.
     */
    private OptionalDouble floor(Axis axis, Proposal setting, double advance) {
        OptionalDouble mixture = view.mixtureOf(setting);
        boolean proven = view.used().stream()
                .filter(view::isClean)
                .anyMatch(pull -> isAtMost(axis.of(pull), advance) && isAtLeast(DayView.mixtureOf(pull), mixture));
        if (proven) {
            return OptionalDouble.empty();
        }
        double step = view.mixture().map(known -> known.step().largest()).orElse(0.0);
        OptionalDouble reached = mixture.isPresent()
                ? OptionalDouble.of(mixture.getAsDouble() + Math.max(0, step - 2 * NOTHING))
                : mixture;
        return view.bans().retardFloor(view.fuel(), reached);
    }

    private static boolean isAtMost(OptionalDouble run, double most) {
        return run.isPresent() && run.getAsDouble() <= most + NOTHING;
    }

    private static boolean isAtLeast(OptionalDouble run, OptionalDouble least) {
        return run.isPresent() && least.isPresent() && run.getAsDouble() >= least.getAsDouble() - NOTHING;
    }

    /** Whether knock was heard or a limit met at that setting, and the operator did not lift it. */
    private boolean isSpoilt(Proposal setting) {
        return isRun(
                setting,
                view.here().stream().filter(pull -> !view.isClean(pull)).toList());
    }

    /** Whether a clean pull that counts was run at that setting. */
    boolean wasRun(Proposal setting) {
        return isRun(setting, view.used().stream().filter(view::isClean).toList());
    }

    private boolean isRun(Proposal setting, List<MeasuredPull> pulls) {
        return pulls.stream()
                .anyMatch(pull -> view.timing()
                                .map(axis -> isSame(axis, valueOf(axis, setting), axis.of(pull)))
                                .orElse(true)
                        && view.mixture()
                                .map(axis -> isSame(axis, valueOf(axis, setting), DayView.mixtureOf(pull)))
                                .orElse(true));
    }

    private static boolean isSame(Axis axis, OptionalDouble one, OptionalDouble other) {
        return one.isEmpty() || (other.isPresent() && axis.isSame(one.getAsDouble(), other.getAsDouble()));
    }

    private static Optional<Proposal> within(Axis axis, Proposal rest, double value) {
        return value < axis.allowed().low() - NOTHING ? Optional.empty() : Optional.of(axis.with(rest, value));
    }

    private static OptionalDouble valueOf(Axis axis, Proposal setting) {
        Optional<Double> value = switch (axis.kind()) {
            case FLAT_ADVANCE -> setting.advance().map(Advance::deg);
            case OFFSET -> setting.offset().map(Advance::deg);
            case LAMBDA -> setting.lambda().map(Lambda::value);
        };
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }
}
