package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Finite;
import org.nextpull.unit.Power;
import org.nextpull.unit.Pressure;

/**
 * How long injectors must stay open.
 *
 * @param needed fuel flow that each must give, kg/s
 * @param heldOpen what each gives when held open, kg/s
 * @param sizeRatio flow of injectors of the same kind that would have a duty of 85 %, over that of these; above 1 they are too small
 */
public record InjectorDuty(double needed, double heldOpen, double sizeRatio) {
    /** Highest duty that leaves an injector time to open and close (common practice, no source). */
    public static final double HIGHEST_USUAL = 0.85;

    /** Open time over cycle time, dimensionless, 0.85 for 85 %; above 1 where they are too small. */
    public double fraction() {
        return needed / heldOpen;
    }

    /**
     * The duty that a fuel flow needs; no duty but a finding when the flow or the pressure is not positive, or the density of the fuel is
     * not known. A duty above 85 % comes with a warning.
     *
     * @param fuelFlow of the whole engine, kg/s, positive
     * @param injectors how many share it, and their rating
     * @param across pressure difference over them now: fuel pressure less manifold pressure, positive
     * @param fuel what flows through
     */
    public static Outcome<InjectorDuty> of(double fuelFlow, Injectors injectors, Pressure across, Fuel fuel) {
        if (!(fuelFlow > 0) || !(across.pascals() > 0)) {
            return Outcome.failed(Finding.error(
                    FindingCode.FUEL_INJECTOR_INPUT,
                    Place.nowhere(),
                    Detail.of("flow", fuelFlow),
                    Detail.of("pressure", across.pascals())));
        }
        if (fuel.density().isEmpty()) {
            return Outcome.failed(Finding.error(
                    FindingCode.FUEL_FLOW_NEEDS_DENSITY, Place.nowhere(), Detail.of("name", fuel.name())));
        }
        double needed = fuelFlow / injectors.count();
        double open = injectors.rating().flow(across, fuel.density().getAsDouble());
        InjectorDuty duty = new InjectorDuty(needed, open, needed / open / HIGHEST_USUAL);
        List<Finding> findings = new ArrayList<>();
        if (duty.fraction() > HIGHEST_USUAL) {
            findings.add(Finding.warning(
                    duty.fraction() > 1 ? FindingCode.FUEL_INJECTORS_TOO_SMALL : FindingCode.FUEL_INJECTOR_DUTY_HIGH,
                    Place.nowhere(),
                    Detail.of("duty", duty.fraction()),
                    Detail.of("highest", HIGHEST_USUAL),
                    Detail.of("ratio", duty.sizeRatio())));
        }
        return Outcome.of(duty, findings);
    }

    /**
     * Injectors of an engine.
     *
     * @param count how many, at least 1
     * @param rating of each
     */
    public record Injectors(int count, Rating rating) {
        /**
         * Accepts one injector or more.
         *
         * @throws IllegalArgumentException when there is none
         */
        public Injectors {
            if (count < 1) {
                throw new IllegalArgumentException("an engine has at least one injector: " + count);
            }
        }
    }

    /**
     * What an injector was measured to flow when held open.
     *
     * @param kilogramsPerSecond mass flow in kg/s, positive
     * @param across pressure difference over it, positive
     * @param testDensity density of the liquid it was measured with, kg/m3, positive
     */
    public record Rating(double kilogramsPerSecond, Pressure across, double testDensity) {
        /** Usual test liquid in place of petrol: n-heptane, 684 kg/m3 (from memory); many sheets name another. */
        public static final double USUAL_TEST_DENSITY = 684;

        /**
         * Accepts any positive flow, pressure and density.
         *
         * @throws IllegalArgumentException when one of them is 0, negative or NaN
         */
        public Rating {
            if (!(kilogramsPerSecond > 0) || !(across.pascals() > 0) || !(testDensity > 0)) {
                throw new IllegalArgumentException("an injector rating needs positive flow, pressure and density");
            }
        }

        /**
         * From a flow by volume.
         *
         * @param cubicMetresPerSecond in m3/s, positive
         * @param testDensity density of the liquid it was measured with, kg/m3, positive
         * @throws IllegalArgumentException when flow, pressure or density is 0, negative or NaN
         */
        public static Rating ofVolume(double cubicMetresPerSecond, Pressure across, double testDensity) {
            return new Rating(cubicMetresPerSecond * testDensity, across, testDensity);
        }

        /**
         * Mass flow in kg/s held open on another liquid and pressure: with the root of both ratios, as through any orifice.
         *
         * @param acrossNow pressure difference over it, not negative
         * @param density of the liquid, kg/m3, not negative
         */
        public double flow(Pressure acrossNow, double density) {
            return kilogramsPerSecond * Math.sqrt(acrossNow.pascals() / across.pascals() * (density / testDensity));
        }
    }

    /**
     * Fuel for each unit of work at the crank (brake specific fuel consumption).
     *
     * @param kilogramsPerJoule kg of fuel for a joule at the crank, positive and finite
     */
    public record SpecificConsumption(double kilogramsPerJoule) {
        /**
         * Accepts any positive finite consumption.
         *
         * @throws IllegalArgumentException when it is NaN, infinite, 0 or negative
         */
        public SpecificConsumption {
            Finite.requirePositive("a specific consumption", kilogramsPerJoule);
        }

        /** Consumption on another fuel that makes the same power from the same air. */
        public SpecificConsumption on(FlowComparison other) {
            return new SpecificConsumption(kilogramsPerJoule * other.massRatio());
        }

        /** Fuel flow in kg/s at a power of the crank. */
        public double flow(Power power) {
            return power.watts() * kilogramsPerJoule;
        }
    }
}
