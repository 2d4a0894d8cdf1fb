package org.nextpull.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.air.AirState;
import org.nextpull.engine.cycle.ClosedCycle;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.engine.gas.TestFuels;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;
import org.nextpull.fuel.FuelProperty;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/** What is known of engines from outside, asked of the model engine. */
class ModelEngineTest {
    private static final Temperature OIL =
            OperatingPoint.Surroundings.reference().oil();

    private static final ModelEngine ENGINE =
            ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();

    private static OperatingPoint at(double rpm) {
        return new OperatingPoint(
                rpm, Advance.ofDeg(25), Lambda.of(0.88), TestFuels.E10, OperatingPoint.Surroundings.reference());
    }

    private static EnginePoint run(ModelEngine engine, OperatingPoint point) {
        return engine.at(point).value().orElseThrow();
    }

    private static double torque(ModelEngine engine, OperatingPoint point) {
        return run(engine, point).torque().newtonMetres();
    }

    /** The same point at its best advance, by golden section. */
    private static OperatingPoint best(ModelEngine engine, OperatingPoint point) {
        double golden = (Math.sqrt(5) - 1) / 2;
        double low = 0;
        double high = 60;
        while (high - low > 1e-3) {
            double left = high - golden * (high - low);
            double right = low + golden * (high - low);
            if (torque(engine, point.atAdvance(left)) > torque(engine, point.atAdvance(right))) {
                high = right;
            } else {
                low = left;
            }
        }
        return point.atAdvance((low + high) / 2);
    }

    private static double bestLambda(ModelEngine engine, OperatingPoint point) {
        double best = 0;
        double top = 0;
        for (double lambda = 0.75; lambda < 1.1; lambda += 0.005) {
            double torque = torque(engine, point.atLambda(lambda));
            if (torque > top) {
                top = torque;
                best = lambda;
            }
        }
        return best;
    }

    /**
     * 50 % burned 8 to 10 deg after top dead centre (Heywood, Internal Combustion Engine Fundamentals, from memory; 8 to 12 in trade
     * pages). Half a degree is allowed on the near side.
     */
    @ParameterizedTest
    @ValueSource(doubles = {3000, 4000, 5000, 6000, 7000})
    void bestTorqueTimingBurnsHalfEightToTenDegreesAfterTopDeadCentre(double rpm) {
        EnginePoint point = run(ENGINE, best(ENGINE, at(rpm)));
        assertThat(point.burn().angleOf(0.5)).isBetween(7.5, 10.0);
    }

    /** Peak pressure 12 to 16 deg after top dead centre at best torque (Heywood 14 to 16, trade 10 to 15, from memory). */
    @ParameterizedTest
    @ValueSource(doubles = {3000, 4000, 5000, 6000, 7000})
    void bestTorqueTimingPeaksTwelveToSixteenDegreesAfterTopDeadCentre(double rpm) {
        assertThat(run(ENGINE, best(ENGINE, at(rpm))).peak().deg()).isBetween(12.0, 16.0);
    }

    /**
     * About 1 % at 5 deg and 3 to 4 % at 10 deg off best timing (Heywood, figure 15-3, from memory); the regression of Crossley and
     * Cook is flatter (0.4 to 0.5 % and 1.6 to 2.2 %), so the range between them is allowed.
     */
    @ParameterizedTest
    @ValueSource(doubles = {2500, 3500, 4500, 5500, 6500})
    void torqueFallsOffBestTimingAsPublished(double rpm) {
        OperatingPoint best = best(ENGINE, at(rpm));
        double top = torque(ENGINE, best);
        double five = 1 - torque(ENGINE, best.atAdvance(best.advance().deg() - 5)) / top;
        double ten = 1 - torque(ENGINE, best.atAdvance(best.advance().deg() - 10)) / top;
        assertThat(five).isBetween(0.004, 0.012);
        assertThat(ten).isBetween(0.022, 0.04);
    }

    /** Best power mixture 0.85 to 0.90 (Crossley and Cook 0.877; trade pages 0.88 to 0.9). */
    @ParameterizedTest
    @ValueSource(doubles = {3000, 5000, 6500})
    void bestPowerMixtureIsRich(double rpm) {
        assertThat(bestLambda(ENGINE, best(ENGINE, at(rpm)))).isBetween(0.85, 0.905);
    }

    /** Best power mixtures of alcohols that the fuel room states: ethanol 0.80 to 0.88, methanol 0.75 to 0.85 (common practice). */
    @Test
    void bestPowerMixtureOfAlcoholsIsRicherStill() {
        for (EngineFuel fuel : List.of(TestFuels.E85, TestFuels.METHANOL)) {
            Span stated = Blends.listed()
                    .find(fuel.name(), Place.nowhere())
                    .value()
                    .orElseThrow()
                    .sourced(FuelProperty.BEST_POWER_LAMBDA)
                    .orElseThrow()
                    .spread();
            assertThat(bestLambda(ENGINE, best(ENGINE, at(5000).on(fuel)))).isBetween(stated.low(), stated.high());
        }
    }

    /**
     * Common practice, no source: 11:1 on pump fuel begins to knock near best torque at low speed, and far beyond it at high speed; a
     * tenth more compression brings it to best torque.
     */
    @Test
    void knockBeginsNearBestTorqueAtLowSpeedOnly() {
        double low = best(ENGINE, at(2500)).advance().deg();
        double high = best(ENGINE, at(6500)).advance().deg();
        assertThat(knockLimit(ENGINE, at(2500)) - low).isBetween(1.0, 5.0);
        assertThat(knockLimit(ENGINE, at(6500)) - high).isGreaterThan(10);
        ModelEngine squeezed = ModelEngine.of(ExampleEngines.hillClimb().withCompressionRatio(12.3))
                .value()
                .orElseThrow();
        double its = best(squeezed, at(2500)).advance().deg();
        assertThat(knockLimit(squeezed, at(2500)) - its).isBetween(-3.0, 1.5);
    }

    /** Alcohols burn faster than petrol, so best timing comes later (Gulder 1984, from memory: about a quarter faster at the spark). */
    @Test
    void alcoholWantsLessAdvanceThanPetrol() {
        double petrol = best(ENGINE, at(5000).on(TestFuels.PETROL)).advance().deg();
        double e85 = best(ENGINE, at(5000).on(TestFuels.E85)).advance().deg();
        assertThat(petrol - e85).isBetween(1.0, 5.0);
    }

    /** The burn takes more degrees at more speed (Heywood, section 15.3, from memory; common practice). */
    @Test
    void bestTimingGrowsWithSpeed() {
        double slow = best(ENGINE, at(2500)).advance().deg();
        double middle = best(ENGINE, at(4500)).advance().deg();
        double fast = best(ENGINE, at(6500)).advance().deg();
        assertThat(middle).isGreaterThan(slow + 3);
        assertThat(fast).isGreaterThan(middle + 1);
    }

    /** Residuals, water and excess air slow the flame, so best timing moves forward (Heywood, section 15.3, from memory). */
    @Test
    void bestTimingGrowsWithDilution() {
        AirState damp = new AirState(Pressure.ofKilopascals(100), Temperature.ofCelsius(25), Pressure.ofKilopascals(4));
        double dry = best(ENGINE, at(4500)).advance().deg();
        double wet = best(ENGINE, at(4500).in(around(damp, OIL))).advance().deg();
        double lean = best(ENGINE, at(4500).atLambda(1.1)).advance().deg();
        assertThat(wet).isGreaterThan(dry + 0.5);
        assertThat(lean).isGreaterThan(dry + 1);
    }

    /** Late burning leaves its heat in the exhaust; excess fuel takes it away (Heywood, sections 6.5 and 15.3, from memory; common practice). */
    @Test
    void retardHeatsTheExhaustAndRichCoolsIt() {
        OperatingPoint best = best(ENGINE, at(5000));
        double base = run(ENGINE, best).exhaust().kelvins();
        double late =
                run(ENGINE, best.atAdvance(best.advance().deg() - 10)).exhaust().kelvins();
        double rich = run(ENGINE, best.atLambda(0.8)).exhaust().kelvins();
        assertThat(late - base).isBetween(25.0, 120.0);
        assertThat(rich).isLessThan(base - 15);
    }

    /** Full load on the thermocouple: some 700 to 900 degC (common practice, no source). */
    @Test
    void exhaustTemperatureIsThatOfFullLoad() {
        assertThat(run(ENGINE, best(ENGINE, at(6000))).exhaust().celsius()).isBetween(700.0, 900.0);
    }

    /** 85 to 105 N.m a litre and 240 to 330 g/kWh: tuned natural engines at full load (common practice, no source). */
    @Test
    void theExampleEngineMakesTheTorqueOfItsKind() {
        EnginePoint point = run(ENGINE, best(ENGINE, at(5000)));
        double torque = point.torque().newtonMetres();
        double litres = ENGINE.design().displacement() * 1000;
        double gramsPerKilowattHour =
                point.flow().fuel() * 3.6e9 / point.torque().at(5000).watts();
        assertThat(torque / litres).isBetween(85.0, 105.0);
        assertThat(gramsPerKilowattHour).isBetween(240.0, 330.0);
    }

    /** Common practice, no source: knock sets the timing on low octane, and only then does a higher octane gain. */
    @Test
    void moreCompressionBringsKnockBeforeBestTorqueAndThenOctaneGains() {
        ModelEngine squeezed = ModelEngine.of(ExampleEngines.hillClimb().withCompressionRatio(14.5))
                .value()
                .orElseThrow();
        EngineFuel low = TestFuels.PETROL.withOctane(91);
        EngineFuel high = TestFuels.PETROL.withOctane(102);
        OperatingPoint onLow = best(squeezed, at(3000).on(low));
        assertThat(run(squeezed, onLow).knock().integral()).isGreaterThanOrEqualTo(1);
        double lowLimit = knockLimit(squeezed, at(3000).on(low));
        double highLimit = Math.min(
                knockLimit(squeezed, at(3000).on(high)),
                best(squeezed, at(3000).on(high)).advance().deg());
        assertThat(highLimit).isGreaterThan(lowLimit + 2);
        assertThat(torque(squeezed, at(3000).on(high).atAdvance(highLimit)))
                .isGreaterThan(torque(squeezed, at(3000).on(low).atAdvance(lowLimit)) * 1.005);
    }

    /** Common practice, no source: the same with boost. */
    @Test
    void boostBringsKnockBeforeBestTorqueAndThenOctaneGains() {
        ModelEngine charged = ModelEngine.of(ExampleEngines.boosted()).value().orElseThrow();
        OperatingPoint best = best(charged, at(3500));
        assertThat(run(charged, best).knock().integral()).isGreaterThanOrEqualTo(1);
        double low = knockLimit(charged, at(3500));
        assertThat(low).isLessThan(best.advance().deg() - 4);
        OperatingPoint better = at(3500).on(TestFuels.PETROL.withOctane(105));
        double high = knockLimit(charged, better);
        assertThat(high).isGreaterThan(knockLimit(charged, at(3500).on(TestFuels.PETROL)) + 1);
        assertThat(torque(charged, better.atAdvance(high)))
                .isGreaterThan(torque(charged, better.atAdvance(knockLimit(charged, at(3500).on(TestFuels.PETROL))))
                        * 1.005);
    }

    /** Common practice, no source: octane is not energy. */
    @Test
    void withoutKnockOctaneGainsNothing() {
        OperatingPoint best = best(ENGINE, at(5000).on(TestFuels.PETROL));
        assertThat(run(ENGINE, best).knock().integral()).isLessThan(1);
        double more = torque(ENGINE, best.on(TestFuels.PETROL.withOctane(105)));
        assertThat(more).isCloseTo(torque(ENGINE, best), within(1e-12));
    }

    /** Common practice, no source: a few percent more torque, about 30 % more fuel by volume (25 to 45 % by grade). */
    @Test
    void e85GainsALittleAndNeedsAThirdMoreVolume() {
        OperatingPoint petrol = best(ENGINE, at(5000).on(TestFuels.PETROL));
        OperatingPoint e85 = best(ENGINE, at(5000).on(TestFuels.E85));
        assertThat(torque(ENGINE, e85) / torque(ENGINE, petrol)).isBetween(1.01, 1.05);
        assertThat(litres(e85) / litres(petrol)).isBetween(1.25, 1.48);
    }

    /** Common practice, no source: about twice the volume. */
    @Test
    void methanolNeedsTwiceTheVolume() {
        OperatingPoint petrol = best(ENGINE, at(5000).on(TestFuels.PETROL));
        OperatingPoint methanol = best(ENGINE, at(5000).on(TestFuels.METHANOL));
        assertThat(litres(methanol) / litres(petrol)).isBetween(1.9, 2.3);
    }

    private static double litres(OperatingPoint point) {
        return run(ENGINE, point).flow().fuel() / point.fuel().density();
    }

    private static double knockLimit(ModelEngine engine, OperatingPoint point) {
        double advance = -5;
        while (advance < 45 && run(engine, point.atAdvance(advance)).knock().integral() < 1) {
            advance += 0.25;
        }
        return advance;
    }

    /** Torque goes with dry pressure, and with the root of temperature within what heating in the port leaves. */
    @Test
    void torqueFollowsTheWeatherAsTheStandardsSay() {
        OperatingPoint base = best(ENGINE, at(4500));
        AirState high = new AirState(Pressure.ofKilopascals(91), Temperature.ofCelsius(25), Pressure.ofKilopascals(1));
        AirState hot = new AirState(Pressure.ofKilopascals(100), Temperature.ofCelsius(40), Pressure.ofKilopascals(1));
        double top = torque(ENGINE, base);
        double thin = torque(ENGINE, base.in(around(high, OIL))) / top;
        double warm = torque(ENGINE, base.in(around(hot, OIL))) / top;
        assertThat(thin).isCloseTo(90.0 / 99, within(0.02));
        assertThat(warm).isCloseTo(Math.sqrt(298.15 / 313.15), within(0.012));
    }

    @Test
    void coldOilCostsTorque() {
        OperatingPoint base = at(4500);
        double cold = torque(
                ENGINE, base.in(around(OperatingPoint.Surroundings.reference().air(), Temperature.ofCelsius(60))));
        assertThat(cold / torque(ENGINE, base)).isBetween(0.95, 0.99);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1500, 2500, 4000, 6000, 7500})
    void energyClosesOverTheCycle(double rpm) {
        for (double advance = -5; advance <= 45; advance += 5) {
            for (double lambda = 0.75; lambda <= 1.15; lambda += 0.1) {
                EnginePoint point = run(ENGINE, at(rpm).atAdvance(advance).atLambda(lambda));
                ClosedCycle.Energy energy = point.energy();
                assertThat(energy.work() + energy.kept().lost() + energy.kept().stored())
                        .isCloseTo(energy.released(), withinPercentage(1e-4));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1500, 3000, 5000, 7500})
    void halvingTheStepHardlyChangesTorque(double rpm) {
        OperatingPoint point = at(rpm);
        double fine = ENGINE.at(point, 0.5).value().orElseThrow().torque().newtonMetres();
        assertThat(torque(ENGINE, point) / fine).isCloseTo(1, within(5e-4));
    }

    @Test
    void theTorqueCurveRisesToItsTunedSpeedAndFallsBehindIt() {
        double low = torque(ENGINE, best(ENGINE, at(2000)));
        double top = torque(ENGINE, best(ENGINE, at(5500)));
        double high = torque(ENGINE, best(ENGINE, at(7500)));
        assertThat(top).isGreaterThan(1.1 * low);
        assertThat(high).isBetween(0.7 * top, 0.9 * top);
    }

    private static OperatingPoint.Surroundings around(AirState air, Temperature oil) {
        return new OperatingPoint.Surroundings(
                air, OperatingPoint.Surroundings.reference().coolant(), oil);
    }
}
