package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/** Torque as measured: the factor is 1 in any air. */
public record NoCorrection() implements CorrectionStandard {
    @Override
    public String id() {
        return "none";
    }

    @Override
    public String title() {
        return "no correction";
    }

    @Override
    public double factor(AirState air) {
        return 1;
    }

    /** Any air would do; 25 degC and 100 kPa with 1 kPa of vapour is given. */
    @Override
    public AirState reference() {
        return new AirState(Pressure.ofKilopascals(100), Temperature.ofCelsius(25), Pressure.ofKilopascals(1));
    }

    @Override
    public Optional<CorrectionStandard.ValidRange> limits() {
        return Optional.empty();
    }

    @Override
    public boolean withdrawn() {
        return false;
    }
}
