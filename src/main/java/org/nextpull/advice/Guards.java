package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.Limit;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/**
 * The limits that guard the way to a danger, and what holds while one of the plan's was not watched in the last pull: a step that way is
 * half as long, and none is asked for before the operator has said to watch it alone. Without a live lambda nothing leaner is asked for
 * at all, and no mixture bracket is run.
 */
final class Guards {
    private static final double HALF = 0.5;

    private final DayView view;

    Guards(DayView view) {
        this.view = view;
    }

    /** Where a setting may go to. */
    enum Way {
        ADVANCE,
        RETARD,
        LEAN;

        private List<Limit> guards() {
            return switch (this) {
                case ADVANCE -> List.of(Limit.KNOCK);
                case RETARD -> List.of(Limit.EXHAUST);
                case LEAN -> List.of(Limit.LEAN, Limit.EXHAUST, Limit.FUEL_PRESSURE, Limit.INJECTOR_DUTY);
            };
        }
    }

    /** The limits of the plan that guard a way and were not watched in the last pull of the day. */
    List<Limit> unwatched(Way way) {
        List<MeasuredPull> pulls =
                view.day().pulls().stream().filter(MeasuredPull::isPull).toList();
        if (pulls.isEmpty()) {
            return List.of();
        }
        MeasuredPull last = pulls.get(pulls.size() - 1);
        List<Limit> wanted = view.day().plan().watched();
        return way.guards().stream()
                .filter(limit -> wanted.contains(limit) && !last.isWatched(limit))
                .toList();
    }

    /** The longest step toward advance or lean. */
    Reach.Step step(Axis axis) {
        Way way = axis.factor() == Factor.TIMING ? Way.ADVANCE : Way.LEAN;
        return new Reach.Step(axis.step().largest() * shareOfStep(way));
    }

    /** The share of the plan's step that may be gone that way. */
    double shareOfStep(Way way) {
        return unwatched(way).isEmpty() ? 1 : HALF;
    }

    /** The least advance that may be asked for while the heat of the exhaust is not watched: half a step below the least clean one. */
    OptionalDouble leastAdvance(Axis axis) {
        OptionalDouble least = least(axis);
        return unwatched(Way.RETARD).isEmpty() || least.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        axis.up(least.getAsDouble() - HALF * axis.step().largest()));
    }

    /** Why a setting is not asked for yet; empty when it may be. */
    Optional<Reason.NotWatched> held(Proposal setting, Factor stage) {
        return held(ways(setting), isBracket(stage));
    }

    /**
     * The same of a setting that goes those ways.
     *
     * @param isBracket whether it belongs to a search for the mixture
     */
    Optional<Reason.NotWatched> held(List<Way> ways, boolean isBracket) {
        if (isBracket && unwatched(Way.LEAN).contains(Limit.LEAN)) {
            return Optional.of(new Reason.NotWatched(List.of(Limit.LEAN), false));
        }
        List<Limit> missing = ways.stream()
                .flatMap(way -> unwatched(way).stream())
                .filter(limit -> !view.day().ownWatch().contains(limit))
                .distinct()
                .toList();
        return missing.isEmpty() ? Optional.empty() : Optional.of(new Reason.NotWatched(missing, true));
    }

    private boolean isBracket(Factor stage) {
        return view.mixture().isPresent()
                && (stage == Factor.MIXTURE || view.timing().isEmpty());
    }

    /** The ways that a setting goes beyond what was run clean; none before the first such pull. Knock may force retard. */
    private List<Way> ways(Proposal setting) {
        List<Way> ways = new ArrayList<>();
        view.timing()
                .ifPresent(axis -> valueOf(axis, setting).ifPresent(advance -> {
                    if (isBeyond(axis, advance)) {
                        ways.add(Way.ADVANCE);
                    }
                    OptionalDouble least = least(axis);
                    if (least.isPresent()
                            && advance < least.getAsDouble() - axis.sameSetting()
                            && !view.bans().hasKnock(view.fuel())) {
                        ways.add(Way.RETARD);
                    }
                }));
        view.mixture()
                .filter(axis -> valueOf(axis, setting)
                        .filter(lambda -> isBeyond(axis, lambda))
                        .isPresent())
                .ifPresent(axis -> ways.add(Way.LEAN));
        return ways;
    }

    private boolean isBeyond(Axis axis, double value) {
        OptionalDouble daring = view.mostDaring(axis, view.used());
        return daring.isPresent() && value > daring.getAsDouble() + axis.sameSetting();
    }

    private OptionalDouble least(Axis axis) {
        return view.used().stream()
                .filter(view::isClean)
                .flatMap(pull -> axis.of(pull).stream().boxed())
                .mapToDouble(Double::doubleValue)
                .min();
    }

    /** The setting to run again instead of one that is held: no more daring than what was run clean. */
    Proposal proven(Proposal setting) {
        Proposal timed = view.timing().map(axis -> within(axis, setting)).orElse(setting);
        return view.mixture().map(axis -> within(axis, timed)).orElse(timed);
    }

    private Proposal within(Axis axis, Proposal setting) {
        OptionalDouble daring = view.mostDaring(axis, view.used());
        OptionalDouble least = axis.factor() == Factor.TIMING ? least(axis) : OptionalDouble.empty();
        return valueOf(axis, setting)
                .map(value -> Math.min(value, daring.isPresent() ? axis.again(daring.getAsDouble()) : value))
                .map(value -> Math.max(value, least.isPresent() ? axis.again(least.getAsDouble()) : value))
                .map(value -> axis.with(setting, value))
                .orElse(setting);
    }

    private static Optional<Double> valueOf(Axis axis, Proposal setting) {
        return axis.factor() == Factor.MIXTURE
                ? setting.lambda().map(Lambda::value)
                : setting.advance().or(setting::offset).map(Advance::deg);
    }
}
