package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.fit.Belief;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Span;

/** Judges one sweep, without knowing which stage of the day it belongs to. */
interface SweepJudge {

    /** Where the sweep stands and what its planner does next. */
    SweepState judge(Question question);

    /**
     * One sweep.
     *
     * @param axis the factor that it varies
     * @param pulls the pulls that count, at least one clean one, in order
     * @param reach settings that the next pull may have, in the factor's unit
     * @param ceiling highest setting that may be left in the engine: the plan's limit, or what knock leaves
     * @param mostDaring most daring clean setting that was run
     * @param knockAt settings at which knock was heard and not lifted
     * @param peak where the peak is believed to lie from an earlier sweep of the same engine
     */
    record Question(
            Axis axis,
            List<MeasuredPull> pulls,
            Span reach,
            double ceiling,
            double mostDaring,
            List<Double> knockAt,
            Optional<Belief> peak) {
        public Question {
            pulls = List.copyOf(pulls);
            knockAt = List.copyOf(knockAt);
        }
    }
}
