package org.nextpull.math.regression;

import java.util.Optional;
import java.util.function.Function;

/**
 * A fit, or the reason why the data cannot carry one.
 *
 * @param <T> type of the fit
 */
public sealed interface FitResult<T> {
    /** The fit. */
    record Fitted<T>(T fit) implements FitResult<T> {
        @Override
        public Optional<T> found() {
            return Optional.of(fit);
        }

        @Override
        public <U> FitResult<U> map(Function<? super T, ? extends U> change) {
            return new Fitted<>(change.apply(fit));
        }

        @Override
        public T orElseThrow() {
            return fit;
        }
    }

    /** No fit, and why. */
    record Refused<T>(Refusal why) implements FitResult<T> {
        @Override
        public Optional<T> found() {
            return Optional.empty();
        }

        @Override
        public <U> FitResult<U> map(Function<? super T, ? extends U> change) {
            return new Refused<>(why);
        }

        @Override
        public T orElseThrow() {
            throw new IllegalStateException("no fit: " + why);
        }
    }

    /** The fit, if there is one. */
    Optional<T> found();

    <U> FitResult<U> map(Function<? super T, ? extends U> change);

    /** The fit, where the caller has made sure that there is one. */
    T orElseThrow();

    /** Why there is no fit. */
    public enum Refusal {
        /** Fewer readings than coefficients. */
        TOO_FEW_READINGS,
        /** As many readings as coefficients: the curve goes through all of them and says nothing of the scatter. */
        NO_DEGREES_OF_FREEDOM,
        /** A column holds one value only, or a polynomial has fewer distinct places than coefficients. */
        TOO_FEW_LEVELS,
        /** Columns can be made of one another, so that their coefficients cannot be told apart. */
        COLUMNS_DEPEND
    }
}
