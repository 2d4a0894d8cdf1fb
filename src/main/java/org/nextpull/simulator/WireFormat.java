package org.nextpull.simulator;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.intake.MappedColumn;
import org.nextpull.intake.wire.SentenceFrame;
import org.nextpull.plan.WireFacts;
import org.nextpull.unit.Unit;

/**
 * How the rows of the model engine are written on a wire.
 *
 * @param lines how a line is made up
 * @param groups what each line carries: one group, or for sentences one for each address
 * @param sendsHeader whether a header line goes before
 */
record WireFormat(WireFacts.Lines lines, List<Group> groups, boolean sendsHeader) {
    private static final String END = "\r\n";

    /**
     * The values of one line.
     *
     * @param address of the sentence; blank for other lines
     * @param fields in order; empty where the reader has no use for the field
     */
    record Group(String address, List<Optional<Field>> fields) {
        Group {
            fields = List.copyOf(fields);
        }
    }

    WireFormat {
        groups = List.copyOf(groups);
    }

    /** What must be measured for it. */
    Set<Role> roles() {
        Set<Role> roles = new LinkedHashSet<>();
        for (Group group : groups) {
            group.fields().stream().flatMap(Optional::stream).forEach(field -> {
                roles.add(field.role());
                if (field.aboveAir()) {
                    roles.add(Role.BAROMETER);
                }
            });
        }
        return roles;
    }

    /** The header line, with its end; blank where none is sent. */
    String header() {
        return sendsHeader
                ? groups.get(0).fields().stream()
                                .map(field -> field.map(Field::name).orElse("-"))
                                .collect(Collectors.joining(","))
                        + END
                : "";
    }

    /** A row as the lines that are sent, each with its end. */
    String text(Samples samples, int row) {
        StringBuilder text = new StringBuilder();
        for (Group group : groups) {
            text.append(line(group, samples, row));
        }
        return text.toString();
    }

    private String line(Group group, Samples samples, int row) {
        List<String> cells = new ArrayList<>();
        for (Optional<Field> field : group.fields()) {
            String value = field.map(each -> each.text(samples, row)).orElse("");
            if (lines != WireFacts.Lines.PAIRS) {
                cells.add(value);
            } else if (!value.isEmpty()) {
                cells.add(field.orElseThrow().name() + "=" + value);
            }
        }
        return switch (lines) {
            case SEPARATED -> String.join(",", cells) + END;
            case PAIRS -> String.join(";", cells) + END;
            case SENTENCE -> SentenceFrame.of(group.address() + "," + String.join(",", cells));
        };
    }

    /**
     * One value of a line on a wire.
     *
     * @param name its name, where the line carries names
     * @param role what it shows
     * @param unit unit that it is written in
     * @param decimals digits behind the point
     * @param scale what a value of the project's unit is multiplied by: the scale of an air-fuel gauge, else 1
     * @param aboveAir whether it is a pressure above that of the air
     */
    record Field(String name, Role role, Unit unit, int decimals, double scale, boolean aboveAir) {
        private static final int MORE_DECIMALS = 2;
        private static final Channel AIR_PRESSURE = Channel.of(Role.BAROMETER);

        /** A value as the plain log has it. */
        static Field usual(Role role, String name, LogDialect dialect) {
            LogDialect.Column column = dialect.column(role);
            return new Field(name, role, column.unit(), column.decimals(), 1, false);
        }

        /** A value that a column of the plan asks for. */
        static Field asked(MappedColumn column) {
            Role role = column.channel().role();
            LogDialect.Column usual = LogDialect.PLAIN.column(role);
            Unit unit = column.unit().orElse(usual.unit());
            int decimals = unit == usual.unit() ? usual.decimals() : usual.decimals() + MORE_DECIMALS;
            boolean above = column.reading() == MappedColumn.Reading.ABOVE_AIR;
            return new Field(column.header(), role, unit, decimals, column.divisor(), above);
        }

        /** The value in a row as it is sent; empty where the row has none. */
        String text(Samples samples, int row) {
            OptionalDouble value = samples.find(Channel.of(role), row);
            OptionalDouble air = samples.find(AIR_PRESSURE, row);
            if (value.isEmpty() || (aboveAir && air.isEmpty())) {
                return "";
            }
            double si = value.getAsDouble() - (aboveAir ? air.getAsDouble() : 0);
            return new BigDecimal(unit.fromSi(si * scale))
                    .setScale(decimals, RoundingMode.HALF_EVEN)
                    .toPlainString();
        }
    }
}
