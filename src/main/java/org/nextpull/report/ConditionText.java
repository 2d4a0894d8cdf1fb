package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.Condition;
import org.nextpull.advice.PresentConditions;
import org.nextpull.plan.StartWindow;
import org.nextpull.plan.TemperatureWindow;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** The conditions before a pull: in the plan's window or not, and how far off. */
public final class ConditionText {
    private final Shown shown;

    public ConditionText(Shown shown) {
        this.shown = shown;
    }

    /** The conditions that the plan asks for or that are known, one line each. */
    public List<ConditionLine> lines(StartWindow wanted, PresentConditions now) {
        List<ConditionLine> lines = new ArrayList<>();
        line(Condition.COOLANT, now.coolant(), wanted.coolant()).ifPresent(lines::add);
        line(Condition.OIL, now.oil(), wanted.oil()).ifPresent(lines::add);
        line(Condition.INLET_AIR, now.inletAir(), wanted.inlet()).ifPresent(lines::add);
        line(Condition.EXHAUST, now.exhaust(), Optional.empty()).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    private Optional<ConditionLine> line(
            Condition condition, Optional<Temperature> now, Optional<TemperatureWindow> window) {
        if (now.isEmpty() && window.isEmpty()) {
            return Optional.empty();
        }
        ConditionLine.Place place = place(now, window);
        return Optional.of(new ConditionLine(
                AdviceText.name(condition),
                now.map(this::temperature).orElse("not known"),
                window.map(this::range).orElse("not asked for"),
                place,
                words(place, now, window)));
    }

    private static ConditionLine.Place place(Optional<Temperature> now, Optional<TemperatureWindow> window) {
        if (now.isEmpty()) {
            return ConditionLine.Place.UNKNOWN;
        } else if (window.isEmpty()) {
            return ConditionLine.Place.UNASKED;
        } else if (window.get().contains(now.get())) {
            return ConditionLine.Place.INSIDE;
        }
        return now.get().kelvins() < window.get().low().kelvins()
                ? ConditionLine.Place.BELOW
                : ConditionLine.Place.ABOVE;
    }

    private String words(ConditionLine.Place place, Optional<Temperature> now, Optional<TemperatureWindow> window) {
        return switch (place) {
            case INSIDE -> "in range";
            case UNASKED -> "";
            case UNKNOWN -> "not measured";
            case BELOW -> apart(now, window.map(TemperatureWindow::low)) + " too cold";
            case ABOVE -> apart(now, window.map(TemperatureWindow::high)) + " too hot";
        };
    }

    /** A difference, so that degrees Fahrenheit lose their offset. */
    private String apart(Optional<Temperature> now, Optional<Temperature> edge) {
        Unit unit = shown.unit(Quantity.TEMPERATURE);
        double difference = unit.fromSi(now.orElseThrow().kelvins())
                - unit.fromSi(edge.orElseThrow().kelvins());
        double size = Math.abs(difference);
        return Shown.fixed(size, size < 1 ? 1 : 0) + " " + unit.symbol();
    }

    private String temperature(Temperature value) {
        return shown.value(Quantity.TEMPERATURE, value.kelvins());
    }

    private String range(TemperatureWindow window) {
        return shown.number(Quantity.TEMPERATURE, window.low().kelvins()) + " to " + temperature(window.high());
    }
}
