package org.nextpull.air;

import java.util.Optional;

/**
 * ISO 1585 for spark ignition, the same as UN R85, 88/195/EEC and JIS D 1001: factor = (99 kPa / pd)^1.2 (T / 298)^0.6 with the dry
 * pressure pd and T in K. Reference 298 K, 99 kPa dry (100 kPa less 1 kPa of vapour); used from 288 to 308 K, 80 to 110 kPa dry and
 * from 0.93 to 1.07. Outside, the standard wants the conditions printed beside the corrected value. Formula and limits as the text of
 * 88/195/EEC and a preview of ISO 1585:1982 give them in secondary quotations; R85 has it in annex 5, paragraph 5.4.
 */
public record Iso1585() implements CorrectionStandard {
    private static final double REFERENCE_DRY_PASCALS = 99_000;
    private static final double REFERENCE_KELVINS = 298;
    private static final double PRESSURE_EXPONENT = 1.2;
    private static final double TEMPERATURE_EXPONENT = 0.6;

    @Override
    public String id() {
        return "iso-1585";
    }

    @Override
    public String title() {
        return "ISO 1585 (UN R85)";
    }

    @Override
    public double factor(AirState air) {
        double pressure = REFERENCE_DRY_PASCALS / air.dryPressure().pascals();
        double warmth = CorrectionStandard.printedKelvins(air.temperature()) / REFERENCE_KELVINS;
        return Math.pow(pressure, PRESSURE_EXPONENT) * Math.pow(warmth, TEMPERATURE_EXPONENT);
    }

    @Override
    public Optional<CorrectionStandard.ValidRange> limits() {
        return Optional.of(CorrectionStandard.ValidRange.ofKilopascals(80, 110));
    }
}
