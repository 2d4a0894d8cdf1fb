package org.nextpull.intake;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.nextpull.channel.Role;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/**
 * What columns that were not understood may be: channels that a log should have and this one seems to lack, each with the columns
 * that come nearest by name, unit, size of the values and behaviour under load. Common practice, no source.
 */
record ColumnProposals(ColumnTable table, HeaderReader reader, List<MappedColumn> mapped) {
    private static final List<Role> WANTED = List.of(
            Role.TIME,
            Role.ENGINE_SPEED,
            Role.TORQUE,
            Role.ADVANCE,
            Role.LAMBDA,
            Role.THROTTLE,
            Role.KNOCK_EVENTS,
            Role.EXHAUST_TEMPERATURE,
            Role.COOLANT_TEMPERATURE,
            Role.OIL_TEMPERATURE,
            Role.INLET_AIR_TEMPERATURE,
            Role.BAROMETER,
            Role.OIL_PRESSURE,
            Role.FUEL_PRESSURE,
            Role.MANIFOLD_PRESSURE);
    /** From this correlation on a column goes with the load. */
    private static final double WITH_LOAD = 0.6;
    /** Points from which a column is worth a word; the name alone is, the size of the values alone is not. */
    private static final int LEAST_POINTS = 3;

    /** Channels whose values have a size or a course of their own, which hardly another channel of a log has. */
    private static final Set<Role> OWN_SIZE = Set.of(Role.TIME, Role.ENGINE_SPEED, Role.LAMBDA, Role.KNOCK_EVENTS);

    private static final int MOST = 2;

    private record Proposal(Role role, int index, int points, double withLoad, String because) {}

    /** A note for each column that may be what is missing, nearest first within a channel. */
    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        Set<Integer> free = IntStream.range(0, table.headers().size())
                .filter(this::isFree)
                .boxed()
                .collect(Collectors.toCollection(TreeSet::new));
        for (Role role : WANTED) {
            if (!isCovered(role)) {
                free.stream()
                        .flatMap(index -> proposal(role, index).stream())
                        .sorted(Comparator.comparingInt((Proposal each) -> -each.points())
                                .thenComparingDouble(each -> -each.withLoad()))
                        .limit(MOST)
                        .toList()
                        .forEach(each -> {
                            free.remove(each.index());
                            findings.add(finding(each));
                        });
            }
        }
        return findings;
    }

    private boolean isCovered(Role role) {
        return switch (role) {
            case TORQUE -> has(Role.TORQUE) || has(Role.POWER);
            case LAMBDA -> has(Role.LAMBDA) || has(Role.AIR_FUEL_RATIO);
            case KNOCK_EVENTS -> has(Role.KNOCK_EVENTS) || has(Role.KNOCK_LEVEL);
            default -> has(role);
        };
    }

    /** Beside a roller its values alone do not make a column the engine's speed. */
    private int leastPoints(Role role) {
        boolean roller = has(Role.ROLLER_SPEED) || has(Role.ROAD_SPEED);
        return role == Role.ENGINE_SPEED && roller ? LEAST_POINTS + 1 : LEAST_POINTS;
    }

    private boolean has(Role role) {
        return mapped.stream().anyMatch(column -> column.channel().role() == role);
    }

    private boolean isFree(int index) {
        String header = table.headers().get(index);
        HeaderReader.HeaderName name = reader.read(header, table.rowUnit(index));
        return mapped.stream().noneMatch(column -> column.index() == index)
                && !header.isBlank()
                && table.probes().get(index).isNumeric()
                && name.meanings().isEmpty()
                && name.standing().compareTo(NameStanding.PEAK) < 0;
    }

    private Optional<Proposal> proposal(Role role, int index) {
        String header = table.headers().get(index);
        ProbeColumn probe = table.probes().get(index);
        if (!looksLike(role, probe)) {
            return Optional.empty();
        }
        List<String> because = new ArrayList<>();
        int points = 0;
        if (reader.speaksOf(header, role)) {
            points += 2;
            because.add("name");
        }
        Quantity quantity = role.quantity();
        Optional<Unit> unit =
                quantity == Quantity.COUNT ? Optional.empty() : reader.unitIn(header, table.rowUnit(index), quantity);
        if (unit.isPresent()) {
            points += 2;
            because.add("unit");
        }
        if ((unit.isPresent() && !isUsual(role, unit.get().toSi(probe.median())))
                || (role != Role.TIME && reader.speaksOfOther(header, role))
                || reader.hasUnitOfOther(header, table.rowUnit(index), quantity)) {
            return Optional.empty();
        }
        points += OWN_SIZE.contains(role) ? 3 : 1;
        because.add("values");
        double withLoad = withLoad(role, probe);
        if (withLoad > WITH_LOAD) {
            points += 2;
            because.add("rise with the load");
        }
        return points >= leastPoints(role)
                ? Optional.of(new Proposal(role, index, points, withLoad, String.join(" and ", because)))
                : Optional.empty();
    }

    private static boolean isUsual(Role role, double middle) {
        return ExpectedValues.usual(role).map(usual -> usual.holds(middle)).orElse(true);
    }

    /** Whether values as written have the size of that channel in one of the units that people use for it. */
    private static boolean looksLike(Role role, ProbeColumn probe) {
        double middle = probe.median();
        double most = probe.quantile(0.95);
        boolean moves = most > probe.quantile(0.05);
        return switch (role) {
            case TIME -> probe.runs() && !(probe.isWhole() && probe.medianStep() == 1);
            case ENGINE_SPEED -> most > 1_500 && most < 20_000 && probe.least() >= 0 && most > 1.5 * probe.least();
            case TORQUE -> moves && most > 5 && most < 3_000;
            case ADVANCE -> moves && most < 60 && most > 5 && probe.least() > -30;
            case LAMBDA -> moves && probe.least() > 0.5 && most < 2 && middle < 1.4;
            case THROTTLE ->
                moves && probe.least() > -5 && ((most > 0.6 && most <= 1.05) || (most > 60 && most <= 105));
            case KNOCK_EVENTS -> probe.isWhole() && probe.least() >= 0 && middle == 0 && probe.greatest() > 0;
            case EXHAUST_TEMPERATURE -> middle > 150 && most < 2_200;
            case COOLANT_TEMPERATURE -> middle > 50 && middle < 250;
            case OIL_TEMPERATURE -> middle > 40 && middle < 300;
            case INLET_AIR_TEMPERATURE -> middle > 0 && middle < 140;
            case BAROMETER -> middle > 0.7 && most - probe.least() < 0.02 * most;
            default -> middle > 0;
        };
    }

    /** How far a column goes with what is known of the load, as torque and the throttle do; 0 for other channels. */
    private double withLoad(Role role, ProbeColumn probe) {
        List<Role> signs = switch (role) {
            case TORQUE -> List.of(Role.THROTTLE, Role.MANIFOLD_PRESSURE);
            case THROTTLE -> List.of(Role.TORQUE, Role.POWER);
            default -> List.of();
        };
        return mapped.stream()
                .filter(column -> signs.contains(column.channel().role()))
                .mapToDouble(column -> probe.correlation(table.probes().get(column.index())))
                .max()
                .orElse(0);
    }

    private Finding finding(Proposal proposal) {
        String header = table.headers().get(proposal.index()).strip();
        return Finding.note(
                FindingCode.COLUMN_MAY_BE,
                table.place(header),
                Detail.of("header", header),
                Detail.of("channel", proposal.role().id()),
                Detail.of("because", proposal.because()));
    }
}
