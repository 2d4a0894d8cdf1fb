package org.nextpull.session;

import java.util.List;
import java.util.OptionalInt;
import org.nextpull.advice.Action;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.Alarm;
import org.nextpull.response.MeasuredPull;

/**
 * A day gone through pull by pull, as it would have been advised live.
 *
 * @param whole the result of the whole day
 * @param steps what would have been said after each pull, with all pulls before it
 * @param days where the pulls are of several days, each of them
 */
public record Replay(SessionResult whole, List<Step> steps, List<OneDay> days) {
    public Replay {
        steps = List.copyOf(steps);
        days = List.copyOf(days);
    }

    /** One of several days.
     *
     * @param steps its pulls, with what was said after each of them
     * @param alone what its pulls say without those of other days
     */
    public record OneDay(List<Step> steps, Verdict alone) {
        public OneDay {
            steps = List.copyOf(steps);
        }

        /** What its pulls say together with those of the days before it. */
        public Verdict together() {
            return steps.get(steps.size() - 1).verdict();
        }

        /** Number of its pulls after which it would have stopped; empty when it would have gone on. */
        public OptionalInt stoppedAfter() {
            return firstStop(steps);
        }
    }

    /**
     * One pull and what would have been said after it.
     *
     * @param pull the pull
     * @param alarms the alarms that would have sounded in it, by their first row
     * @param verdict what the day said then; of a stop that stands no more than its advice, but for the last pull of a day
     */
    public record Step(MeasuredPull pull, List<Alarm> alarms, Verdict verdict) {
        public Step {
            alarms = List.copyOf(alarms);
        }
    }

    /** Replays a day; without a verdict of the whole day there are no steps. */
    public static Replay of(SessionInput input) {
        return of(input, Session.read(input));
    }

    /** Replays a day whose logs were read before. */
    public static Replay of(SessionInput input, List<SourcePulls> sources) {
        DayByPull day = DayByPull.of(input, sources);
        return day.replay(day.pulls());
    }

    /** Number of pulls after which it would have stopped; empty when it would have gone on. */
    public OptionalInt stoppedAfter() {
        return firstStop(steps);
    }

    private static OptionalInt firstStop(List<Step> steps) {
        for (int index = 0; index < steps.size(); index++) {
            if (steps.get(index).verdict().advice().action() == Action.STOP) {
                return OptionalInt.of(index + 1);
            }
        }
        return OptionalInt.empty();
    }

    /** Whether it would have stopped, and later pulls opened it again. */
    public boolean isOpenAgain() {
        return stoppedAfter().isPresent()
                && steps.get(steps.size() - 1).verdict().advice().action() != Action.STOP;
    }

    /** Pulls that were run after it would have stopped. */
    public int pullsSaved() {
        return stoppedAfter().isPresent()
                ? (int) steps.stream()
                        .skip(stoppedAfter().getAsInt())
                        .filter(step -> step.pull().isPull())
                        .count()
                : 0;
    }
}
