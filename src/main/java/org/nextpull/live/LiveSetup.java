package org.nextpull.live;

import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.nextpull.fit.Experience;
import org.nextpull.intake.serial.Port;
import org.nextpull.plan.SweepPlan;

/**
 * What a session is started with.
 *
 * @param plan the sweep plan
 * @param intake what it reads from
 * @param claim on the folder of this session, one that holds captures is gone on with; the session gives it back when it has ended
 * @param experience what earlier days taught
 * @param keeper the notebook
 * @param opener opens ports
 * @param clock where the time comes from
 */
public record LiveSetup(
        SweepPlan plan,
        LiveIntake intake,
        SessionFolders.Claim claim,
        Optional<Experience> experience,
        Keeper keeper,
        Port.Opener opener,
        Clock clock) {
    /** The folder of this session. */
    public Path captures() {
        return claim.folder();
    }

    /**
     * Two clocks.
     *
     * @param monotonicNs never goes back
     * @param wall as the computer's clock has it
     */
    public record Clock(LongSupplier monotonicNs, InstantSource wall) {
        public static Clock system() {
            return new Clock(System::nanoTime, InstantSource.system());
        }
    }
}
