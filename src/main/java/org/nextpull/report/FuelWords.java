package org.nextpull.report;

import org.nextpull.fuel.Caution;
import org.nextpull.fuel.FuelProperty;

/** What the figures and cautions of fuels are called. */
public final class FuelWords {
    /** Stands over every list of cautions. */
    public static final String DEFER =
            "Common practice, no source: the maker's safety data sheet and local rules outrank every line here.";

    private FuelWords() {}

    /** A figure's name in a table. */
    public static String label(FuelProperty property) {
        return switch (property) {
            case DENSITY -> "density";
            case LOWER_HEATING_VALUE -> "lower heating value";
            case LATENT_HEAT -> "heat of evaporation";
            case RESEARCH_OCTANE -> "research octane";
            case MOTOR_OCTANE -> "motor octane";
            case PRINTED_AIR_FUEL_RATIO -> "air-fuel ratio in print";
            case BEST_POWER_LAMBDA -> "lambda of best power";
            case ALCOHOL_BY_VOLUME -> "alcohol by volume";
        };
    }

    /** A caution as one or two sentences. */
    public static String sentence(Caution caution) {
        return switch (caution) {
            case FLAMMABLE ->
                "Its vapour burns and gathers low down. No sparks, no hot parts, an extinguisher that fits it, good ventilation.";
            case INVISIBLE_FLAME ->
                "Its flame can be invisible in daylight. Look for heat shimmer, and treat any spill near heat as burning.";
            case POISONOUS ->
                "Poisonous when swallowed, breathed or through the skin, and can blind. Gloves, eye protection, never siphon by mouth.";
            case AROMATIC_VAPOUR ->
                "Aromatics and benzene harm by breath and skin over time. Avoid vapour and wash it off.";
            case LEAD ->
                "Holds lead: poisonous, ruins catalysts and oxygen sensors within hours so that lambda drifts, forbidden on most roads.";
            case CORROSIVE ->
                "Attacks aluminium, magnesium, zinc, terne plate and solder, more so with water in it. Drain and flush after the day.";
            case TAKES_UP_WATER -> "Draws water from the air. Keep drums closed, use no old stock, check its density.";
            case SEPARATES_WITH_WATER ->
                "With more than a little water it separates into petrol and a watery layer; the engine then runs lean or stops.";
            case ATTACKS_SEALS ->
                "Swells or hardens common rubbers, plastics and tank linings. Hoses, seals and pumps must be made for it.";
            case DILUTES_OIL ->
                "Much more of it is injected, and it washes the oil off the bores. Watch the oil level and change the oil early.";
            case HARD_COLD_START -> "Little of it evaporates when cold, so the engine starts badly.";
            case EXPLOSIVE ->
                "Can explode when shocked, heated, confined or contaminated. It brings its own oxygen: lean mixtures and advance break engines.";
        };
    }
}
