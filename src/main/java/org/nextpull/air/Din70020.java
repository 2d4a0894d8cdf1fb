package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * DIN 70020: factor = (1013 mbar / p) sqrt(T / 293) with the total pressure p, not the dry one, and T in K; humidity does not enter.
 * Reference 20 degC, 1013 mbar. Withdrawn in favour of DIN ISO 1585; it prints no range, so 7 % of correction is taken as the bound.
 * Seen in secondary quotations, not in the document.
 */
public record Din70020() implements CorrectionStandard {
    private static final double REFERENCE_PASCALS = 101_300;
    private static final double REFERENCE_KELVINS = 293;

    @Override
    public String id() {
        return "din-70020";
    }

    @Override
    public String title() {
        return "DIN 70020";
    }

    /** It works with total pressure. */
    @Override
    public boolean needsHumidity() {
        return false;
    }

    @Override
    public double factor(AirState air) {
        double pressure = REFERENCE_PASCALS / air.barometer().pascals();
        return pressure * Math.sqrt(CorrectionStandard.printedKelvins(air.temperature()) / REFERENCE_KELVINS);
    }

    @Override
    public AirState reference() {
        return AirState.dry(Pressure.ofPascals(REFERENCE_PASCALS), Temperature.ofCelsius(20));
    }

    @Override
    public Optional<CorrectionStandard.ValidRange> limits() {
        return Optional.of(CorrectionStandard.ValidRange.ofFactorOnly());
    }

    @Override
    public boolean withdrawn() {
        return true;
    }
}
