package org.nextpull.engine.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.engine.gas.ConstantGammaGas;
import org.nextpull.engine.gas.Gas;

class ClosedCycleTest {
    private static final double START_PA = 1e5;
    private static final double START_K = 330;
    private static final double GAS_CONSTANT = 287;

    /** Closed from one bottom dead centre to the next, no loss, constant gamma. */
    private static ClosedCycle.Run airStandard(double ratio, double gamma, double heat) {
        Cylinder cylinder = new Cylinder(0.086, 0.086, new Cylinder.Drive(ratio, 3.5));
        double volume = cylinder.sweptVolume() + cylinder.clearanceVolume();
        ConstantGammaGas gas = new ConstantGammaGas(GAS_CONSTANT, gamma);
        double mass = START_PA * volume / (GAS_CONSTANT * START_K);
        return new ClosedCycle.Run(
                cylinder,
                new ClosedCycle.Filling(new Gas.State(START_PA, START_K), volume, -180),
                new ClosedCycle.Charge(gas, gas, mass, heat, new ClosedCycle.Charge.EndGas(100, 0)),
                new ClosedCycle.Walls(START_K, 0),
                3000,
                180);
    }

    /** The limit of instant burn without loss: efficiency 1 - r^(1 - gamma), any handbook of thermodynamics. */
    @ParameterizedTest
    @CsvSource({"8,1.4", "10,1.4", "12,1.3", "14,1.25", "9,1.35"})
    void theAirStandardOttoCycleIsTheLimit(double ratio, double gamma) {
        ClosedCycle.Run run = airStandard(ratio, gamma, 900);
        ClosedCycle.Result result = ClosedCycle.solve(run, new Wiebe(-0.1, 0.2));
        double efficiency = result.energy().work() / result.energy().released();
        assertThat(efficiency).isCloseTo(1 - Math.pow(ratio, 1 - gamma), within(2e-5));
    }

    @Test
    void aSlowerBurnEarnsLessThanTheLimit() {
        ClosedCycle.Run run = airStandard(10, 1.35, 900);
        double limit = 1 - Math.pow(10, -0.35);
        ClosedCycle.Energy energy = ClosedCycle.solve(run, new Wiebe(-20, 55)).energy();
        assertThat(energy.work() / energy.released()).isBetween(0.9 * limit, 0.99 * limit);
    }

    /** Without heat or loss: p V^gamma constant, so the highest pressure is r^gamma at top dead centre, and no work is left. */
    @Test
    void anUnfiredCycleIsIsentropic() {
        ClosedCycle.Run run = airStandard(10, 1.4, 1e-9);
        ClosedCycle.Result result = ClosedCycle.solve(run, new Wiebe(0, 50));
        assertThat(result.peak().pascals()).isCloseTo(START_PA * Math.pow(10, 1.4), within(50.0));
        assertThat(result.peak().deg()).isCloseTo(0, within(0.02));
        assertThat(result.opening().kelvins()).isCloseTo(START_K, within(1e-3));
        assertThat(result.energy().work()).isCloseTo(0, within(1e-3));
    }

    @Test
    void heatLostToTheWallIsMissingFromTheWork() {
        ClosedCycle.Run free = airStandard(10, 1.35, 900);
        ClosedCycle.Run cooled = new ClosedCycle.Run(
                free.cylinder(), free.filling(), free.charge(), new ClosedCycle.Walls(430, 1), free.rpm(), 180);
        ClosedCycle.Energy without = ClosedCycle.solve(free, new Wiebe(-15, 50)).energy();
        ClosedCycle.Energy with = ClosedCycle.solve(cooled, new Wiebe(-15, 50)).energy();
        assertThat(with.kept().lost()).isPositive();
        assertThat(with.work()).isLessThan(without.work());
        assertThat(with.work() + with.kept().lost() + with.kept().stored())
                .isCloseTo(with.released(), withinPercentage(1e-4));
    }

    private static double knockIntegral(double ratio, double octane) {
        ClosedCycle.Run run = airStandard(ratio, 1.3, 1200);
        ClosedCycle.Charge charge = run.charge();
        ClosedCycle.Charge rated = new ClosedCycle.Charge(
                charge.unburned(),
                charge.burned(),
                charge.mass(),
                charge.heat(),
                new ClosedCycle.Charge.EndGas(octane, 0));
        ClosedCycle.Run other = new ClosedCycle.Run(
                run.cylinder(), run.filling(), rated, run.walls(), run.rpm(), run.exhaustOpensDeg());
        return ClosedCycle.solve(other, new Wiebe(-25, 60)).knock().integral();
    }

    @Test
    void endGasKnocksSoonerTheHigherTheCompression() {
        assertThat(knockIntegral(12, 95)).isGreaterThan(1.1 * knockIntegral(10, 95));
    }

    /** The delay goes with the octane number to the power 3.402, and nothing else does. */
    @Test
    void theKnockIntegralFallsWithOctaneAsPublished() {
        assertThat(knockIntegral(11, 90) / knockIntegral(11, 100)).isCloseTo(Math.pow(100.0 / 90, 3.402), within(1e-9));
    }
}
