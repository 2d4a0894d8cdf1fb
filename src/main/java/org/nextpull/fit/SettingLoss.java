package org.nextpull.fit;

/**
 * What it would cost to leave a setting in the engine, as shares of the best permitted response (0.001 is 0.1 %), but for
 * {@code belowPeak}.
 *
 * @param setting the setting
 * @param decisionLoss expected loss beyond what near-best gives away, plus a little for each step above the least setting
 * @param loss expected loss of response
 * @param belowPeak expected loss as a share of the peak, whether the peak is permitted or not
 * @param probabilityOfBad probability that the loss exceeds half a percent
 */
public record SettingLoss(
        double setting, double decisionLoss, double loss, double belowPeak, double probabilityOfBad) {}
