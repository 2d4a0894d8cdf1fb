package org.nextpull.window.start;

import org.nextpull.plan.text.KeyKind;

/**
 * A key of the plan as the form shows it.
 *
 * @param key its name within its table
 * @param kind what is typed for it
 * @param unit unit that the plan holds it in; blank without one
 * @param label what the form calls it
 * @param hint why it matters, a sentence
 */
record FormField(String key, KeyKind kind, String unit, String label, String hint) {}
