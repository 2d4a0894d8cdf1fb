package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/** The checks that elements and parts of a blend share. */
final class Fractions {
    /** Figures rounded to two or three digits may miss 1 by this much. */
    static final double ROUNDING = 0.0051;

    private Fractions() {}

    static double sum(Map<String, Double> fractions) {
        return fractions.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Negative, non-finite and too many: what makes the fractions useless. */
    static List<Finding> errors(String blend, Map<String, Double> fractions, Place place) {
        List<Finding> findings = new ArrayList<>();
        fractions.forEach((part, fraction) -> {
            if (!(fraction >= 0) || !Double.isFinite(fraction)) {
                Detail value = Double.isFinite(fraction)
                        ? Detail.of("value", fraction)
                        : Detail.of("value", "no finite number");
                findings.add(Finding.error(
                        FindingCode.FUEL_FRACTION_NEGATIVE,
                        place,
                        Detail.of("name", blend),
                        Detail.of("part", part),
                        value));
            }
        });
        double sum = sum(fractions);
        if (findings.isEmpty() && sum > 1 + ROUNDING) {
            findings.add(Finding.error(
                    FindingCode.FUEL_FRACTIONS_OVER_ONE, place, Detail.of("name", blend), Detail.of("sum", sum)));
        }
        return findings;
    }
}
