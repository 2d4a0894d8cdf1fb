package org.nextpull.plan.text;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.finding.Detail;
import org.nextpull.finding.FindingCode;

/** Takes a value of a plan as a number; an integer is as good as a decimal. */
record NumberCheck(Problems problems, Range range) {

    OptionalDouble number(Spot spot, Object value) {
        if (!(value instanceof Long || value instanceof Double)) {
            problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", "a number"));
            return OptionalDouble.empty();
        }
        double number = ((Number) value).doubleValue();
        if (!Double.isFinite(number)) {
            problems.error(FindingCode.PLAN_NOT_FINITE, spot);
            return OptionalDouble.empty();
        }
        if (!range.holds(number)) {
            problems.error(
                    FindingCode.PLAN_OUT_OF_RANGE,
                    spot,
                    Detail.of("low", PlanValueText.number(range.low())),
                    Detail.of("high", PlanValueText.number(range.high())));
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number);
    }

    OptionalInt whole(Spot spot, Object value) {
        OptionalDouble number = number(spot, value);
        if (number.isEmpty()) {
            return OptionalInt.empty();
        }
        int whole = (int) number.getAsDouble();
        if (whole != number.getAsDouble()) {
            problems.error(FindingCode.PLAN_WRONG_TYPE, spot, Detail.of("want", "a whole number"));
            return OptionalInt.empty();
        }
        return OptionalInt.of(whole);
    }
}
