package org.nextpull.advice;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.nextpull.response.Figures;
import org.nextpull.response.MeasuredPull;

/** Whether the pulls of a day show that its spark differs from speed to speed. Pulls that were looked at are not looked at again; grows. */
final class MapShown {
    private int looked;
    private OptionalInt shownBy = OptionalInt.empty();
    private OptionalDouble heldRpm = OptionalDouble.empty();

    /** Whether these pulls show it; of a day that others of its states were asked of before. */
    boolean by(List<MeasuredPull> pulls) {
        while (looked < pulls.size() && shownBy.isEmpty()) {
            MeasuredPull pull = pulls.get(looked);
            looked++;
            if (pull.isUsed() && (Ignition.isMapped(pull) || isHeldAtAnotherSpeed(pull))) {
                shownBy = OptionalInt.of(looked);
            }
        }
        return shownBy.isPresent() && shownBy.getAsInt() <= pulls.size();
    }

    /** Spark that was stepped at several held speeds was set speed by speed. */
    private boolean isHeldAtAnotherSpeed(MeasuredPull pull) {
        if (!pull.isHeld()) {
            return false;
        }
        for (Figures.AtSpeed row : pull.figures().orElseThrow().rows()) {
            if (heldRpm.orElse(row.rpm()) != row.rpm()) {
                return true;
            }
            heldRpm = OptionalDouble.of(row.rpm());
        }
        return false;
    }
}
