package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;

/** Watches one limit. */
interface Watcher {
    /** Looks at a row. */
    void take(Row row, EngineRunning state, Consumer<AlarmEvent> events);

    /** The alarm that is sounding now. */
    Optional<Alarm> sounding();

    /** The latest reading against the limit; empty where it is not one level or does not hold at the moment. */
    default Optional<Headroom> headroom() {
        return Optional.empty();
    }

    /** The time ran backwards: another recording begins. */
    void restart(RowPlace at, Consumer<AlarmEvent> events);
}
