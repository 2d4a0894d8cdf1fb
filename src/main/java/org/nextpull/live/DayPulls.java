package org.nextpull.live;

import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.alarm.AlarmWatch;
import org.nextpull.channel.Block;
import org.nextpull.finding.Finding;
import org.nextpull.intake.wire.Arrival;
import org.nextpull.session.SourcePulls;

/** The pulls of a session, wherever they come from. */
interface DayPulls {
    /** All pulls so far, those that are not final last. */
    List<SourcePulls> pulls();

    /** How many pulls there are. */
    int count();

    /** How many of them are final: the others were found ahead of the rows that settle when their lambda was measured. */
    int whole();

    /** Time at which the engine went to the full load that it is at now, in s of the session; empty when it is not. */
    OptionalDouble loadedSinceS();

    /** Limits hold from now on. */
    void limits(AlarmWatch.Rules limits);

    /** Something arrived. */
    default void see(Arrival arrival) {}

    /** Rows of all ports. */
    default void block(Block block) {}

    /** A file is complete. */
    default void complete(Arrival.FileComplete file) {}

    /** The moment from which data is missing, while rows from before it may still come. */
    default OptionalDouble waitingCutS() {
        return OptionalDouble.empty();
    }

    /** No row from before the cut will come any more. */
    default void cutNow() {}

    /** What is to be said since this was asked last. */
    default List<Finding> takeNews() {
        return List.of();
    }
}
