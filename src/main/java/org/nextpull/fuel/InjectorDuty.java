package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
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
    public record Injectors(int count, InjectorRating rating) {
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
}
