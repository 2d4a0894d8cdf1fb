package org.nextpull.engine.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlameTest {
    private static final Flame GASOLINE = Flame.of(Flame.Correlation.GASOLINE);
    private static final Gas.State ROOM = new Gas.State(101325, 298);
    private static final Gas.State SPARK = new Gas.State(12e5, 650);

    /** 26 to 31 cm/s for gasoline near phi 1.2 at room conditions (Rhodes and Keck 1985, from memory). */
    @Test
    void gasolineBurnsAsTabledAtRoomConditions() {
        assertThat(GASOLINE.speed(1 / 1.21, 0, ROOM)).isCloseTo(0.305, within(1e-9));
        assertThat(GASOLINE.speed(1.0, 0, ROOM)).isCloseTo(0.281, within(0.002));
    }

    /** A tenth of residual gas costs about a third of the velocity (1 - 2.06 x^0.77 at x = 0.1 is 0.65). */
    @Test
    void dilutionSlowsTheFlame() {
        double clean = GASOLINE.speed(0.88, 0, SPARK);
        assertThat(GASOLINE.speed(0.88, 0.1, SPARK) / clean).isCloseTo(0.65, within(0.005));
    }

    @Test
    void heatQuickensAndPressureSlowsTheFlame() {
        double base = GASOLINE.speed(0.9, 0.05, SPARK);
        assertThat(GASOLINE.speed(0.9, 0.05, new Gas.State(12e5, 700))).isGreaterThan(base);
        assertThat(GASOLINE.speed(0.9, 0.05, new Gas.State(20e5, 650))).isLessThan(base);
    }

    @Test
    void theFlameIsFastestALittleRichAndNeverBackwards() {
        double rich = GASOLINE.speed(0.83, 0.05, SPARK);
        assertThat(rich).isGreaterThan(GASOLINE.speed(0.7, 0.05, SPARK));
        assertThat(rich).isGreaterThan(GASOLINE.speed(1.1, 0.05, SPARK));
        assertThat(Flame.of(Flame.Correlation.METHANOL).speed(2.5, 0.4, SPARK)).isPositive();
    }

    /**
     * At the spark the alcohols burn a fifth to a half faster than gasoline, each by its own exponents: 700 K and 20 atm give 1.9572 and
     * -0.1505 for gasoline (Rhodes and Keck), 1.75 and -0.1585 for ethanol (Gulder), 2.06 and -0.127 for methanol (Metghalchi and Keck) at
     * phi 1.15, calculated by hand.
     */
    @Test
    void eachFuelHasItsOwnExponents() {
        Gas.State top = new Gas.State(20 * 101325, 700);
        double hot = 700.0 / 298;
        double gasoline = Math.pow(hot, 1.9572) * Math.pow(20, -0.1508);
        double ethanol = Math.pow(hot, 1.75) * Math.pow(20, -0.1585);
        double methanol = Math.pow(hot, 2.06) * Math.pow(20, -0.127);
        double lambda = 1 / 1.15;
        assertThat(rise(Flame.Correlation.GASOLINE, lambda, top)).isCloseTo(gasoline, within(0.005 * gasoline));
        assertThat(rise(Flame.Correlation.ETHANOL, lambda, top)).isCloseTo(ethanol, within(0.005 * ethanol));
        assertThat(rise(Flame.Correlation.METHANOL, lambda, top)).isCloseTo(methanol, within(0.005 * methanol));
        double petrol = GASOLINE.speed(lambda, 0, top);
        assertThat(Flame.of(Flame.Correlation.ETHANOL).speed(lambda, 0, top) / petrol)
                .isBetween(1.2, 1.5);
        assertThat(Flame.of(Flame.Correlation.METHANOL).speed(lambda, 0, top) / petrol)
                .isBetween(1.2, 1.5);
    }

    private static double rise(Flame.Correlation fuel, double lambda, Gas.State state) {
        return Flame.of(fuel).speed(lambda, 0, state) / Flame.of(fuel).speed(lambda, 0, ROOM);
    }

    @Test
    void blendsLieBetweenTheirParts() {
        double petrol = TestFuels.PETROL.flame().speed(0.9, 0.05, SPARK);
        double half = TestFuels.fuel("e85").flame().speed(0.9, 0.05, SPARK);
        double ethanol = TestFuels.fuel("ethanol").flame().speed(0.9, 0.05, SPARK);
        assertThat(half).isBetween(petrol, ethanol);
    }
}
