package org.nextpull.alarm;

import java.util.Optional;
import java.util.function.Consumer;

/** Watches one limit. */
interface Watcher {
    /** Looks at a row. */
    void take(Row row, EngineRunning state, Consumer<AlarmEvent> events);

    /** The alarm that is sounding now. */
    Optional<Alarm> sounding();

    /** The time ran backwards: another recording begins. */
    void restart(RowPlace at, Consumer<AlarmEvent> events);
}
