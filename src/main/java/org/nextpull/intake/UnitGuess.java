package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.channel.LogHints;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/**
 * Units of columns that name none: from the user's hints, else what the trade would assume of values of that magnitude. Whatever is
 * assumed is said.
 */
final class UnitGuess {
    private final ColumnTable table;
    private final LogHints hints;
    private final List<Finding> findings = new ArrayList<>();

    UnitGuess(ColumnTable table, LogHints hints) {
        this.table = table;
        this.hints = hints;
    }

    List<Finding> findings() {
        return findings;
    }

    /** The same columns, each with its unit; a column whose unit cannot be told at all is left out. */
    List<ColumnDraft> complete(List<ColumnDraft> drafts) {
        List<ColumnDraft> hinted = drafts.stream().map(this::withHint).toList();
        Map<Role, Unit> fromPower = new PowerCheck(table).units(hinted);
        Unit temperature = temperature(hinted);
        List<ColumnDraft> complete = new ArrayList<>();
        for (ColumnDraft draft : hinted) {
            ProbeColumn probe = table.probes().get(draft.index());
            if (draft.unit().isPresent() || draft.role().isText() || (draft.role() == Role.TIME && probe.isClock())) {
                complete.add(draft);
            } else if (fromPower.containsKey(draft.role())) {
                Unit unit = fromPower.getOrDefault(draft.role(), Unit.NEWTON_METRE);
                say(Finding.Severity.NOTE, FindingCode.COLUMN_UNIT_FROM_POWER, draft, unit);
                complete.add(draft.withUnit(unit));
            } else {
                Optional<Unit> unit = draft.role().quantity() == Quantity.TEMPERATURE
                        ? Optional.of(temperature)
                        : guess(draft, probe);
                unit.ifPresentOrElse(found -> complete.add(draft.withUnit(found)), () -> sayUnknown(draft));
                unit.ifPresent(found -> sayAssumed(draft, found));
            }
        }
        return complete;
    }

    private ColumnDraft withHint(ColumnDraft draft) {
        Unit unit = hints.units().get(draft.role());
        return unit == null ? draft : draft.withUnit(unit);
    }

    private static Optional<Unit> guess(ColumnDraft draft, ProbeColumn probe) {
        boolean blank = probe.count() == 0;
        double most = blank ? 0 : probe.quantile(0.95);
        return switch (draft.role().quantity()) {
            case TIME -> Optional.of(probe.medianStep() >= 2 && probe.isWhole() ? Unit.MILLISECOND : Unit.SECOND);
            case SPEED -> Optional.of(!blank && most < 30 && most > 0.3 ? Unit.KRPM : Unit.RPM);
            case TORQUE -> Optional.of(Unit.NEWTON_METRE);
            case POWER -> Optional.of(Unit.KILOWATT);
            case ANGLE -> Optional.of(Unit.DEGREE);
            case LAMBDA -> Optional.of(Unit.LAMBDA);
            case AIR_FUEL_RATIO -> Optional.of(Unit.AFR);
            case COUNT -> Optional.of(Unit.COUNT);
            case FRACTION -> Optional.of(most > 1.5 ? Unit.PERCENT : Unit.FRACTION);
            case VELOCITY -> Optional.of(Unit.KILOMETRE_PER_HOUR);
            case MASS_FLOW -> Optional.of(Unit.KILOGRAM_PER_HOUR);
            case PRESSURE -> blank ? Optional.empty() : pressure(draft, probe.median(), most);
            default -> Optional.empty();
        };
    }

    private static Optional<Unit> pressure(ColumnDraft draft, double middle, double most) {
        return switch (draft.role()) {
            case BAROMETER -> barometer(middle);
            case MANIFOLD_PRESSURE ->
                Optional.of(
                        most < 4
                                ? Unit.BAR
                                : most < 24
                                        ? Unit.PSI
                                        : most < 32 && !draft.gauge()
                                                ? Unit.INCH_OF_MERCURY
                                                : most < 450 ? Unit.KILOPASCAL : Unit.HECTOPASCAL);
            default ->
                middle < 12
                        ? Optional.of(Unit.BAR)
                        : middle < 120
                                ? Optional.of(Unit.PSI)
                                : middle < 2000 ? Optional.of(Unit.KILOPASCAL) : Optional.empty();
        };
    }

    /** The units of a barometer differ so much that its value names its unit. */
    private static Optional<Unit> barometer(double value) {
        ExpectedValues.ValueRange usual = new ExpectedValues.ValueRange(60_000, 110_000);
        return List.of(
                        Unit.PASCAL,
                        Unit.HECTOPASCAL,
                        Unit.KILOPASCAL,
                        Unit.BAR,
                        Unit.INCH_OF_MERCURY,
                        Unit.PSI,
                        Unit.MILLIMETRE_OF_MERCURY)
                .stream()
                .filter(unit -> usual.holds(unit.toSi(value)))
                .findFirst();
    }

    /** Columns of temperatures without units are taken to share one: Celsius, unless that would boil an engine. */
    private Unit temperature(List<ColumnDraft> drafts) {
        List<ColumnDraft> bare = drafts.stream()
                .filter(draft -> draft.role().quantity() == Quantity.TEMPERATURE
                        && draft.unit().isEmpty())
                .filter(draft -> table.probes().get(draft.index()).count() > 0)
                .toList();
        boolean kelvin = !bare.isEmpty() && bare.stream().allMatch(draft -> isIn(draft, Unit.KELVIN));
        boolean celsius = bare.stream().allMatch(draft -> isIn(draft, Unit.CELSIUS));
        boolean fahrenheit = bare.stream().allMatch(draft -> isIn(draft, Unit.FAHRENHEIT));
        return celsius || (!fahrenheit && !kelvin) ? Unit.CELSIUS : fahrenheit ? Unit.FAHRENHEIT : Unit.KELVIN;
    }

    private boolean isIn(ColumnDraft draft, Unit unit) {
        double middle = table.probes().get(draft.index()).median();
        return switch (draft.role()) {
            case INLET_AIR_TEMPERATURE ->
                ExpectedValues.ValueRange.ofCelsius(-30, 75).holds(unit.toSi(middle));
            case COOLANT_TEMPERATURE ->
                ExpectedValues.ValueRange.ofCelsius(-30, 135).holds(unit.toSi(middle));
            case OIL_TEMPERATURE ->
                ExpectedValues.ValueRange.ofCelsius(-30, 170).holds(unit.toSi(middle));
            default -> ExpectedValues.ValueRange.ofCelsius(-30, 1150).holds(unit.toSi(middle));
        };
    }

    private void sayAssumed(ColumnDraft draft, Unit unit) {
        switch (draft.role().quantity()) {
            case TORQUE, POWER, PRESSURE, VELOCITY, MASS_FLOW ->
                say(Finding.Severity.WARNING, FindingCode.COLUMN_UNIT_ASSUMED, draft, unit);
            case TIME, FRACTION -> say(Finding.Severity.NOTE, FindingCode.COLUMN_UNIT_ASSUMED, draft, unit);
            case TEMPERATURE ->
                say(
                        unit == Unit.CELSIUS ? Finding.Severity.NOTE : Finding.Severity.WARNING,
                        FindingCode.COLUMN_UNIT_ASSUMED,
                        draft,
                        unit);
            case SPEED -> {
                if (unit == Unit.KRPM) {
                    say(Finding.Severity.WARNING, FindingCode.COLUMN_UNIT_ASSUMED, draft, unit);
                }
            }
            default -> {
                // degrees, lambda, ratios and counts have one unit only
            }
        }
    }

    private void say(Finding.Severity severity, FindingCode code, ColumnDraft draft, Unit unit) {
        findings.add(new Finding(
                code,
                severity,
                List.of(
                        Detail.of("header", draft.header()),
                        Detail.of("channel", draft.role().id()),
                        Detail.of("unit", unit.symbol())),
                table.place(draft.header())));
    }

    private void sayUnknown(ColumnDraft draft) {
        findings.add(Finding.warning(
                FindingCode.COLUMN_UNIT_UNKNOWN,
                table.place(draft.header()),
                Detail.of("header", draft.header()),
                Detail.of("channel", draft.role().id())));
    }

    static List<Finding> doubts(ColumnTable table, List<ColumnDraft> drafts) {
        List<Finding> findings = new ArrayList<>();
        for (ColumnDraft draft : drafts) {
            ProbeColumn probe = table.probes().get(draft.index());
            if (draft.unit().isPresent() && probe.count() > 0) {
                doubt(table, draft, probe.median()).ifPresent(findings::add);
            }
        }
        return findings;
    }

    private static Optional<Finding> doubt(ColumnTable table, ColumnDraft draft, double written) {
        Unit named = draft.unit().orElseThrow();
        Optional<ExpectedValues.ValueRange> usual = ExpectedValues.usual(draft.role());
        if (usual.isEmpty() || usual.get().holds(named.toSi(written))) {
            return Optional.empty();
        }
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.quantity() == named.quantity())
                .filter(unit -> usual.get().holds(unit.toSi(written)))
                .findFirst()
                .map(likely -> Finding.warning(
                        FindingCode.COLUMN_UNIT_DOUBTFUL,
                        table.place(draft.header()),
                        Detail.of("header", draft.header()),
                        Detail.of("channel", draft.role().id()),
                        Detail.of("unit", named.symbol()),
                        Detail.of("likely_unit", likely.symbol()),
                        Detail.of("middle", written)));
    }
}
