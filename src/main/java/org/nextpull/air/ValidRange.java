package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * Where a standard lets its factor be used.
 *
 * @param kelvins inlet air temperature in K; empty where the standard prints none
 * @param dryPascals dry pressure in Pa; empty where the standard prints none
 * @param factor the factor itself, dimensionless
 */
record ValidRange(Optional<Span> kelvins, Optional<Span> dryPascals, Span factor) {
    /** No more than 7 % of correction: the bound of ISO 1585 and SAE J1349, taken over for the older standards that print none. */
    static final Span SEVEN_PERCENT = Span.of(0.93, 1.07);

    static ValidRange ofFactorOnly() {
        return new ValidRange(Optional.empty(), Optional.empty(), SEVEN_PERCENT);
    }

    static ValidRange ofKilopascals(double low, double high) {
        Span kelvins = Span.of(
                Temperature.ofCelsius(15).kelvins(), Temperature.ofCelsius(35).kelvins());
        Span pascals = Span.of(
                Pressure.ofKilopascals(low).pascals(),
                Pressure.ofKilopascals(high).pascals());
        return new ValidRange(Optional.of(kelvins), Optional.of(pascals), SEVEN_PERCENT);
    }
}
