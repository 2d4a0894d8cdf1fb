package org.nextpull.advice;

import java.util.OptionalDouble;

/**
 * One pull of the sweep, in the units of the planner: degrees, or hundredths of lambda.
 *
 * @param setting measured setting
 * @param response band-average corrected response; empty when the pull gives none
 * @param clean no knock heard and no limit met
 * @param lnKnock natural log of the graded knock level, where one was logged
 * @param pull number of the pull
 * @param order place in the day that drift is counted in, from 0
 */
public record TriedSetting(
        double setting, OptionalDouble response, boolean clean, OptionalDouble lnKnock, int pull, double order) {}
