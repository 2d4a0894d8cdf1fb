package org.nextpull.chart;

/**
 * A setting that a line marks, beside the data.
 *
 * @param kind what it is
 * @param x the setting, in the unit of the axis
 */
public record ReferenceLine(Kind kind, double x) {
    /** What a line marks. */
    public enum Kind {
        KNOCK_LIMIT("knock, less the margin"),
        PLAN_LIMIT("plan's limit"),
        LEAN_EDGE("LBT"),
        RICH_EDGE("RBT"),
        NEXT("next pull");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As the legend says it. */
        public String words() {
            return words;
        }
    }
}
