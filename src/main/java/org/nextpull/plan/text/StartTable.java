package org.nextpull.plan.text;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;
import org.nextpull.plan.StartWindow;
import org.nextpull.plan.TemperatureWindow;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Table {@code [start]}. */
final class StartTable {
    private StartTable() {}

    static StartWindow read(TableReader table) {
        return new StartWindow(
                window(table, "coolant_c"),
                window(table, "oil_c"),
                window(table, "inlet_c"),
                table.number("cool_down_s", new Range(0, 86_400)));
    }

    private static Optional<TemperatureWindow> window(TableReader table, String key) {
        Optional<List<Double>> pair = table.pair(key, Range.ANY_CELSIUS);
        if (pair.isEmpty()) {
            return Optional.empty();
        }
        double low = pair.get().get(0);
        double high = pair.get().get(1);
        if (low > high) {
            table.problems()
                    .error(
                            FindingCode.PLAN_WINDOW_REVERSED,
                            table.spot(key),
                            Detail.of("low", Shown.number(low)),
                            Detail.of("high", Shown.number(high)));
            return Optional.empty();
        }
        return Optional.of(new TemperatureWindow(Temperature.ofCelsius(low), Temperature.ofCelsius(high)));
    }

    static String write(StartWindow start) {
        TableWriter table = new TableWriter("[start]");
        write(table, "coolant_c", start.coolant());
        write(table, "oil_c", start.oil());
        write(table, "inlet_c", start.inlet());
        table.number("cool_down_s", start.coolDownS());
        return table.written();
    }

    private static void write(TableWriter table, String key, Optional<TemperatureWindow> window) {
        window.ifPresent(
                present -> table.raw(key, "[" + celsius(present.low()) + ", " + celsius(present.high()) + "]"));
    }

    private static String celsius(Temperature temperature) {
        OptionalDouble kelvins = OptionalDouble.of(temperature.kelvins());
        return Shown.number(Decimal.of(Unit.CELSIUS, kelvins.getAsDouble()));
    }
}
