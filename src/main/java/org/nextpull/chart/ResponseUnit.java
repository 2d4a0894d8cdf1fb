package org.nextpull.chart;

import org.nextpull.plan.Goal;
import org.nextpull.unit.Unit;
import org.nextpull.unit.UnitSystem;

/** The unit and name of the fitted figure on an axis. */
final class ResponseUnit {
    private ResponseUnit() {}

    static Unit of(Goal.Response response, UnitSystem units) {
        return response == Goal.Response.TORQUE ? torque(units) : power(units);
    }

    static Unit torque(UnitSystem units) {
        return units == UnitSystem.US ? Unit.POUND_FOOT : Unit.NEWTON_METRE;
    }

    static Unit power(UnitSystem units) {
        return units == UnitSystem.US ? Unit.HORSEPOWER : Unit.KILOWATT;
    }

    static String title(Goal.Response response) {
        return response == Goal.Response.TORQUE ? "band-average torque" : "band-average power";
    }
}
