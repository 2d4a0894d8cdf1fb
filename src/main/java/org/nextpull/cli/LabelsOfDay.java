package org.nextpull.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.compare.Looks;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;

/** The comparison of a day's labels where there are several, with the one that ran first as the reference unless another is named. */
final class LabelsOfDay {
    /** Any fixed number will do: the draws for bands must be the same each time. */
    static final long SEED = 20_260_101;

    private LabelsOfDay() {}

    static Optional<ComparedDay> compared(
            SessionInput input, SessionResult result, Map<String, String> labels, Optional<String> against) {
        List<String> ran = result.pulls().stream()
                .filter(MeasuredPull::isUsed)
                .flatMap(pull ->
                        Optional.ofNullable(labels.get(pull.origin().source()))
                                .or(() -> pull.setting().label())
                                .stream())
                .distinct()
                .toList();
        boolean isWanted = against.isPresent() || ran.size() > 1;
        return isWanted
                ? Optional.of(ComparedDay.of(
                        input,
                        result,
                        labels,
                        new ComparisonRequest(
                                against.orElseGet(() -> ran.get(0)),
                                result.plan().goal().worthPercent(),
                                new Looks.Open(0),
                                SEED)))
                : Optional.empty();
    }
}
