package org.nextpull.fuel;

import org.nextpull.finding.WrittenId;

/**
 * What to beware of when handling a fuel, what is worst for people first. Common practice, no source: the maker's safety data sheet and local rules outrank every
 * sentence here.
 */
public enum Caution implements WrittenId {
    /** Can explode when shocked, heated, confined or contaminated; brings its own oxygen, so a lean mixture or advance breaks engines. */
    EXPLOSIVE(0.02),
    /** Its flame can be invisible in daylight; look for heat shimmer, and treat any spill near heat as burning. */
    INVISIBLE_FLAME(0.9),
    /** Poisonous when swallowed, breathed or through the skin, and can blind; gloves, eye protection, no siphoning by mouth. */
    POISONOUS(0),
    /** Contains lead compounds: poisonous, ruins catalysts and oxygen sensors within hours, forbidden on most roads. */
    LEAD(0),
    /** Vapour burns and gathers low down; no sparks, no hot parts, a fire extinguisher that fits the fuel, good ventilation. */
    FLAMMABLE(0),
    /** Aromatics and benzene harm by breath and skin over time; avoid vapour and wash it off. */
    AROMATIC_VAPOUR(0.01),
    /** With more than a little water it parts into a petrol layer and a watery alcohol layer; the engine then runs lean or stops. */
    SEPARATES_WITH_WATER(0),
    /** Attacks aluminium, magnesium, zinc, terne plate and solder, and worse with water in it; drain and flush after the day. */
    CORROSIVE(0.05),
    /** Swells or hardens common rubbers, plastics, tank linings and composites; hoses, seals and pumps must be made for it. */
    ATTACKS_SEALS(0.05),
    /** Runs rich and washes the oil off the bores; watch the oil level, change the oil early. */
    DILUTES_OIL(0.5),
    /** Draws water from the air; keep drums closed, do not use old stock, check density. */
    TAKES_UP_WATER(0.02),
    /** Poor starting when cold, as little of it evaporates. */
    HARD_COLD_START(0.7);

    private final double leastMassShare;

    Caution(double leastMassShare) {
        this.leastMassShare = leastMassShare;
    }

    /** Whether a blend with that mass share of a fuel still needs the fuel's caution. */
    boolean carriesOver(double massShare) {
        return massShare > 0 && massShare >= leastMassShare;
    }
}
