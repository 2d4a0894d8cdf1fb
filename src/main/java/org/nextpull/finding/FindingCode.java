package org.nextpull.finding;

import java.util.Locale;

/** Every finding that the tool can make. The handbook page "Findings" lists them; {@code report} has a sentence for each. */
public enum FindingCode {
    // files and plans
    FILE_NOT_FOUND,
    FILE_UNREADABLE,
    PLAN_SYNTAX,
    // columns and rows of logs
    FILE_EMPTY,
    // air and correction
    /**
     * The {quantity} of {value} lies outside the range of {standard}, {low} to {high}; the factor was computed all the same, so do not
     * compare this figure with one from other air.
     */
    AIR_OUTSIDE_STANDARD,
    /** There is no correction standard "{name}"; the nearest are {nearest}. */
    AIR_STANDARD_UNKNOWN,
    /** A barometer of {value} is not one of this earth's ({low} to {high}); check its unit. */
    AIR_BAROMETER_IMPLAUSIBLE,
    /** Inlet air of {value} is not one that an engine is run in ({low} to {high}); check its unit. */
    AIR_TEMPERATURE_IMPLAUSIBLE,
    /** A relative humidity of {humidity} is not possible; give it between 0 and 100 %. */
    AIR_HUMIDITY_OUT_OF_RANGE,
    /** A relative humidity of {humidity} is drier than any desert; give 60 for 60 %, not 0.6. */
    AIR_HUMIDITY_LOOKS_LIKE_FRACTION,
    /** The wet bulb of {wet_bulb} is above the dry bulb of {dry_bulb}; one of the two thermometers is wrong, or they were swapped. */
    AIR_WET_BULB_ABOVE_DRY_BULB,
    /** The wet bulb of {wet_bulb} is lower than the driest air of {dry_bulb} could make it; read both thermometers again. */
    AIR_WET_BULB_TOO_LOW,
    /** The dew point of {dew_point} is above the air temperature of {dry_bulb}; one of the two is wrong, or they were swapped. */
    AIR_DEW_POINT_ABOVE_DRY_BULB,
    /** The dew point of {dew_point} is below -100 degC, where no formula for vapour holds; give the humidity as 0 % instead. */
    AIR_DEW_POINT_TOO_LOW,
    // pulls
    PULL_CUT_SHORT;

    /** The code as JSON and the handbook write it: {@code file-not-found}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
