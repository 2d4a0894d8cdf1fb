package org.nextpull.advice;

/**
 * A next step before the day's rules have passed it.
 *
 * @param action what to do
 * @param code why
 * @param setting what to set
 * @param reason the numbers behind it
 */
record Draft(Action action, AdviceCode code, Proposal setting, Reason reason) {}
