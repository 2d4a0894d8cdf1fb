package org.nextpull.plan;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One of the fuels or parts between which the day decides, table {@code [[candidate]]}; the first is the reference.
 *
 * @param label how log and settings call its pulls
 * @param fuel name of its fuel; empty where it runs on the plan's
 * @param note the operator's words, such as what is fitted
 * @param pricePerLitre what a litre of its fuel costs, in any currency that is one for all
 */
public record CandidatePlan(String label, Optional<String> fuel, Optional<String> note, OptionalDouble pricePerLitre) {}
