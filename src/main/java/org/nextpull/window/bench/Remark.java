package org.nextpull.window.bench;

import org.nextpull.window.look.Tone;

/**
 * A sentence worth reading.
 *
 * @param tone how much it matters
 * @param sentence the sentence
 */
public record Remark(Tone tone, String sentence) {}
