package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/** Dew point (frost point below the triple point): the temperature at which a vapour pressure is the saturation pressure. */
public final class DewPoint {
    private static final int HALVINGS = 60;

    private DewPoint() {}

    /** The dew point by halving, to better than 1e-12 K; empty for air so dry that it lies outside the range of {@link HylandWexler}. */
    public static Optional<Temperature> of(Pressure vapour) {
        double low = HylandWexler.VALID_KELVINS.low();
        double high = HylandWexler.VALID_KELVINS.high();
        if (vapour.pascals() < saturation(low) || vapour.pascals() > saturation(high)) {
            return Optional.empty();
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (saturation(middle) < vapour.pascals()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(Temperature.ofKelvins((low + high) / 2));
    }

    private static double saturation(double kelvins) {
        return HylandWexler.saturationPressure(Temperature.ofKelvins(kelvins)).pascals();
    }
}
