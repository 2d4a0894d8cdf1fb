package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/**
 * SAE J607, called "STD" in the trade: factor = (29.92 inHg / pd) sqrt(T / 60 degF) with the dry pressure pd and absolute temperatures.
 * Reference 60 degF, 29.92 inHg dry. Withdrawn; reads about 4 % above SAE J1349 in the same air. It prints no range, so 7 % of
 * correction is taken as the bound. Seen in secondary quotations, not in the document.
 */
record SaeJ607() implements CorrectionStandard {
    private static final double REFERENCE_PASCALS = Unit.INCH_OF_MERCURY.toSi(29.92);
    private static final double REFERENCE_KELVINS = Unit.FAHRENHEIT.toSi(60);

    @Override
    public String id() {
        return "sae-j607";
    }

    @Override
    public String title() {
        return "SAE J607 (STD)";
    }

    @Override
    public double factor(AirState air) {
        double pressure = REFERENCE_PASCALS / air.dryPressure().pascals();
        return pressure * Math.sqrt(air.temperature().kelvins() / REFERENCE_KELVINS);
    }

    @Override
    public AirState reference() {
        return AirState.dry(Pressure.ofPascals(REFERENCE_PASCALS), Temperature.ofKelvins(REFERENCE_KELVINS));
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
