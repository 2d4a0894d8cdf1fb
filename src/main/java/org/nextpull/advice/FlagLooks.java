package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;

/**
 * What became of each knock flag. A flag that rang alone may be false; where the operator allows it, its speed is looked at again, first
 * a degree below it and then at it. Two clean looks strike it; a second flag near it confirms it for ever.
 */
final class FlagLooks {
    private static final double NEIGHBOUR_RPM = 500;
    private static final double REACHED_DEG = 0.25;
    private static final double FIRST_LOOK_BELOW_DEG = 1;
    private static final int LOOKS = 2;

    /** One flag as it stands now. */
    static final class Look {
        private final TriedPull pull;
        private final TriedPull.KnockFlag flag;
        private boolean isConfirmed;
        private int clean;

        private Look(TriedPull pull, TriedPull.KnockFlag flag, boolean isConfirmed) {
            this.pull = pull;
            this.flag = flag;
            this.isConfirmed = isConfirmed;
        }

        TriedPull pull() {
            return pull;
        }

        TriedPull.KnockFlag flag() {
            return flag;
        }

        boolean isStruck() {
            return !isConfirmed && clean >= LOOKS;
        }

        /** Whether a look would tell more. */
        boolean isOpen() {
            return !isConfirmed && clean < LOOKS && flag.rpm().isPresent();
        }

        /** Distance that is kept from it; none after the first clean look. */
        double marginDeg(double usual) {
            double kept = flag.isOfLevel() ? usual / 2 : usual;
            return isConfirmed || clean == 0 ? kept : 0;
        }

        /** How far the next look goes at its speed, degrees. */
        double lookDeg() {
            double rang = pull.spark().degAt(flag.rpm().orElseThrow());
            return clean == 0 ? rang - FIRST_LOOK_BELOW_DEG : rang;
        }
    }

    private final List<Look> inOrder = new ArrayList<>();

    FlagLooks(List<TriedPull> pulls, boolean looksAgain) {
        for (TriedPull pull : pulls) {
            for (Look earlier : inOrder) {
                if (earlier.isOpen()) {
                    count(earlier, pull);
                }
            }
            List<Look> before = List.copyOf(inOrder);
            for (TriedPull.KnockFlag flag : pull.flags()) {
                Look look = new Look(pull, flag, !looksAgain || flag.rpm().isEmpty());
                if (looksAgain) {
                    confirm(look, before);
                }
                inOrder.add(look);
            }
        }
    }

    private static void count(Look look, TriedPull later) {
        double rpm = look.flag.rpm().orElseThrow();
        boolean rang = later.flags().stream()
                .anyMatch(flag ->
                        flag.rpm().isEmpty() || Math.abs(flag.rpm().getAsDouble() - rpm) <= Exclusions.AROUND_RPM);
        boolean reached = later.reached().contains(rpm) && later.spark().degAt(rpm) >= look.lookDeg() - REACHED_DEG;
        if (!rang && reached && !later.metLimit()) {
            look.clean++;
        }
    }

    /** Confirms a flag that did not ring alone, and the earlier one that it rang beside. */
    private static void confirm(Look look, List<Look> before) {
        if (look.flag.rpm().isEmpty()) {
            return;
        }
        double rpm = look.flag.rpm().getAsDouble();
        for (TriedPull.KnockFlag other : look.pull.flags()) {
            if (!other.equals(look.flag)
                    && (other.rpm().isEmpty() || Math.abs(other.rpm().getAsDouble() - rpm) <= NEIGHBOUR_RPM)) {
                look.isConfirmed = true;
            }
        }
        for (Look earlier : before) {
            if (!earlier.isStruck()
                    && earlier.flag.rpm().isPresent()
                    && Math.abs(earlier.flag.rpm().getAsDouble() - rpm) <= Exclusions.AROUND_RPM) {
                earlier.isConfirmed = true;
                look.isConfirmed = true;
            }
        }
    }

    /** All flags that forbid something. */
    List<Look> standing() {
        return inOrder.stream().filter(look -> !look.isStruck()).toList();
    }

    /** The pull as it counts now, without flags that were struck. */
    TriedPull withoutStruck(TriedPull pull) {
        return pull.withFlags(inOrder.stream()
                .filter(look -> look.pull.equals(pull) && !look.isStruck())
                .map(Look::flag)
                .toList());
    }
}
