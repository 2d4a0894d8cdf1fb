package org.nextpull.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.advice.PresentConditions;
import org.nextpull.advice.WaitFor;
import org.nextpull.plan.StartConditions;
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
    public List<Line> lines(StartConditions wanted, PresentConditions now) {
        List<Line> lines = new ArrayList<>();
        line(WaitFor.Condition.COOLANT, now.coolant(), wanted.coolant()).ifPresent(lines::add);
        line(WaitFor.Condition.OIL, now.oil(), wanted.oil()).ifPresent(lines::add);
        line(WaitFor.Condition.INLET_AIR, now.inletAir(), wanted.inlet()).ifPresent(lines::add);
        line(WaitFor.Condition.EXHAUST, now.exhaust(), Optional.empty()).ifPresent(lines::add);
        return List.copyOf(lines);
    }

    private Optional<Line> line(
            WaitFor.Condition condition,
            Optional<Temperature> now,
            Optional<StartConditions.TemperatureWindow> window) {
        if (now.isEmpty() && window.isEmpty()) {
            return Optional.empty();
        }
        Line.Place place = place(now, window);
        return Optional.of(new Line(
                AdviceText.name(condition),
                now.map(this::temperature).orElse("not known"),
                window.map(this::range).orElse("not asked for"),
                place,
                words(place, now, window)));
    }

    private static Line.Place place(Optional<Temperature> now, Optional<StartConditions.TemperatureWindow> window) {
        if (now.isEmpty()) {
            return Line.Place.UNKNOWN;
        } else if (window.isEmpty()) {
            return Line.Place.UNASKED;
        } else if (window.get().contains(now.get())) {
            return Line.Place.INSIDE;
        }
        return now.get().kelvins() < window.get().low().kelvins() ? Line.Place.BELOW : Line.Place.ABOVE;
    }

    private String words(
            Line.Place place, Optional<Temperature> now, Optional<StartConditions.TemperatureWindow> window) {
        return switch (place) {
            case INSIDE -> "in range";
            case UNASKED -> "";
            case UNKNOWN -> "not measured";
            case BELOW -> apart(now, window.map(StartConditions.TemperatureWindow::low)) + " too cold";
            case ABOVE -> apart(now, window.map(StartConditions.TemperatureWindow::high)) + " too hot";
        };
    }

    /** A difference, so that degrees Fahrenheit lose their offset. */
    private String apart(Optional<Temperature> now, Optional<Temperature> edge) {
        Unit unit = shown.unit(Quantity.TEMPERATURE);
        double difference = unit.fromSi(now.orElseThrow().kelvins())
                - unit.fromSi(edge.orElseThrow().kelvins());
        double size = Math.abs(difference);
        return Shown.fixed(size, size < 1 ? 1 : 0) + " " + unit.sign();
    }

    private String temperature(Temperature value) {
        return shown.value(Quantity.TEMPERATURE, value.kelvins());
    }

    private String range(StartConditions.TemperatureWindow window) {
        return shown.number(Quantity.TEMPERATURE, window.low().kelvins()) + " to " + temperature(window.high());
    }

    /**
     * One start condition in words.
     *
     * @param name what is measured
     * @param value its present value with unit, or that it is not known
     * @param window what the plan asks for, or that it asks for nothing
     * @param place where the value lies
     * @param words in the window or how far off it is
     */
    public record Line(String name, String value, String window, Place place, String words) {
        /** Where a value lies. */
        public enum Place {
            INSIDE,
            BELOW,
            ABOVE,
            /** The plan asks for nothing. */
            UNASKED,
            /** There is no value. */
            UNKNOWN
        }
    }
}
