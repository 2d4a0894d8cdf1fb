package org.nextpull.fuel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.ReferenceRow;
import org.nextpull.finding.Place;
import org.nextpull.unit.Lambda;

class LambdaScaleTest {
    /** The table prints four decimals and, for methanol, a ratio rounded to three. */
    private static final double PRINTED = 6e-4;

    private static final Blends LISTED = Blends.listed();

    private static final Map<String, LambdaScale> COLUMNS = Map.of(
            "afr_14.7", LambdaScale.of(14.7),
            "afr_14.6", LambdaScale.of(14.6),
            "afr_14.01_E10", fuel("e10").scale(),
            "afr_9.80_E85", fuel("e85").scale(),
            "afr_9.0053_ethanol", fuel("ethanol").scale(),
            "afr_6.474_methanol", fuel("methanol").scale());

    static Stream<ReferenceRow> lambdas() {
        return ReferenceRow.read("lambda_afr.csv").stream();
    }

    @ParameterizedTest
    @MethodSource("lambdas")
    void lambdaAndRatioTurnIntoEachOtherOnEveryScale(ReferenceRow row) {
        double lambda = row.number("lambda");
        COLUMNS.forEach((column, scale) -> {
            assertThat(scale.airFuelRatio(Lambda.of(lambda))).as(column).isCloseTo(row.number(column), within(PRINTED));
            assertThat(scale.lambda(row.number(column)).value()).as(column).isCloseTo(lambda, within(1e-4));
        });
    }

    /** Common practice, no source: 12.6 on the petrol scale is 8.4 on E85's own. */
    @Test
    void aPetrolGaugeOnEthanolBlendIsReadAsTheTradeReadsIt() {
        Lambda lambda = LambdaScale.of(14.7).lambda(12.6);
        assertThat(lambda.value()).isCloseTo(0.857, within(5e-4));
        assertThat(fuel("e85").scale().airFuelRatio(lambda)).isCloseTo(8.4, within(0.01));
    }

    @Test
    void aPetrolGaugeShowsThePetrolFigureOnAnyFuel() {
        double shown = LambdaScale.of(14.7).airFuelRatio(Lambda.of(0.88));
        assertThat(shown).isCloseTo(12.936, within(1e-9));
        Lambda lambda = LambdaScale.of(14.7).lambda(shown);
        assertThat(lambda.value()).isCloseTo(0.88, within(1e-12));
        for (Fuel fuel : LISTED.all()) {
            assertThat(fuel.scale().airFuelRatio(lambda))
                    .isCloseTo(0.88 * fuel.stoichiometricAirFuelRatio(), within(1e-9));
        }
    }

    @Test
    void aGaugeSetToTheFuelShowsTheTrueRatio() {
        LambdaScale scale = fuel("e85").scale();
        assertThat(scale.airFuelRatio(scale.lambda(8.4))).isCloseTo(8.4, within(1e-12));
    }

    @Test
    void aScaleIsPositive() {
        assertThatThrownBy(() -> LambdaScale.of(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LambdaScale.of(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LambdaScale.of(14.7).lambda(-1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Fuel fuel(String name) {
        return LISTED.find(name, Place.nowhere()).value().orElseThrow();
    }
}
