package org.nextpull.simulator;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.intake.MappedColumn;
import org.nextpull.unit.Unit;

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
record WireField(String name, Role role, Unit unit, int decimals, double scale, boolean aboveAir) {
    private static final int MORE_DECIMALS = 2;
    private static final Channel AIR_PRESSURE = Channel.of(Role.BAROMETER);

    /** A value as the plain log has it. */
    static WireField usual(Role role, String name, LogDialect dialect) {
        LogDialect.Column column = dialect.column(role);
        return new WireField(name, role, column.unit(), column.decimals(), 1, false);
    }

    /** A value that a column of the plan asks for. */
    static WireField asked(MappedColumn column) {
        Role role = column.channel().role();
        LogDialect.Column usual = LogDialect.PLAIN.column(role);
        Unit unit = column.unit().orElse(usual.unit());
        int decimals = unit == usual.unit() ? usual.decimals() : usual.decimals() + MORE_DECIMALS;
        boolean above = column.reading() == MappedColumn.Reading.ABOVE_AIR;
        return new WireField(column.header(), role, unit, decimals, column.divisor(), above);
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
