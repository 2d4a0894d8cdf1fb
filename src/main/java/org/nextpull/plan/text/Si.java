package org.nextpull.plan.text;

import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;
import org.nextpull.unit.Unit;

/** Numbers of a plan as quantities in the project's units, and back. */
final class Si {
    private Si() {}

    static OptionalDouble of(Unit unit, OptionalDouble written) {
        return written.isPresent() ? OptionalDouble.of(unit.toSi(written.getAsDouble())) : written;
    }

    static Optional<Temperature> celsius(OptionalDouble written) {
        return written.stream().boxed().map(Temperature::ofCelsius).findFirst();
    }

    static Optional<Pressure> kilopascals(OptionalDouble written) {
        return written.stream().boxed().map(Pressure::ofKilopascals).findFirst();
    }

    static OptionalDouble kelvins(Optional<Temperature> temperature) {
        return temperature.stream().mapToDouble(Temperature::kelvins).findFirst();
    }

    static OptionalDouble pascals(Optional<Pressure> pressure) {
        return pressure.stream().mapToDouble(Pressure::pascals).findFirst();
    }
}
