package org.nextpull.report.text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.nextpull.air.AirSheet;
import org.nextpull.air.AirState;
import org.nextpull.air.Correction;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.WeatherChange;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Place;
import org.nextpull.report.Shown;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** What {@code air} prints: the air itself, the factor of each standard, and what a change of weather does. */
public final class AirText {
    private final boolean us;

    public AirText(Shown shown) {
        this.us = shown.units() == UnitSystem.US;
    }

    /**
     * One weather.
     *
     * @param sheet the weather and its factors
     * @param chosen the standard of a plan, if there is one
     */
    public String sheet(AirSheet sheet, Optional<CorrectionStandard> chosen) {
        StringBuilder text = new StringBuilder(factors(sheet, chosen) + "\n");
        text.append("Air: ").append(air(sheet.air())).append('\n');
        text.append("  water in the air ").append(water(sheet)).append('\n');
        text.append("  density ").append(density(sheet.air()));
        text.append(", density altitude ")
                .append(altitude(sheet.densityAltitude()))
                .append("\n\n");
        TextTable table = new TextTable("standard", "factor", "corrects by", "range", "document");
        for (Correction correction : sheet.corrections()) {
            table.row(
                    correction.standard().id(),
                    Shown.fixed(correction.factor(), 4),
                    signed(100 * (correction.factor() - 1), 2),
                    range(correction),
                    remark(correction.standard()));
        }
        text.append(table.text()).append('\n');
        text.append("Corrected torque is measured torque times the factor. Never compare across standards.\n");
        outside(text, sheet);
        return text.toString();
    }

    /** The answer in a line: the factor of the plan's standard, else of each. */
    private static String factors(AirSheet sheet, Optional<CorrectionStandard> chosen) {
        return chosen.map(standard -> "The plan corrects by " + standard.id() + ": times "
                        + Shown.fixed(standard.factor(sheet.air()), 4) + ".")
                .orElseGet(() -> sheet.corrections().stream()
                        .map(one -> one.standard().id() + " " + Shown.fixed(one.factor(), 4))
                        .collect(Collectors.joining(", ", "Factor: ", ".")));
    }

    /** What going from one weather to a later one does. */
    public String change(AirSheet before, AirSheet after) {
        List<WeatherChange> changes = before.changeTo(after.air());
        StringBuilder text = new StringBuilder(changes.stream()
                .map(change -> change.standard().id() + " " + signed(change.rawTorquePercent(), 2))
                .collect(Collectors.joining(", ", "\nLater the brake shows, by the weather alone: ", ".\n")));
        text.append("Air: ").append(air(after.air())).append('\n');
        text.append("  water in the air ").append(water(after)).append('\n');
        text.append("  density ").append(density(after.air()));
        text.append(", density altitude ")
                .append(altitude(after.densityAltitude()))
                .append("\n\n");
        TextTable table = new TextTable(
                "standard", "factor now", "later", "brake shows", "by pressure", "by temperature", "by water");
        for (WeatherChange change : changes) {
            Map<WeatherChange.Cause, Double> ratios = change.ratios();
            table.row(
                    change.standard().id(),
                    Shown.fixed(change.standard().factor(change.before()), 4),
                    Shown.fixed(change.standard().factor(change.after()), 4),
                    signed(change.rawTorquePercent(), 2),
                    cause(ratios, WeatherChange.Cause.PRESSURE),
                    cause(ratios, WeatherChange.Cause.TEMPERATURE),
                    cause(ratios, WeatherChange.Cause.MOISTURE),
                    range(change.standard().correction(change.after(), Place.nowhere())));
        }
        text.append(table.text()).append('\n');
        outside(text, after);
        return text.toString();
    }

    private static String cause(Map<WeatherChange.Cause, Double> ratios, WeatherChange.Cause cause) {
        return signed(100 * (ratios.getOrDefault(cause, 1.0) - 1), 2);
    }

    private static void outside(StringBuilder text, AirSheet sheet) {
        String standards = sheet.corrections().stream()
                .filter(correction -> !correction.isWithinLimits())
                .map(correction -> correction.standard().id())
                .collect(Collectors.joining(", "));
        if (!standards.isEmpty()) {
            text.append("OUTSIDE: this air is beyond what is allowed by ")
                    .append(standards)
                    .append(
                            ". The factor was computed all the same; print the conditions beside the figure and do not compare it "
                                    + "with one from other air.\n");
        }
    }

    private String range(Correction correction) {
        if (correction.standard().limits().isEmpty()) {
            return "";
        }
        return correction.isWithinLimits()
                ? "within"
                : correction.findings().stream().map(this::bound).collect(Collectors.joining("; ", "OUTSIDE ", ""));
    }

    /** The bound that is broken, in few words. */
    private String bound(Finding finding) {
        double low = finding.number("low").orElseThrow();
        double high = finding.number("high").orElseThrow();
        return switch (finding.text("quantity").orElse("")) {
            case "temperature" ->
                "air " + number(degrees(), low, 0) + " to " + number(degrees(), high, 0) + " "
                        + degrees().sign();
            case "dry_pressure" ->
                "dry pressure " + number(bars(), low, us ? 1 : 0) + " to " + number(bars(), high, us ? 1 : 0) + " "
                        + bars().sign();
            default -> "factor " + Shown.fixed(low, 2) + " to " + Shown.fixed(high, 2);
        };
    }

    private static String number(Unit unit, double si, int places) {
        return Shown.fixed(unit.fromSi(si), places);
    }

    private Unit degrees() {
        return us ? Unit.FAHRENHEIT : Unit.CELSIUS;
    }

    private Unit bars() {
        return us ? Unit.INCH_OF_MERCURY : Unit.KILOPASCAL;
    }

    private static String remark(CorrectionStandard standard) {
        return standard.title() + (standard.withdrawn() ? ", withdrawn" : "");
    }

    private String air(AirState air) {
        return "barometer " + pressure(air.barometer()) + ", " + temperature(air.temperature()) + ", humidity "
                + Shown.fixed(100 * air.relativeHumidity(), 0) + " %";
    }

    private String water(AirSheet sheet) {
        String dewPoint = sheet.dewPoint()
                .map(point -> ", dew point " + temperature(point))
                .orElse("");
        return pressure(sheet.air().vapour()) + dewPoint + ", wet bulb " + temperature(sheet.wetBulb());
    }

    private String pressure(Pressure pressure) {
        return number(bars(), pressure.pascals(), 2) + " " + bars().sign();
    }

    private String temperature(Temperature temperature) {
        return number(degrees(), temperature.kelvins(), 1) + " " + degrees().sign();
    }

    private String density(AirState air) {
        Unit unit = us ? Unit.POUND_PER_CUBIC_FOOT : Unit.KILOGRAM_PER_CUBIC_METRE;
        return Shown.fixed(unit.fromSi(air.density()), us ? 4 : 3) + " " + unit.sign();
    }

    private String altitude(double metres) {
        Unit unit = us ? Unit.FOOT : Unit.METRE;
        return Shown.fixed(Math.rint(unit.fromSi(metres) / 10) * 10, 0) + " " + unit.sign();
    }

    /** A change in percent with its sign. */
    private static String signed(double percent, int places) {
        String text = Shown.fixed(percent, places);
        return (text.startsWith("-") || Double.parseDouble(text) == 0 ? "" : "+") + text + " %";
    }
}
