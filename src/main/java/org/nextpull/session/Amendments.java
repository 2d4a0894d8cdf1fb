package org.nextpull.session;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.nextpull.channel.AskedSetting;

/**
 * What the operator changed by hand; all by the number of the pull over the day.
 *
 * @param struck pulls that do not count, with the operator's reason
 * @param lifted pulls whose knock and limits no longer forbid anything
 * @param corrected settings that were run, as far as they differ from what was noted
 * @param assumed pulls whose setting nobody confirmed, so that what was proposed is taken
 */
public record Amendments(
        Map<Integer, String> struck, Set<Integer> lifted, Map<Integer, AskedSetting> corrected, Set<Integer> assumed) {
    public Amendments {
        struck = Map.copyOf(struck);
        lifted = Set.copyOf(lifted);
        corrected = Map.copyOf(corrected);
        assumed = Set.copyOf(assumed);
    }

    /** Amendments under which no setting was assumed. */
    public Amendments(Map<Integer, String> struck, Set<Integer> lifted, Map<Integer, AskedSetting> corrected) {
        this(struck, lifted, corrected, Set.of());
    }

    public static Amendments none() {
        return new Amendments(Map.of(), Set.of(), Map.of());
    }

    Optional<AskedSetting> correctionOf(int number) {
        return Optional.ofNullable(corrected.get(number));
    }
}
