package org.nextpull.air;

/** Constants of moist air (ASHRAE Handbook, Fundamentals 2017, chapter 1). */
final class MoistAir {
    /** Gas constant of dry air in J/(kg.K), equation 1. */
    static final double DRY_AIR_GAS_CONSTANT = 287.042;

    /** Molar mass of water over that of dry air, equation 20. */
    static final double MASS_RATIO = 0.621945;

    /** Gas constant of water vapour in J/(kg.K). */
    static final double VAPOUR_GAS_CONSTANT = DRY_AIR_GAS_CONSTANT / MASS_RATIO;

    private MoistAir() {}
}
