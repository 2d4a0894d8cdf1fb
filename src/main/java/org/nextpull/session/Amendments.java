package org.nextpull.session;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.nextpull.channel.AskedSetting;
import org.nextpull.plan.Limit;

/**
 * What the operator changed by hand; all by the number of the pull over the day.
 *
 * @param struck pulls that do not count, with the operator's reason
 * @param lifted pulls whose knock and limits no longer forbid anything
 * @param corrected settings that were run, as far as they differ from what was noted
 * @param assumed pulls whose setting nobody confirmed, so that what was proposed is taken
 * @param ownWatch limits that the operator said to watch alone where no channel does; all where nobody can be asked
 */
public record Amendments(
        Map<Integer, String> struck,
        Set<Integer> lifted,
        Map<Integer, AskedSetting> corrected,
        Set<Integer> assumed,
        Set<Limit> ownWatch) {
    public Amendments {
        struck = Map.copyOf(struck);
        lifted = Set.copyOf(lifted);
        corrected = Map.copyOf(corrected);
        assumed = Set.copyOf(assumed);
        ownWatch = Set.copyOf(ownWatch);
    }

    /** Amendments of a day that is over: no setting was assumed, and nobody can be asked who watches. */
    public Amendments(Map<Integer, String> struck, Set<Integer> lifted, Map<Integer, AskedSetting> corrected) {
        this(struck, lifted, corrected, Set.of(), Set.of(Limit.values()));
    }

    public static Amendments none() {
        return new Amendments(Map.of(), Set.of(), Map.of());
    }

    Optional<AskedSetting> correctionOf(int number) {
        return Optional.ofNullable(corrected.get(number));
    }
}
