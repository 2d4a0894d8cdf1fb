package org.nextpull.plan.text;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.nextpull.unit.Unit;

/** The number that a person wrote, found again from its value in the project's unit. */
final class Decimal {
    private static final int MOST_DIGITS = 17;

    private Decimal() {}

    /** The shortest decimal that, read in {@code unit}, gives {@code si} again. */
    static double of(Unit unit, double si) {
        double plain = unit.fromSi(si);
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            double candidate = new BigDecimal(plain)
                    .round(new MathContext(digits, RoundingMode.HALF_EVEN))
                    .doubleValue();
            if (unit.toSi(candidate) == si) {
                return candidate;
            }
        }
        return neighbour(unit, plain, si);
    }

    /** Where the conversion rounds both ways, the value may lie one step aside. */
    private static double neighbour(Unit unit, double plain, double si) {
        if (unit.toSi(Math.nextUp(plain)) == si) {
            return Math.nextUp(plain);
        }
        return unit.toSi(Math.nextDown(plain)) == si ? Math.nextDown(plain) : plain;
    }
}
