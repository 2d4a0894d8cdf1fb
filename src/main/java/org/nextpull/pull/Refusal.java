package org.nextpull.pull;

import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.WrittenId;

/**
 * A candidate that cannot be used.
 *
 * @param reason why
 * @param finding the same for a reader, with the numbers
 */
public record Refusal(Reason reason, Finding finding) {

    /** Why a candidate cannot be used as a pull. */
    public enum Reason implements WrittenId {
        /** It began well and ended before the end of the band. */
        CUT_SHORT(FindingCode.PULL_CUT_SHORT),
        /** The throttle was let go before the end of the band. */
        THROTTLE_LIFTED(FindingCode.PULL_THROTTLE_LIFTED),
        /** It does not reach from one end of the band to the other. */
        OUTSIDE_BAND(FindingCode.PULL_OUTSIDE_BAND),
        /** Too short in time or speed to be a pull at all. */
        TOO_SHORT(FindingCode.PULL_TOO_SHORT),
        /** A plateau shorter than the hold time. */
        HOLD_TOO_SHORT(FindingCode.PULL_HOLD_TOO_SHORT),
        TOO_FEW_SAMPLES(FindingCode.PULL_TOO_FEW_SAMPLES),
        /** The speed wavers on its way. */
        SPEED_NOT_MONOTONE(FindingCode.PULL_SPEED_NOT_MONOTONE),
        /** The speed leaps and stays: a gear change or a slipping clutch or tyre. */
        SPEED_JUMP(FindingCode.PULL_SPEED_JUMP),
        /** Engine and roller do not keep one ratio. */
        WHEEL_SLIP(FindingCode.PULL_WHEEL_SLIP),
        /** A hole in the data in the middle of the pull. */
        DATA_GAP(FindingCode.PULL_DATA_GAP),
        /** The data stopped in the middle of the pull: a port that was unplugged, a program that ended. */
        DATA_STOPPED(FindingCode.PULL_DATA_STOPPED),
        /** Too many single rows are missing. */
        ROWS_DROPPED(FindingCode.PULL_ROWS_DROPPED),
        /** Without a throttle channel: the torque is far below what the log reaches elsewhere. */
        LOAD_TOO_LOW(FindingCode.PULL_LOAD_TOO_LOW),
        /** One of the first pulls, which the rules throw away. */
        THROWN_AWAY_FIRST(FindingCode.PULL_THROWN_AWAY),
        /** No pull at all: knock was counted under load, and the stretch is kept for that alone. */
        KNOCK_ALONE(FindingCode.PULL_KNOCK_ALONE),
        /** The day holds it already, from another source, the same in every sample. */
        COUNTED_ALREADY(FindingCode.PULL_COUNTED_ALREADY);

        private final FindingCode code;

        Reason(FindingCode code) {
            this.code = code;
        }

        /** The finding that tells a user. */
        public FindingCode code() {
            return code;
        }

        /** How much it matters: that the plan throws a pull away is as it was wanted. */
        Finding.Severity severity() {
            return this == THROWN_AWAY_FIRST ? Finding.Severity.NOTE : Finding.Severity.WARNING;
        }
    }
}
