package org.nextpull.advice;

/**
 * A setting that the next pull might have.
 *
 * @param setting the setting
 * @param merit what it is worth less what it costs, as a share of the response
 * @param gain what it is expected to teach
 * @param access what it is worth to be allowed to leave it in the engine
 * @param chanceOfKnock probability of knock that is reckoned with
 */
public record Candidate(double setting, double merit, Gain gain, Access access, double chanceOfKnock) {
    /** Worth of what a pull teaches, as a share of the response. */
    public record Gain(double share) {}

    /** Worth of reaching a setting, as a share of the response. */
    public record Access(double share) {}
}
