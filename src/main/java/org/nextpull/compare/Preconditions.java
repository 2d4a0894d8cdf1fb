package org.nextpull.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Place;

/** Why pulls cannot be compared at all. */
final class Preconditions {
    private static final int LEAST_EACH = 2;

    private Preconditions() {}

    static List<Finding> of(List<ComparedPull> pulls, String reference) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        pulls.forEach(pull -> counts.merge(pull.label(), 1, Integer::sum));
        if (counts.isEmpty()) {
            return List.of(error(FindingCode.COMPARE_NO_LABEL));
        }
        if (!counts.containsKey(reference)) {
            return List.of(unknown(reference, counts.keySet()));
        }
        if (counts.size() == 1) {
            return List.of(error(FindingCode.COMPARE_ONE_LABEL, Detail.of("label", reference)));
        }
        List<Finding> findings = new ArrayList<>();
        counts.forEach((label, count) -> {
            if (count < LEAST_EACH) {
                findings.add(error(FindingCode.COMPARE_ONE_PULL, Detail.of("label", label)));
            }
        });
        return findings;
    }

    private static Finding unknown(String reference, Set<String> labels) {
        Detail label = Detail.of("label", reference);
        Detail known = Detail.of("known", String.join(", ", labels));
        return NearestNames.of(reference, labels).stream()
                .findFirst()
                .map(nearest ->
                        error(FindingCode.COMPARE_REFERENCE_MISSPELT, label, Detail.of("nearest", nearest), known))
                .orElseGet(() -> error(FindingCode.COMPARE_REFERENCE_UNKNOWN, label, known));
    }

    private static Finding error(FindingCode code, Detail... details) {
        return Finding.error(code, Place.nowhere(), details);
    }
}
