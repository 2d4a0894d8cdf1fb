package org.nextpull.report.html;

import java.util.List;
import java.util.Optional;
import org.nextpull.air.AirState;
import org.nextpull.report.KnockText;
import org.nextpull.report.Shown;
import org.nextpull.response.Conditions;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** The pulls: what was set and what came out, and the conditions of each. */
final class PullsPart {
    private static final String UNKNOWN = "-";

    private final SessionResult result;
    private final Shown shown;

    PullsPart(SessionResult result, Shown shown) {
        this.result = result;
        this.shown = shown;
    }

    Section figures() {
        String torque = shown.unit(Quantity.TORQUE).symbol();
        String power = shown.unit(Quantity.POWER).symbol();
        Grid grid = Grid.of(
                "Settings and corrected figures: band averages and highest values",
                "pull",
                "deg",
                "lambda",
                "mean " + torque,
                "mean " + power,
                "most " + torque,
                "at rpm",
                "most " + power,
                "at rpm",
                "knock, rpm",
                "use",
                "label, fuel, note");
        for (MeasuredPull pull : result.pulls()) {
            Optional<Figures> figures = pull.figures();
            grid = grid.row(
                    String.valueOf(pull.number()),
                    pull.setting()
                            .advance()
                            .or(() -> pull.setting().offset())
                            .map(value -> Shown.fixed(value.deg(), 1))
                            .orElse(UNKNOWN),
                    pull.setting()
                            .lambda()
                            .map(value -> Shown.fixed(value.value(), 3))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::meanTorque)
                            .map(value -> shown.torque(value.newtonMetres()))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::meanPower)
                            .map(value -> shown.power(value.watts()))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::peakTorque)
                            .map(peak -> shown.torque(peak.torque().newtonMetres()))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::peakTorque)
                            .map(peak -> Shown.fixed(peak.rpm(), 0))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::peakPower)
                            .map(peak -> shown.power(peak.power().watts()))
                            .orElse(UNKNOWN),
                    figures.flatMap(Figures::peakPower)
                            .map(peak -> Shown.fixed(peak.rpm(), 0))
                            .orElse(UNKNOWN),
                    KnockText.brief(pull.knock()),
                    pull.standing().id().replace('-', ' '),
                    words(pull));
        }
        return Section.of("Pulls").withGrids(grid.isEmpty() ? List.of() : List.of(grid));
    }

    private static String words(MeasuredPull pull) {
        return String.join(
                ", ",
                List.of(
                                pull.setting().label(),
                                pull.setting().fuel(),
                                pull.setting().note())
                        .stream()
                        .flatMap(Optional::stream)
                        .toList());
    }

    Section conditions() {
        Unit baro = shown.units() == UnitSystem.US ? Unit.INCH_OF_MERCURY : Unit.KILOPASCAL;
        String warmth = shown.unit(Quantity.TEMPERATURE).symbol();
        Grid grid = Grid.of(
                "Medians over the band of each pull; the exhaust is the highest value",
                "pull",
                "factor",
                "air " + baro.symbol(),
                "air " + warmth,
                "humidity %",
                "coolant " + warmth,
                "oil " + warmth,
                "exhaust " + warmth,
                "source",
                "line");
        for (MeasuredPull pull : result.pulls()) {
            Conditions conditions = pull.conditions();
            Optional<AirState> air = conditions.air();
            grid = grid.row(
                    String.valueOf(pull.number()),
                    pull.correction()
                            .map(correction -> Shown.fixed(correction.factor(), 4))
                            .orElse(UNKNOWN),
                    air.map(state -> Shown.fixed(baro.fromSi(state.barometer().pascals()), 2))
                            .orElse(UNKNOWN),
                    warmth(air.map(AirState::temperature).or(conditions::inletAir)),
                    air.map(state -> shown.number(Quantity.FRACTION, state.relativeHumidity()))
                            .orElse(UNKNOWN),
                    warmth(conditions.coolant()),
                    warmth(conditions.oil()),
                    warmth(conditions.hottestExhaust()),
                    pull.origin().source(),
                    String.valueOf(pull.origin().firstLine()));
        }
        return Section.of("Conditions and correction").withGrids(grid.isEmpty() ? List.of() : List.of(grid));
    }

    private String warmth(Optional<Temperature> temperature) {
        return temperature
                .map(value -> shown.number(Quantity.TEMPERATURE, value.kelvins()))
                .orElse(UNKNOWN);
    }
}
