package org.nextpull.unit;

/** The units that people read. JSON is not touched by it: its keys name their units. */
public enum UnitSystem {
    METRIC,
    US
}
