package org.nextpull.session;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** The same under other numbers of the pulls. */
    Amendments renumbered(UnaryOperator<Integer> to) {
        return new Amendments(
                renumbered(struck, to),
                renumbered(lifted, to),
                renumbered(corrected, to),
                renumbered(assumed, to),
                ownWatch);
    }

    private static <T> Map<Integer, T> renumbered(Map<Integer, T> byPull, UnaryOperator<Integer> to) {
        return byPull.entrySet().stream()
                .collect(Collectors.toMap(entry -> to.apply(entry.getKey()), Map.Entry::getValue));
    }

    private static Set<Integer> renumbered(Set<Integer> pulls, UnaryOperator<Integer> to) {
        return pulls.stream().map(to).collect(Collectors.toSet());
    }

    /** These beside those of other pulls. */
    Amendments with(Amendments others) {
        Map<Integer, String> allStruck = new HashMap<>(struck);
        allStruck.putAll(others.struck);
        Map<Integer, AskedSetting> allCorrected = new HashMap<>(corrected);
        allCorrected.putAll(others.corrected);
        return new Amendments(
                allStruck, both(lifted, others.lifted), allCorrected, both(assumed, others.assumed), ownWatch);
    }

    private static Set<Integer> both(Set<Integer> one, Set<Integer> other) {
        return Stream.concat(one.stream(), other.stream()).collect(Collectors.toSet());
    }

    Optional<AskedSetting> correctionOf(int number) {
        return Optional.ofNullable(corrected.get(number));
    }
}
