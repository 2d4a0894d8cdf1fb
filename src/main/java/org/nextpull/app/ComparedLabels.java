package org.nextpull.app;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.nextpull.compare.ComparisonRequest;
import org.nextpull.finding.Outcome;
import org.nextpull.response.MeasuredPull;
import org.nextpull.session.CandidateDay;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.SessionResult;

/** The comparison of a day's labels, with the one that ran first as the reference unless another is named. */
public final class ComparedLabels {
    private ComparedLabels() {}

    /**
     * The labels of the pulls that are used, in the order in which they ran first.
     *
     * @param named label of each source that was named with one
     */
    public static List<String> labels(SessionResult result, Map<String, String> named) {
        return result.pulls().stream()
                .filter(MeasuredPull::isUsed)
                .flatMap(pull ->
                        Optional.ofNullable(named.get(pull.origin().source()))
                                .or(() -> pull.setting().label())
                                .stream())
                .distinct()
                .toList();
    }

    /** The comparison, where there are several labels or a reference is named; of a day of candidates what its decision runs tell. */
    static Optional<ComparedDay> ofSeveral(SessionResult result, Map<String, String> named, Optional<String> against) {
        if (result.candidates().isPresent() && against.isEmpty()) {
            CandidateDay day = result.candidates().get();
            return day.comparison().map(told -> new ComparedDay(result.orderFrom(), day.runs(), Outcome.of(told)));
        }
        return against.isPresent() || labels(result, named).size() > 1
                ? Optional.of(of(result, named, against))
                : Optional.empty();
    }

    /** The comparison, or why there is none. */
    public static ComparedDay of(SessionResult result, Map<String, String> named, Optional<String> against) {
        String reference =
                against.or(() -> labels(result, named).stream().findFirst()).orElse("");
        return ComparedDay.of(
                result,
                named,
                ComparisonRequest.once(reference, result.plan().goal().worthPercent()));
    }
}
