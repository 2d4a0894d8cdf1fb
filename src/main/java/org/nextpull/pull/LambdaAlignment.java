package org.nextpull.pull;

/** How the lambda channels of a candidate were lined up with the others. */
public sealed interface LambdaAlignment {
    /** By how much lambda was moved towards the start, s; 0 where nothing was done. */
    double appliedS();

    /**
     * The delay that the rules gave.
     *
     * @param appliedS the delay, s, 0 to 5
     */
    record Given(double appliedS) implements LambdaAlignment {}

    /**
     * A delay read off the answer of lambda to the throttle edge.
     *
     * @param appliedS the delay, s
     * @param errorS its standard error, s
     */
    record Estimated(double appliedS, double errorS) implements LambdaAlignment {}

    /** Nothing was moved: there is no lambda, or nothing that a delay could be read from. */
    record NotApplied() implements LambdaAlignment {
        @Override
        public double appliedS() {
            return 0;
        }
    }
}
