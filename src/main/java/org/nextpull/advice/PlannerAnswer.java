package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.fit.RowCaps;
import org.nextpull.fit.TorqueLeft;

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
 * @param decidedBy what decides each row of the peak map
 */
public record PlannerAnswer(
        EngineSetting peak,
        TorqueLeft leftAtPeak,
        EngineSetting least,
        TorqueLeft leftAtLeast,
        Optional<EngineSetting> leave,
        Optional<TorqueLeft> leftByLeave,
        RowCaps caps,
        List<ChosenBy> decidedBy) {
    public PlannerAnswer {
        decidedBy = List.copyOf(decidedBy);
    }
}
