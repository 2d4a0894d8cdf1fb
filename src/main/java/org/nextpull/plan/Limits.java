package org.nextpull.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Temperature;

/**
 * The limits that end a pull or a sweep, table {@code [limits]}. A limit that is absent is not watched.
 *
 * @param knockEvents events in one stretch under load that make it a knocking one; empty means that one is enough
 * @param knockLevel graded level, in the scale of the log, above which a row is one event; empty where the level says nothing
 * @param knockMarginDeg how far the knock limit stays below an advance at which knock was heard, in deg
 * @param looksAgain whether a knock flag that rang alone may be looked at again, up to the advance at which it rang
 * @param mostRpm highest engine speed in rpm
 * @param lean how lean at full load; empty when not limited
 * @param most highest temperatures
 * @param oilPressureLeast lowest oil pressure, as logged
 * @param fuelPressureLeast lowest fuel pressure, as logged
 * @param boostMost highest manifold pressure above the barometer
 * @param injectorDutyMost highest injector duty as a fraction
 */
public record Limits(
        OptionalInt knockEvents,
        OptionalDouble knockLevel,
        double knockMarginDeg,
        boolean looksAgain,
        OptionalDouble mostRpm,
        Optional<Lean> lean,
        Temperatures most,
        Optional<Pressure> oilPressureLeast,
        Optional<Pressure> fuelPressureLeast,
        Optional<Pressure> boostMost,
        OptionalDouble injectorDutyMost) {
    public static final double KNOCK_MARGIN_DEG = 2;

    public static Limits defaults() {
        return new Limits(
                OptionalInt.empty(),
                OptionalDouble.empty(),
                KNOCK_MARGIN_DEG,
                false,
                OptionalDouble.empty(),
                Optional.empty(),
                Temperatures.none(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** The limits that are set; knock only where a number of events or a level is named. */
    public List<Limit> set() {
        List<Limit> set = new ArrayList<>();
        if (knockEvents.isPresent() || knockLevel.isPresent()) {
            set.add(Limit.KNOCK);
        }
        lean.ifPresent(value -> set.add(Limit.LEAN));
        most.exhaust().ifPresent(value -> set.add(Limit.EXHAUST));
        most.coolant().ifPresent(value -> set.add(Limit.COOLANT));
        most.oil().ifPresent(value -> set.add(Limit.OIL));
        most.inlet().ifPresent(value -> set.add(Limit.INLET_AIR));
        oilPressureLeast.ifPresent(value -> set.add(Limit.OIL_PRESSURE));
        fuelPressureLeast.ifPresent(value -> set.add(Limit.FUEL_PRESSURE));
        boostMost.ifPresent(value -> set.add(Limit.BOOST));
        mostRpm.ifPresent(value -> set.add(Limit.SPEED));
        injectorDutyMost.ifPresent(value -> set.add(Limit.INJECTOR_DUTY));
        return set;
    }

    /** Events in one stretch under load that make a pull a knocking one: the plan's number, otherwise one. */
    public int knockEventsThatCount() {
        return knockEvents.orElse(1);
    }

    /**
     * How lean the leanest sensor may read at full load.
     *
     * @param leanest the leanest mixture allowed
     * @param forS how long it may be passed before it counts, in s
     */
    public record Lean(Lambda leanest, double forS) {
        public static final double FOR_S = 0.3;
    }

    /**
     * Highest temperatures allowed.
     *
     * @param exhaust of the exhaust gas, any sensor
     * @param coolant of the coolant
     * @param oil of the oil
     * @param inlet of the inlet air
     */
    public record Temperatures(
            Optional<Temperature> exhaust,
            Optional<Temperature> coolant,
            Optional<Temperature> oil,
            Optional<Temperature> inlet) {
        public static Temperatures none() {
            return new Temperatures(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        }
    }
}
