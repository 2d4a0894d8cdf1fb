package org.nextpull.advice;

/**
 * What to leave in the engine.
 *
 * @param setting the setting
 * @param by what decided it
 */
public record Chosen(Proposal setting, ChosenBy by) {}
