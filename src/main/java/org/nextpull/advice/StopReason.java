package org.nextpull.advice;

/** Why a day of a map ends. */
public enum StopReason {
    /** What is left is little, and more is unlikely. */
    SETTLED,
    /** A further pull would gain next to nothing: the scatter hides what is left. */
    SCATTER_LIMITED,
    /** A further pull would gain next to nothing: knock stands in the way. */
    KNOCK_LIMITED,
    /** A further pull would gain next to nothing: a limit of the plan stands in the way. */
    PLAN_LIMITED,
    /** The plan allows no more pulls. */
    BUDGET,
    /** What knock forbids leaves nothing that the plan allows. */
    NO_ROOM
}
