package org.nextpull.window.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.report.Shown;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;

/** What is typed in the units of a plan, in the units that people read; blank where the two are the same. */
final class Conversion {
    private final Shown shown;

    Conversion(Shown shown) {
        this.shown = shown;
    }

    String of(PlanKey<?> field, String typed) {
        Optional<Unit> written = field.unit();
        Quantity quantity = written.map(Unit::quantity).orElse(Quantity.COUNT);
        if (written.isEmpty() || typed.isBlank() || written.get() == shown.unit(quantity)) {
            return "";
        }
        List<String> values = new ArrayList<>();
        for (String number : typed.split("\\s*(,|;|\\.\\.|\\bto\\b)\\s*", -1)) {
            if (!number.strip().matches("[+-]?\\d{1,9}(\\.\\d{0,9})?")) {
                return "";
            }
            values.add(shown.number(quantity, written.get().toSi(Double.parseDouble(number.strip()))));
        }
        return String.join(" to ", values) + " " + shown.unit(quantity).sign();
    }
}
