package org.nextpull.plan.text;

/**
 * What a number may be, in the unit of its key. Wide enough for any engine; it catches wrong units and slips of the hand.
 *
 * @param low lowest allowed
 * @param high highest allowed
 */
record Range(double low, double high) {
    static final Range FRACTION = new Range(0, 1);
    static final Range RPM = new Range(100, 30_000);
    static final Range ADVANCE_DEG = new Range(-60, 90);
    static final Range LAMBDA = new Range(0.3, 2.5);
    static final Range ANY_CELSIUS = new Range(-60, 300);

    /** As the handbook writes it. */
    String text() {
        return PlanValueText.number(low) + " to " + PlanValueText.number(high);
    }

    boolean holds(double value) {
        return value >= low && value <= high;
    }
}
