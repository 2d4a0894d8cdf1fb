package org.nextpull.simulator;

import org.nextpull.channel.EngineSetting;

/** What an engine on a wire is told. Lifting off and trouble happen at once; all else waits until the pull before it has ended. */
public sealed interface ServeCommand {
    /**
     * Set something for the pulls to come.
     *
     * @param setting what is set; what it leaves empty stays as it is
     */
    record Set(EngineSetting setting) implements ServeCommand {}

    /** Run a pull at what is set. */
    record Pull() implements ServeCommand {}

    /**
     * Hold a speed at full load until the throttle is closed; what is set meanwhile stands at once.
     *
     * @param rpm the speed, within what the plan runs through
     */
    record Hold(double rpm) implements ServeCommand {}

    /** Close the throttle, in the middle of a pull. */
    record Lift() implements ServeCommand {}

    /**
     * Idle before anything else is done.
     *
     * @param seconds of the engine's time
     */
    record Idle(double seconds) implements ServeCommand {}

    /**
     * Trouble on the wires, to practise with.
     *
     * @param kind what goes wrong
     * @param seconds for how long, in the engine's time
     */
    record Trouble(Kind kind, double seconds) implements ServeCommand {
        /** What goes wrong. */
        public enum Kind {
            /** One byte in ten is another than it was. */
            GARBAGE,
            /** Nothing is sent. */
            SILENCE
        }
    }

    /** The day ends. */
    record End() implements ServeCommand {}
}
