package org.nextpull.air;

import java.util.Optional;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * Saturation pressure of water vapour by Hyland and Wexler (1983), as printed in ASHRAE Handbook, Fundamentals 2017, chapter 1,
 * equations 5 (over ice) and 6 (over liquid water). Valid from -100 to 200 degC; within 0.02 % of the IAPWS formulation from 0 to
 * 40 degC.
 */
public final class HylandWexler {
    private static final int HALVINGS = 60;

    /** Validity in kelvins. */
    public static final Span VALID_KELVINS = Span.of(173.15, 473.15);

    private static final double TRIPLE_POINT_K = 273.16;

    private HylandWexler() {}

    /**
     * Saturation pressure at a temperature; over ice up to the triple point, over water above it.
     *
     * @throws IllegalArgumentException outside {@link #VALID_KELVINS}
     */
    public static Pressure saturationPressure(Temperature temperature) {
        double t = temperature.kelvins();
        if (!VALID_KELVINS.contains(t)) {
            throw new IllegalArgumentException("Hyland-Wexler holds from 173.15 to 473.15 K, not at " + t + " K");
        }
        return Pressure.ofPascals(Math.exp(t <= TRIPLE_POINT_K ? overIce(t) : overWater(t)));
    }

    /** Equation 5. */
    private static double overIce(double t) {
        double series = 6.3925247 + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - t * 9.484024e-13)));
        return -5.6745359e3 / t + series + 4.1635019 * Math.log(t);
    }

    /** Equation 6. */
    private static double overWater(double t) {
        double series = 1.3914993 + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8));
        return -5.8002206e3 / t + series + 6.5459673 * Math.log(t);
    }

    /** The dew point by halving, to better than 1e-12 K; empty for air so dry that it lies outside the range of {@link HylandWexler}. */
    public static Optional<Temperature> dewPoint(Pressure vapour) {
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
