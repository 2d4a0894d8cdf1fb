package org.nextpull.advice;

import org.nextpull.unit.Temperature;

/**
 * What to wait for before the next pull.
 *
 * @param condition what that is out of its window
 * @param now its value
 * @param want the nearest value inside the window
 * @param atLeastSeconds shortest time to wait
 */
public record WaitFor(Condition condition, Temperature now, Temperature want, double atLeastSeconds) {}
