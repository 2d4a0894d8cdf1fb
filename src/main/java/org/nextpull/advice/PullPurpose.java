package org.nextpull.advice;

/** What the next pull is for. */
public enum PullPurpose {
    /** The best is still out of reach: up by the largest step. */
    CLIMB,
    /** A point below the best, for the shape of the curve. */
    BRACKET_BELOW,
    /** A point a little above the best. */
    BRACKET_ABOVE,
    /** A mixture and spark that together teach most. */
    EXPLORE,
    /** A lone knock flag is looked at again. */
    LOOK_AGAIN,
    /** The map that would stay in the engine. */
    PROVE
}
