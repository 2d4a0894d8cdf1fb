package org.nextpull.advice;

import java.util.Optional;

/**
 * What the planner goes by.
 *
 * @param spark limits and steps of the spark
 * @param mixture limits and steps of the mixture, where it is swept too
 * @param ending when a day ends
 * @param looksAgain whether a lone knock flag is looked at again, as far as the operator allows it
 */
public record PlannerRules(SparkRules spark, Optional<MixtureRules> mixture, EndingRules ending, boolean looksAgain) {}
