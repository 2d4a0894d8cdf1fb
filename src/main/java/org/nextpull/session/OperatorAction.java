package org.nextpull.session;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.nextpull.channel.AskedSetting;
import org.nextpull.plan.Limit;

/** What an operator does by hand while a session runs. Pulls are named by their number over the day, refused ones included. */
public sealed interface OperatorAction {
    /** On one pull. */
    sealed interface OnPull extends OperatorAction {
        int pull();
    }

    /**
     * Takes a pull out: it gives no response any more, but its knock and limits still forbid.
     *
     * @param why the operator's words
     */
    record Strike(int pull, String why) implements OnPull {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.strike(this);
        }
    }

    /** Takes a struck pull in again. */
    record Restore(int pull) implements OnPull {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.restore(this);
        }
    }

    /**
     * Lifts what the knock and the limits of a pull forbid.
     *
     * @param why the operator's words
     */
    record Lift(int pull, String why) implements OnPull {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.lift(this);
        }
    }

    /**
     * Says afterwards what a pull was really run with; only what the setting holds is changed.
     *
     * @param setting what was run
     */
    record Correct(int pull, AskedSetting setting) implements OnPull {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.correct(this);
        }
    }

    /**
     * Says what is set in the engine for a pull, which need not be over or begun.
     *
     * @param setting what is set, with the configuration that is fitted
     * @param assumed whether nobody said so and the proposal was taken
     */
    record Setting(int pull, AskedSetting setting, boolean assumed) implements OnPull {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.setting(this);
        }
    }

    /**
     * A remark.
     *
     * @param pull the pull that it belongs to; empty for one on the session
     */
    record Note(OptionalInt pull, String text) implements OperatorAction {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.note(this);
        }
    }

    /**
     * Changes a limit from now on; what earlier pulls met stays.
     *
     * @param key as in the plan's table {@code [limits]}
     * @param value in the unit of that key
     */
    record ChangeLimit(String key, double value) implements OperatorAction {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.changeLimit(this);
        }
    }

    /**
     * Says that limits which no channel watches are watched by the operator alone, so that the sweep may go on toward what they guard.
     *
     * @param limits which
     */
    record OwnWatch(List<Limit> limits) implements OperatorAction {
        public OwnWatch {
            limits = List.copyOf(limits);
        }

        @Override
        public <T> T in(Cases<T> cases) {
            return cases.ownWatch(this);
        }
    }

    /**
     * Says what is fitted now, before its first pull; what is empty stays as it was.
     *
     * @param label configuration
     * @param fuel name of the fuel
     */
    record Next(Optional<String> label, Optional<String> fuel) implements OperatorAction {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.next(this);
        }
    }

    /**
     * What is made of each act, so that none is forgotten.
     *
     * @param <T> what becomes of it
     */
    interface Cases<T> {
        T strike(Strike strike);

        T restore(Restore restore);

        T lift(Lift lift);

        T correct(Correct correct);

        T setting(Setting setting);

        T note(Note note);

        T changeLimit(ChangeLimit change);

        T ownWatch(OwnWatch watch);

        T next(Next next);
    }

    /** What these cases make of it. */
    <T> T in(Cases<T> cases);
}
