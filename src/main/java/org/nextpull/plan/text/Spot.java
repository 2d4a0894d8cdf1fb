package org.nextpull.plan.text;

import java.util.Optional;
import org.tomlj.TomlPosition;

/**
 * Where a key stands and how its value looks.
 *
 * @param key dotted from the top of the plan
 * @param position of the key; empty when it is not written
 * @param value as a plan would write it; for a key that is not written, its default, or empty
 */
record Spot(String key, Optional<TomlPosition> position, String value) {}
