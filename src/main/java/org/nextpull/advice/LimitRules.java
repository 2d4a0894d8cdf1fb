package org.nextpull.advice;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.plan.Limit;
import org.nextpull.plan.StartConditions;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

/** What the limits of the last pull, and the temperatures of this moment, ask for before any sweep goes on. */
final class LimitRules {
    private static final double SHORTEST_WAIT_S = 60;

    private final DayView view;

    LimitRules(DayView view) {
        this.view = view;
    }

    /** The limit that ends the day, until the operator lifts it: pressures, boost, speed, injectors, met in any pull of the day. */
    Optional<Reason.LimitReached> ending() {
        return view.day().pulls().stream()
                .filter(pull -> !view.day().lifted().contains(pull.number()))
                .flatMap(pull -> pull.limitsMet().stream()
                        .filter(met -> isEnding(met.limit()))
                        .map(met -> reached(pull, met)))
                .reduce((earlier, later) -> later);
    }

    private static boolean isEnding(Limit limit) {
        return switch (limit) {
            case OIL_PRESSURE, FUEL_PRESSURE, BOOST, SPEED, INJECTOR_DUTY -> true;
            case KNOCK, LEAN, EXHAUST, COOLANT, OIL, INLET_AIR -> false;
        };
    }

    /** The last limit of any kind that was met and not lifted in the present configuration. */
    Optional<Reason.LimitReached> lastMet() {
        return view.here().stream()
                .filter(pull -> !view.day().lifted().contains(pull.number()))
                .flatMap(pull -> pull.limitsMet().stream().map(met -> reached(pull, met)))
                .reduce((earlier, later) -> later);
    }

    /** Exhaust or mixture of the last pull beyond its limit: what it was, when the last pull was not yet answered. */
    Optional<Reason.LimitReached> tooHotOrLean() {
        return last().flatMap(pull -> pull.limitsMet().stream()
                .filter(met -> met.limit() == Limit.EXHAUST || met.limit() == Limit.LEAN)
                .findFirst()
                .map(met -> reached(pull, met)));
    }

    /** The cooling to wait for after an exhaust that was too hot, until the exhaust is known to be below its limit again. */
    Optional<WaitFor> exhaustCooling(Reason.LimitReached heat) {
        if (heat.limit() != Limit.EXHAUST) {
            return Optional.empty();
        }
        Temperature present = view.day().now().exhaust().orElse(Temperature.ofKelvins(heat.worst()));
        if (present.kelvins() < heat.allowed()) {
            return Optional.empty();
        }
        double shortest = view.day().plan().start().coolDownS().orElse(SHORTEST_WAIT_S);
        return Optional.of(
                new WaitFor(WaitFor.Condition.EXHAUST, present, Temperature.ofKelvins(heat.allowed()), shortest));
    }

    /**
     * One step richer, for an exhaust that was too hot or a mixture too lean; empty when the plan allows none.
     * Retard heats the exhaust, so it is never the answer.
     */
    Optional<Lambda> oneStepRicher() {
        Optional<Axis> mixture = view.mixture();
        Optional<MeasuredPull> last = last();
        if (mixture.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble lambda = DayView.mixtureOf(last.get());
        if (lambda.isEmpty()) {
            return Optional.empty();
        }
        Axis axis = mixture.get();
        double richer = axis.down(lambda.getAsDouble() - axis.step().largest());
        double wanted = Math.max(axis.allowed().low(), richer);
        if (wanted > lambda.getAsDouble() - 1e-9) {
            return Optional.empty();
        }
        return Optional.of(Lambda.of(wanted));
    }

    /** The first temperature that is out of its window now, or was over its limit in the last pull. */
    Optional<WaitFor> waiting() {
        StartConditions window = view.day().plan().start();
        PresentConditions now = view.day().now();
        double shortest = window.coolDownS().orElse(SHORTEST_WAIT_S);
        return outside(WaitFor.Condition.COOLANT, now.coolant(), window.coolant(), shortest)
                .or(() -> outside(WaitFor.Condition.OIL, now.oil(), window.oil(), shortest))
                .or(() -> outside(WaitFor.Condition.INLET_AIR, now.inletAir(), window.inlet(), shortest));
    }

    private static Optional<WaitFor> outside(
            WaitFor.Condition condition,
            Optional<Temperature> now,
            Optional<StartConditions.TemperatureWindow> window,
            double shortest) {
        if (now.isEmpty() || window.isEmpty() || window.get().contains(now.get())) {
            return Optional.empty();
        }
        boolean cold = now.get().kelvins() < window.get().low().kelvins();
        Temperature want = cold ? window.get().low() : window.get().high();
        return Optional.of(new WaitFor(condition, now.get(), want, shortest));
    }

    /** A temperature of the last pull that was over the plan's limit, while nothing says that it has come down. */
    Optional<WaitFor> tooWarm() {
        return last().flatMap(pull -> pull.limitsMet().stream()
                .flatMap(met -> afterLimit(met).stream())
                .findFirst());
    }

    private Optional<WaitFor> afterLimit(MeasuredPull.LimitMet met) {
        PresentConditions now = view.day().now();
        return switch (met.limit()) {
            case COOLANT -> afterLimit(met, WaitFor.Condition.COOLANT, now.coolant());
            case OIL -> afterLimit(met, WaitFor.Condition.OIL, now.oil());
            case INLET_AIR -> afterLimit(met, WaitFor.Condition.INLET_AIR, now.inletAir());
            default -> Optional.empty();
        };
    }

    private Optional<WaitFor> afterLimit(
            MeasuredPull.LimitMet met, WaitFor.Condition condition, Optional<Temperature> now) {
        Temperature present = now.orElse(Temperature.ofKelvins(met.worst()));
        if (present.kelvins() < met.allowed()) {
            return Optional.empty();
        }
        double shortest = view.day().plan().start().coolDownS().orElse(SHORTEST_WAIT_S);
        return Optional.of(new WaitFor(condition, present, Temperature.ofKelvins(met.allowed()), shortest));
    }

    private Optional<MeasuredPull> last() {
        return view.here().isEmpty()
                ? Optional.empty()
                : Optional.of(view.here().get(view.here().size() - 1))
                        .filter(pull -> !view.day().lifted().contains(pull.number()));
    }

    private static Reason.LimitReached reached(MeasuredPull pull, MeasuredPull.LimitMet met) {
        return new Reason.LimitReached(met.limit(), pull.number(), met.worst(), met.allowed());
    }
}
