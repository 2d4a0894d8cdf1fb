package org.nextpull.air;

import java.util.Optional;

/**
 * SAE J1349 AUG2004: factor = 1.176 (99 kPa / pd) sqrt(T / 298) - 0.176, with the dry pressure pd and T in K. It takes a mechanical
 * efficiency of 85 %, so that friction is not corrected. Reference 25 degC, 99 kPa dry; used from 15 to 35 degC, 90 to 105 kPa dry and
 * up to 7 % of correction. The formula was seen in secondary quotations, not in the document; the limits are from memory.
 */
public record SaeJ1349Of2004() implements CorrectionStandard {
    private static final double GAIN = 1.176;
    private static final double FRICTION = 0.176;
    private static final double REFERENCE_DRY_PASCALS = 99_000;
    private static final double REFERENCE_KELVINS = 298;

    @Override
    public String id() {
        return "sae-j1349-2004";
    }

    @Override
    public String title() {
        return "SAE J1349 AUG2004";
    }

    @Override
    public double factor(AirState air) {
        double pressure = REFERENCE_DRY_PASCALS / air.dryPressure().pascals();
        double warmth = CorrectionStandard.printedKelvins(air.temperature()) / REFERENCE_KELVINS;
        return GAIN * pressure * Math.sqrt(warmth) - FRICTION;
    }

    @Override
    public Optional<CorrectionStandard.ValidRange> limits() {
        return Optional.of(CorrectionStandard.ValidRange.ofKilopascals(90, 105));
    }
}
