package org.nextpull.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A value with its findings, or only the findings that say why there is none.
 *
 * @param <T> type of the value
 * @param value the value; empty when nothing could be made, and then at least one finding is an error
 * @param findings what was found on the way, in order
 */
public record Outcome<T>(Optional<T> value, List<Finding> findings) {
    /**
     * Accepts a value with any findings, and no value with an error among them.
     *
     * @throws IllegalArgumentException without a value and without an error
     */
    public Outcome {
        findings = List.copyOf(findings);
        if (value.isEmpty() && findings.stream().noneMatch(Finding::isError)) {
            throw new IllegalArgumentException("an outcome without a value must say why");
        }
    }

    public static <T> Outcome<T> of(T value, List<Finding> findings) {
        return new Outcome<>(Optional.of(value), findings);
    }

    public static <T> Outcome<T> of(T value) {
        return new Outcome<>(Optional.of(value), List.of());
    }

    public static <T> Outcome<T> failed(List<Finding> findings) {
        return new Outcome<>(Optional.empty(), findings);
    }

    public static <T> Outcome<T> failed(Finding finding) {
        return new Outcome<>(Optional.empty(), List.of(finding));
    }

    public boolean isFailed() {
        return value.isEmpty();
    }

    public <U> Outcome<U> map(Function<? super T, ? extends U> change) {
        return new Outcome<>(value.map(change), findings);
    }

    /** Goes on with the value, keeping the findings of both steps. */
    public <U> Outcome<U> then(Function<? super T, Outcome<U>> next) {
        if (value.isEmpty()) {
            return new Outcome<>(Optional.empty(), findings);
        }
        Outcome<U> result = next.apply(value.get());
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(result.findings);
        return new Outcome<>(result.value, all);
    }
}
