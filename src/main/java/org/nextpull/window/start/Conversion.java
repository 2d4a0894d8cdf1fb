package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.report.Shown;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** What is typed in the units of a plan, in the units that people read; blank where the two are the same. */
final class Conversion {
    private final Shown shown;

    Conversion(Shown shown) {
        this.shown = shown;
    }

    String of(FormField field, String typed) {
        Optional<Quantity> quantity = quantity(field.unit());
        if (quantity.isEmpty() || typed.isBlank()) {
            return "";
        }
        Optional<Unit> written = Unit.parse(field.unit(), quantity.get());
        if (written.isEmpty() || written.get() == shown.unit(quantity.get())) {
            return "";
        }
        List<String> values = new ArrayList<>();
        for (String number : typed.split("\\s*(,|;|\\.\\.|\\bto\\b)\\s*", -1)) {
            if (!number.strip().matches("[+-]?\\d{1,9}(\\.\\d{0,9})?")) {
                return "";
            }
            values.add(shown.number(quantity.get(), written.get().toSi(Double.parseDouble(number.strip()))));
        }
        return String.join(" to ", values) + " " + shown.unit(quantity.get()).symbol();
    }

    private static Optional<Quantity> quantity(String unit) {
        return switch (unit) {
            case "°C" -> Optional.of(Quantity.TEMPERATURE);
            case "kPa" -> Optional.of(Quantity.PRESSURE);
            case "L" -> Optional.of(Quantity.VOLUME);
            case "m" -> Optional.of(Quantity.LENGTH);
            case "kg.m2" -> Optional.of(Quantity.INERTIA);
            default -> Optional.empty();
        };
    }
}
