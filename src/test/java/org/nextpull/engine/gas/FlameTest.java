package org.nextpull.engine.gas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlameTest {
    private static final GasState ROOM = new GasState(101325, 298);
    private static final GasState SPARK = new GasState(12e5, 650);

    /** 26 to 31 cm/s for gasoline near phi 1.2 at room conditions (Rhodes and Keck 1985, from memory). */
    @Test
    void gasolineBurnsAsTabledAtRoomConditions() {
        assertThat(Flame.GASOLINE.speed(1 / 1.21, 0, ROOM)).isCloseTo(0.305, within(1e-9));
        assertThat(Flame.GASOLINE.speed(1.0, 0, ROOM)).isCloseTo(0.281, within(0.002));
    }

    /** A tenth of residual gas costs about a third of the velocity (1 - 2.06 x^0.77 at x = 0.1 is 0.65). */
    @Test
    void dilutionSlowsTheFlame() {
        double clean = Flame.GASOLINE.speed(0.88, 0, SPARK);
        assertThat(Flame.GASOLINE.speed(0.88, 0.1, SPARK) / clean).isCloseTo(0.65, within(0.005));
    }

    @Test
    void heatQuickensAndPressureSlowsTheFlame() {
        double base = Flame.GASOLINE.speed(0.9, 0.05, SPARK);
        assertThat(Flame.GASOLINE.speed(0.9, 0.05, new GasState(12e5, 700))).isGreaterThan(base);
        assertThat(Flame.GASOLINE.speed(0.9, 0.05, new GasState(20e5, 650))).isLessThan(base);
    }

    @Test
    void theFlameIsFastestALittleRichAndNeverBackwards() {
        double rich = Flame.GASOLINE.speed(0.83, 0.05, SPARK);
        assertThat(rich).isGreaterThan(Flame.GASOLINE.speed(0.7, 0.05, SPARK));
        assertThat(rich).isGreaterThan(Flame.GASOLINE.speed(1.1, 0.05, SPARK));
        assertThat(Flame.METHANOL.speed(2.5, 0.4, SPARK)).isPositive();
    }

    @Test
    void blendsLieBetweenTheirParts() {
        double petrol = TestFuels.PETROL.flame().speed(0.9, 0.05, SPARK);
        double half = TestFuels.fuel("e85").flame().speed(0.9, 0.05, SPARK);
        double ethanol = TestFuels.fuel("ethanol").flame().speed(0.9, 0.05, SPARK);
        assertThat(half).isBetween(petrol, ethanol);
    }
}
