package org.nextpull.window.bench;

import java.util.Optional;

/**
 * What a place of the strip holds.
 *
 * @param number number of the pull
 * @param pull the pull; empty for the next one
 * @param setting setting of the next pull
 */
record StripCard(int number, Optional<PullCard> pull, String setting) {
    static StripCard of(PullCard card) {
        return new StripCard(card.number(), Optional.of(card), "");
    }

    static StripCard next(int number, String setting) {
        return new StripCard(number, Optional.empty(), setting);
    }

    boolean isNext() {
        return pull.isEmpty();
    }

    /** Read aloud for whoever does not see the strip. */
    @Override
    public String toString() {
        return pull.map(PullCard::spoken).orElse("Next pull: " + setting);
    }
}
