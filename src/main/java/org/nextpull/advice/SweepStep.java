package org.nextpull.advice;

/** What the planner of one sweep does next. Settings are in the factor's own unit: degrees, or lambda. */
public sealed interface SweepStep {
    /** The best setting that is known and allowed now, rounded toward retard or rich. */
    double best();

    /**
     * Run a pull.
     *
     * @param best the best setting known now
     * @param setting where to pull
     * @param why what it is for
     */
    record Pull(double best, double setting, Purpose why) implements SweepStep {
        boolean isRepeat() {
            return why == Purpose.REPEAT || why == Purpose.DOUBT;
        }
    }

    /**
     * Nothing more to do in this sweep.
     *
     * @param best the setting to leave
     * @param because why it ends
     */
    record End(double best, AdviceCode because) implements SweepStep {}

    /** What a pull is for. */
    enum Purpose {
        /** The best lies beyond the most daring clean setting. */
        CLIMB,
        /** To learn where the peak lies. */
        BRACKET,
        /** A setting again, since it tells more than a new one. */
        REPEAT,
        /** A setting again, since one pull alone carries the verdict. */
        DOUBT
    }
}
