package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.nextpull.advice.PresentConditions;
import org.nextpull.plan.StartConditions;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.UnitSystem;

/** In the window or not, and how far off. */
class ConditionTextTest {
    private static final StartConditions WANTED = new StartConditions(
            Optional.of(window(78, 95)), Optional.of(window(80, 115)), Optional.empty(), OptionalDouble.empty());

    private static StartConditions.TemperatureWindow window(double low, double high) {
        return new StartConditions.TemperatureWindow(Temperature.ofCelsius(low), Temperature.ofCelsius(high));
    }

    private static Optional<Temperature> celsius(double value) {
        return Optional.of(Temperature.ofCelsius(value));
    }

    private static List<ConditionText.Line> lines(UnitSystem units, PresentConditions now) {
        return new ConditionText(new Shown(units)).lines(WANTED, now);
    }

    @Test
    void eachConditionSaysWhereItLies() {
        List<ConditionText.Line> lines = lines(
                UnitSystem.METRIC, new PresentConditions(celsius(74), celsius(121.5), celsius(25), Optional.empty()));
        assertThat(lines)
                .containsExactly(
                        new ConditionText.Line(
                                "Coolant", "74 °C", "78 to 95 °C", ConditionText.Line.Place.BELOW, "4 °C too cold"),
                        new ConditionText.Line(
                                "Oil", "122 °C", "80 to 115 °C", ConditionText.Line.Place.ABOVE, "7 °C too hot"),
                        new ConditionText.Line(
                                "Inlet air", "25 °C", "not asked for", ConditionText.Line.Place.UNASKED, ""));
    }

    @Test
    void aDifferenceInFahrenheitLosesTheOffset() {
        ConditionText.Line coolant = lines(
                        UnitSystem.US,
                        new PresentConditions(celsius(68), celsius(90), Optional.empty(), Optional.empty()))
                .get(0);
        assertThat(coolant.words()).as("10 K are 18 °F").isEqualTo("18 °F too cold");
        assertThat(coolant.value()).isEqualTo("154 °F");
    }

    @Test
    void whatIsAskedForAndNotMeasuredIsSaid() {
        assertThat(lines(UnitSystem.METRIC, PresentConditions.unknown()))
                .extracting(ConditionText.Line::place)
                .containsExactly(ConditionText.Line.Place.UNKNOWN, ConditionText.Line.Place.UNKNOWN);
    }

    @Test
    void aValueInsideIsInside() {
        assertThat(lines(
                                UnitSystem.METRIC,
                                new PresentConditions(celsius(95), celsius(80), Optional.empty(), Optional.empty()))
                        .stream()
                        .map(ConditionText.Line::place))
                .containsExactly(ConditionText.Line.Place.INSIDE, ConditionText.Line.Place.INSIDE);
    }
}
