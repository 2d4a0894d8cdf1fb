package org.nextpull.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.air.AirState;
import org.nextpull.response.Figures;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Power;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/**
 * What can be said of a pull in one column. The table in text, the tables of the sheet, the CSV file and the cards of the window each
 * take some of these.
 */
public enum PullColumn {
    NUMBER("pull", "order", Quantity.COUNT, 0),
    ADVANCE("advance", "advance_deg", Quantity.ANGLE, 2),
    OFFSET("offset", "offset_deg", Quantity.ANGLE, 2),
    LAMBDA("lambda", "lambda", Quantity.LAMBDA, 4),
    MEAN_TORQUE("", "torque_nm", Quantity.TORQUE, 3),
    MEAN_POWER("", "power_kw", Quantity.POWER, 3),
    PEAK_TORQUE("peak ", "peak_torque_nm", Quantity.TORQUE, 3),
    PEAK_TORQUE_SPEED("at rpm", "peak_torque_rpm", Quantity.SPEED, 0),
    PEAK_POWER("peak ", "peak_power_kw", Quantity.POWER, 3),
    PEAK_POWER_SPEED("at rpm", "peak_power_rpm", Quantity.SPEED, 0),
    KNOCK("knock", "knock"),
    KNOCK_FROM("from rpm", "knock_from_rpm", Quantity.SPEED, 0),
    KNOCK_TO("to rpm", "knock_to_rpm", Quantity.SPEED, 0),
    USED("counts", "used"),
    STANDING("use", "standing"),
    LABEL("label", "label"),
    FUEL("fuel", "fuel"),
    NOTE("note", "note"),
    CORRECTION("factor", "correction", Quantity.COUNT, 5),
    BAROMETER("air ", "baro_kpa", Quantity.PRESSURE, 3),
    AIR("air ", "air_c", Quantity.TEMPERATURE, 2),
    HUMIDITY("humidity ", "humidity_percent", Quantity.FRACTION, 2),
    COOLANT("coolant ", "coolant_c", Quantity.TEMPERATURE, 1),
    OIL("oil ", "oil_c", Quantity.TEMPERATURE, 1),
    EXHAUST("exhaust ", "exhaust_c", Quantity.TEMPERATURE, 1),
    SOURCE("source", "source"),
    LINE("line", "first_line", Quantity.COUNT, 0);

    /** Decimal places in a file of a column that holds words. */
    private static final int WORDS = -1;

    private static final int CORRECTION_PLACES = 4;
    private static final int BAROMETER_PLACES = 2;

    private final String heading;
    private final String fileHeading;
    private final Quantity quantity;
    private final int filePlaces;

    PullColumn(String heading, String fileHeading) {
        this(heading, fileHeading, Quantity.COUNT, WORDS);
    }

    PullColumn(String heading, String fileHeading, Quantity quantity, int filePlaces) {
        this.heading = heading;
        this.fileHeading = fileHeading;
        this.quantity = quantity;
        this.filePlaces = filePlaces;
    }

    /** The heading for people, with the unit where that is not plain. */
    public String heading(Shown shown) {
        boolean isPlain = !heading.isEmpty() && !heading.endsWith(" ");
        return isPlain ? heading : heading + unit(shown).sign();
    }

    /** The heading in a file, with its unit. */
    public String fileHeading() {
        return fileHeading;
    }

    /** The cell for people; {@code -} where there is no such number. An offset stands, with its sign, where no advance is known. */
    public String cell(MeasuredPull pull, Shown shown) {
        if (filePlaces == WORDS) {
            return switch (this) {
                case STANDING -> status(pull);
                case SOURCE -> words(pull, "").replaceFirst(".*[/\\\\]", "");
                default -> words(pull, KnockText.brief(pull.knock()));
            };
        }
        return number(pull)
                .map(si -> number(si, shown))
                .or(() -> this == ADVANCE ? OFFSET.number(pull).map(AdviceText::signed) : Optional.empty())
                .orElse("-");
    }

    /** Whether a pull counts, and if not, why. */
    public static String status(MeasuredPull pull) {
        return switch (pull.standing()) {
            case USED -> "used";
            case CUT_SHORT -> "cut short";
            case REFUSED -> "rejected";
            case STRUCK -> "excluded";
            case NO_PULL -> "no pull";
            case THROWN_AWAY -> "discarded";
        };
    }

    /** The columns in which a pull has something to say; the one log of a day is not named with each pull. */
    public static List<PullColumn> telling(List<PullColumn> all, List<MeasuredPull> pulls, Shown shown) {
        boolean oneSource =
                pulls.stream().map(pull -> pull.origin().source()).distinct().count() < 2;
        return all.stream()
                .filter(column -> !(column == SOURCE && oneSource))
                .filter(column -> pulls.stream()
                        .map(pull -> column.cell(pull, shown))
                        .anyMatch(cell -> !cell.isEmpty() && !cell.equals("-")))
                .toList();
    }

    /** The cell in a file, in the unit of its heading; empty where there is no such number. */
    public String fileCell(MeasuredPull pull) {
        if (filePlaces == WORDS) {
            return words(pull, written(pull.knock()));
        }
        Unit unit = unit(new Shown(UnitSystem.METRIC));
        return number(pull)
                .map(si -> String.format(Locale.ROOT, "%." + filePlaces + "f", unit.fromSi(si)))
                .orElse("");
    }

    /** The number with its unit, where there is one: {@code 26.0 deg}. */
    public Optional<String> said(MeasuredPull pull, Shown shown) {
        return number(pull)
                .map(si -> this == LAMBDA
                        ? heading + " " + number(si, shown)
                        : (this == OFFSET ? AdviceText.signed(si) : number(si, shown)) + " "
                                + unit(shown).sign());
    }

    private Unit unit(Shown shown) {
        return this == BAROMETER && shown.units() == UnitSystem.US ? Unit.INCH_OF_MERCURY : shown.unit(quantity);
    }

    private String number(double si, Shown shown) {
        return switch (this) {
            case CORRECTION -> Shown.fixed(si, CORRECTION_PLACES);
            case BAROMETER -> Shown.fixed(unit(shown).fromSi(si), BAROMETER_PLACES);
            default -> shown.number(quantity, si);
        };
    }

    /** The number in the project's unit. */
    private Optional<Double> number(MeasuredPull pull) {
        Optional<Figures> figures = pull.figures();
        Optional<AirState> air = pull.conditions().air();
        return switch (this) {
            case NUMBER -> Optional.of((double) pull.number());
            case ADVANCE -> pull.setting().advance().map(Advance::deg);
            case OFFSET -> pull.setting().offset().map(Advance::deg);
            case LAMBDA -> pull.setting().lambda().map(Lambda::value);
            case MEAN_TORQUE -> figures.flatMap(Figures::meanTorque).map(Torque::newtonMetres);
            case MEAN_POWER -> figures.flatMap(Figures::meanPower).map(Power::watts);
            case PEAK_TORQUE ->
                figures.flatMap(Figures::peakTorque).map(peak -> peak.torque().newtonMetres());
            case PEAK_TORQUE_SPEED -> figures.flatMap(Figures::peakTorque).map(peak -> peak.rpm());
            case PEAK_POWER ->
                figures.flatMap(Figures::peakPower).map(peak -> peak.power().watts());
            case PEAK_POWER_SPEED -> figures.flatMap(Figures::peakPower).map(peak -> peak.rpm());
            case KNOCK_FROM -> pull.knock().speeds().map(KnockHeard.Speeds::lowRpm);
            case KNOCK_TO -> pull.knock().speeds().map(KnockHeard.Speeds::highRpm);
            case CORRECTION -> pull.correction().map(correction -> correction.factor());
            case BAROMETER -> air.map(state -> state.barometer().pascals());
            case AIR ->
                air.map(AirState::temperature)
                        .or(() -> pull.conditions().inletAir())
                        .map(Temperature::kelvins);
            case HUMIDITY -> air.map(AirState::relativeHumidity);
            case COOLANT -> pull.conditions().coolant().map(Temperature::kelvins);
            case OIL -> pull.conditions().oil().map(Temperature::kelvins);
            case EXHAUST -> pull.conditions().hottestExhaust().map(Temperature::kelvins);
            case LINE -> Optional.of((double) pull.origin().firstLine());
            case KNOCK, USED, STANDING, LABEL, FUEL, NOTE, SOURCE -> Optional.empty();
        };
    }

    private String words(MeasuredPull pull, String knock) {
        return switch (this) {
            case KNOCK -> knock;
            case USED -> pull.isUsed() ? "yes" : "no";
            case STANDING -> pull.standing().id();
            case LABEL -> pull.setting().label().orElse("");
            case FUEL -> pull.setting().fuel().orElse("");
            case NOTE -> pull.setting().note().orElse("");
            default -> pull.origin().source();
        };
    }

    private static String written(KnockHeard knock) {
        return switch (knock.mark()) {
            case HEARD -> "yes";
            case NONE -> "no";
            case NOT_MEASURED -> "";
        };
    }
}
