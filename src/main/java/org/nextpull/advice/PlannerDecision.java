package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.TorqueLeft;

/** What to do next: one more pull, or none. */
public sealed interface PlannerDecision {
    /** Where the day stands, whatever is done next. */
    Answer answer();

    /**
     * One more pull.
     *
     * @param setting what to set
     * @param purpose what for
     */
    record Pull(EngineSetting setting, Purpose purpose, Answer answer) implements PlannerDecision {}

    /**
     * No more pulls.
     *
     * @param reason why
     */
    record Stop(StopReason reason, Answer answer) implements PlannerDecision {}

    /** What the next pull is for. */
    public enum Purpose {
        /** The best is still out of reach: up by the largest step. */
        CLIMB,
        /** A point below the best, for the shape of the curve. */
        BRACKET_BELOW,
        /** A point a little above the best. */
        BRACKET_ABOVE,
        /** The same where knock, not the peak, decides everywhere: no further than its margin permits. */
        UP_TO_KNOCK,
        /** A mixture and spark that together teach most. */
        EXPLORE,
        /** A lone knock flag is looked at again. */
        LOOK_AGAIN,
        /** The map that would stay in the engine. */
        PROVE
    }

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

    /**
     * Where a day stands.
     *
     * @param peak setting of most torque that may be run next, the least of doubt in it
     * @param leftAtPeak what it leaves
     * @param least the least advance that is near enough to that at each speed
     * @param leftAtLeast what it leaves
     * @param leave what stays in the engine: a clean pull was run with it; empty where none yet will do
     * @param leftByLeave what that leaves, where there is one
     * @param caps most advance that knock and the plan leave each row
     * @param decidedBy what decides each row
     * @param pullsToLeast clean pulls until every cell may have the least advance that is near enough to the best: 1 where the next may
     */
    public record Answer(
            EngineSetting peak,
            TorqueLeft leftAtPeak,
            EngineSetting least,
            TorqueLeft leftAtLeast,
            Optional<EngineSetting> leave,
            Optional<TorqueLeft> leftByLeave,
            RowCaps caps,
            List<ChosenBy> decidedBy,
            int pullsToLeast) {
        public Answer {
            decidedBy = List.copyOf(decidedBy);
        }
    }
}
