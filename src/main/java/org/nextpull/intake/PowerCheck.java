package org.nextpull.intake;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;
import org.nextpull.unit.Unit;

/** Torque, speed and power of one shaft must agree, P = T w: tells the units of two of them, or that one is named wrongly. */
record PowerCheck(ColumnTable table) {
    private static final double LEAST_RPM = 800;
    private static final int LEAST_ROWS = 5;
    /** Rounded torques and powers agree to about this. */
    private static final double NEAR = 0.006;
    /** Units that stand together, the likeliest pair first. */
    private static final List<Map.Entry<Unit, Unit>> PAIRS = List.of(
            Map.entry(Unit.NEWTON_METRE, Unit.KILOWATT),
            Map.entry(Unit.POUND_FOOT, Unit.HORSEPOWER),
            Map.entry(Unit.NEWTON_METRE, Unit.METRIC_HORSEPOWER),
            Map.entry(Unit.NEWTON_METRE, Unit.HORSEPOWER),
            Map.entry(Unit.KILOGRAM_METRE, Unit.METRIC_HORSEPOWER),
            Map.entry(Unit.POUND_FOOT, Unit.KILOWATT),
            Map.entry(Unit.POUND_FOOT, Unit.METRIC_HORSEPOWER),
            Map.entry(Unit.KILOGRAM_METRE, Unit.KILOWATT));

    /** Units of torque and power where at least one of the two has none and only one pair of units makes them agree. */
    Map<Role, Unit> units(List<ColumnDraft> drafts) {
        Optional<ColumnDraft> torque = find(drafts, Role.TORQUE);
        Optional<ColumnDraft> power = find(drafts, Role.POWER);
        Map<Role, Unit> result = new EnumMap<>(Role.class);
        if (torque.isEmpty() || power.isEmpty() || bothKnown(torque.get(), power.get())) {
            return result;
        }
        OptionalDouble ratio = writtenRatio(drafts);
        PAIRS.stream()
                .filter(pair -> fits(torque.get(), pair.getKey()) && fits(power.get(), pair.getValue()))
                .filter(pair -> ratio.isPresent() && isNear(ratio.getAsDouble(), pair))
                .findFirst()
                .ifPresent(pair -> {
                    result.put(Role.TORQUE, pair.getKey());
                    result.put(Role.POWER, pair.getValue());
                });
        return result;
    }

    /** A finding when torque and power, in the units that their headers name, are apart by just another pair of units. */
    Optional<Finding> check(List<ColumnDraft> complete) {
        Optional<ColumnDraft> torque = find(complete, Role.TORQUE);
        Optional<ColumnDraft> power = find(complete, Role.POWER);
        OptionalDouble ratio = writtenRatio(complete);
        if (torque.isEmpty() || power.isEmpty() || ratio.isEmpty()) {
            return Optional.empty();
        }
        Map.Entry<Unit, Unit> named = Map.entry(
                torque.get().unit().orElse(Unit.NEWTON_METRE),
                power.get().unit().orElse(Unit.KILOWATT));
        if (isNear(ratio.getAsDouble(), named)) {
            return Optional.empty();
        }
        return PAIRS.stream()
                .filter(pair -> isNear(ratio.getAsDouble(), pair))
                .findFirst()
                .map(pair -> Finding.warning(
                        FindingCode.TORQUE_AND_POWER_DISAGREE,
                        table.place(torque.get().header()),
                        Detail.of("torque_header", torque.get().header()),
                        Detail.of("power_header", power.get().header()),
                        Detail.of("torque_unit", pair.getKey().symbol()),
                        Detail.of("power_unit", pair.getValue().symbol())));
    }

    private static boolean bothKnown(ColumnDraft torque, ColumnDraft power) {
        return torque.unit().isPresent() && power.unit().isPresent();
    }

    private static boolean fits(ColumnDraft draft, Unit unit) {
        return draft.unit().isEmpty() || draft.unit().get() == unit;
    }

    private static Optional<ColumnDraft> find(List<ColumnDraft> drafts, Role role) {
        return drafts.stream().filter(draft -> draft.role() == role).findFirst();
    }

    private static boolean isNear(double ratio, Map.Entry<Unit, Unit> pair) {
        double oneRpm = Torque.ofNewtonMetres(pair.getKey().toSi(1)).at(1).watts();
        double expected = pair.getValue().fromSi(Power.ofWatts(oneRpm).watts());
        return Math.abs(ratio / expected - 1) < NEAR;
    }

    /** Median of power over torque times speed, all as written; empty where too few rows have all three. */
    private OptionalDouble writtenRatio(List<ColumnDraft> drafts) {
        Optional<ColumnDraft> speed = find(drafts, Role.ENGINE_SPEED);
        Optional<ColumnDraft> torque = find(drafts, Role.TORQUE);
        Optional<ColumnDraft> power = find(drafts, Role.POWER);
        if (speed.isEmpty() || torque.isEmpty() || power.isEmpty()) {
            return OptionalDouble.empty();
        }
        Unit speedUnit = speed.get().unit().orElse(Unit.RPM);
        ProbeColumn n = table.probes().get(speed.get().index());
        ProbeColumn t = table.probes().get(torque.get().index());
        ProbeColumn p = table.probes().get(power.get().index());
        if (n.count() != t.count() || n.count() != p.count() || n.count() == 0) {
            return OptionalDouble.empty();
        }
        double mostTorque = t.greatest();
        double[] ratios = new double[n.count()];
        int count = 0;
        for (int row = 0; row < ratios.length; row++) {
            double rpm = speedUnit.toSi(n.inOrder(row));
            if (rpm >= LEAST_RPM && t.inOrder(row) > mostTorque / 2 && p.inOrder(row) > 0) {
                ratios[count++] = p.inOrder(row) / (t.inOrder(row) * rpm);
            }
        }
        Arrays.sort(ratios, 0, count);
        return count < LEAST_ROWS ? OptionalDouble.empty() : OptionalDouble.of(ratios[count / 2]);
    }
}
