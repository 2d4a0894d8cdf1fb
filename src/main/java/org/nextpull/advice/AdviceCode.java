package org.nextpull.advice;

import org.nextpull.finding.WrittenId;

/** Why the next step is what it is. The handbook page "Advice" lists them. */
public enum AdviceCode implements WrittenId {
    /** First pull of a configuration: the start setting of the plan. */
    BASELINE,
    /** Torque still rises with advance: go on by no more than the plan's step. */
    CLIMB_TIMING,
    /** A pull that tells most about where the best advance lies. */
    BRACKET_TIMING,
    /** A mixture richer than any that was run. */
    RICH_STEP,
    /** Torque still rises toward lean: go on by no more than the plan's step. */
    CLIMB_MIXTURE,
    /** A pull that tells most about where the best mixture lies. */
    BRACKET_MIXTURE,
    /** A spark and a mixture that together leave least in doubt. */
    EXPLORE,
    /** The speed of a knock flag that rang alone, once more, where the plan allows it. */
    LOOK_AGAIN,
    /** The setting that would stay in the engine, to prove it. */
    CONFIRM,
    /** Another candidate is fitted: change over, then flush. */
    CHANGE_OVER,
    /** A run of a candidate at its own best, to decide between them. */
    DECIDE,
    /** A start condition is out of its window. */
    OUT_OF_WINDOW,
    /** What guards the way to the next setting is not watched: mend the channel, or say that you watch it yourself. */
    NOT_WATCHED,
    /** The exhaust was too hot: lift, cool, go richer; more advanced where no mixture is swept and torque rises with advance. */
    COOL_EXHAUST,
    /** The mixture was too lean: go richer. */
    TOO_LEAN,
    /** Stop: what is left to gain is below what pulls can show. */
    SETTLED,
    /** Stop: more pulls would not tell more at this scatter. */
    SCATTER_LIMITED,
    /** Stop: knock limits the advance before the best torque. */
    KNOCK_LIMITED,
    /** Stop: the plan's limit was reached while torque still rose. */
    PLAN_LIMIT,
    /** Stop: a limit of the engine was met. */
    LIMIT_MET,
    /** Stop: the pulls that the plan allows are used up. */
    BUDGET,
    /** Stop: the decision runs between the candidates are done. */
    DECIDED;

    public boolean isStop() {
        return compareTo(SETTLED) >= 0;
    }
}
