package org.nextpull.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Temperature;

/** The numbers behind an advice: what was compared, and with what. The sentences are made in {@code report}. */
public sealed interface Reason {

    /**
     * The first pull.
     *
     * @param ignition what the spark of the day is counted in
     * @param shiftDeg degrees that a map lies from the present one; 0 for one number
     */
    record First(Ignition ignition, double shiftDeg) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.first(this);
        }
    }

    /**
     * The search goes on.
     *
     * @param ignition what the spark of the day is counted in
     * @param purpose what the pull is for
     * @param pulls pulls so far
     * @param left torque that the setting of most torque, as far as it may be run next, is expected to leave
     * @param scatterPercent scatter from pull to pull that the fit works with
     * @param listen knock is not measured: the operator must listen during this pull and mark it
     * @param rise how the map of held speeds gets to its best over the band; empty where none were held, or where it may be run at once
     */
    record Searching(
            Ignition ignition,
            PlannerDecision.Purpose purpose,
            int pulls,
            TorqueLeft left,
            double scatterPercent,
            boolean listen,
            Optional<Rise> rise)
            implements Reason {
        /**
         * Speeds that were not held rise by no more than a step from pull to pull.
         *
         * @param pulls clean pulls until the map may be run as it is wanted
         * @param stepDeg the plan's step, degrees
         */
        public record Rise(int pulls, double stepDeg) {}

        @Override
        public <T> T in(Cases<T> cases) {
            return cases.searching(this);
        }
    }

    /**
     * A temperature is out of its window.
     *
     * @param condition which
     * @param now its value
     * @param want the nearest value inside the window
     */
    record OutOfWindow(WaitFor.Condition condition, Temperature now, Temperature want) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.outOfWindow(this);
        }
    }

    /**
     * Knock was heard.
     *
     * @param pull number of the pull
     * @param heardAtDeg advance at which it was heard
     * @param marginDeg the plan's margin
     */
    record Knocked(int pull, double heardAtDeg, double marginDeg) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.knocked(this);
        }
    }

    /**
     * A limit was met.
     *
     * @param limit which
     * @param pull number of the pull
     * @param worst worst value, in the project's unit of the quantity
     * @param allowed the plan's limit, in the same unit
     */
    record LimitReached(Limit limit, int pull, double worst, double allowed) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.limitReached(this);
        }
    }

    /**
     * No live channel watches what guards the way to the next setting.
     *
     * @param limits the limits that are not watched
     * @param byHand whether the operator may watch them alone and say so
     */
    record NotWatched(List<Limit> limits, boolean byHand) implements Reason {
        public NotWatched {
            limits = List.copyOf(limits);
        }

        @Override
        public <T> T in(Cases<T> cases) {
            return cases.notWatched(this);
        }
    }

    /**
     * The end of a day.
     *
     * @param ignition what the spark of the day is counted in
     * @param pulls pulls so far
     * @param left what stays to be had at the setting of most torque
     * @param scatterPercent scatter from pull to pull that the fit works with
     */
    record Ended(Ignition ignition, int pulls, TorqueLeft left, double scatterPercent) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.ended(this);
        }
    }

    /**
     * What another fuel asks of injectors and pump.
     *
     * @param litresTimes litres that it needs for each litre of the fuel before it
     * @param duty injector duty that it needs, by that of the last pull; empty where no channel had it
     * @param most what the plan allows of it, else all there is
     */
    record Flow(double litresTimes, OptionalDouble duty, double most) {
        /** Whether the injectors cannot give it. */
        public boolean isBeyond() {
            return duty.isPresent() && duty.getAsDouble() > most;
        }
    }

    /**
     * Another candidate is fitted for the next pull.
     *
     * @param label its label
     * @param fuel name of its fuel; empty where the plan names none
     * @param flow what it asks of injectors and pump; empty where the fuel stays or is not known
     */
    record ChangeOver(String label, Optional<String> fuel, Optional<Flow> flow) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.changeOver(this);
        }
    }

    /**
     * A run of a candidate at its own best.
     *
     * @param label the candidate
     * @param run which run of all candidates together, from 1
     * @param planned how many are planned
     */
    record Deciding(String label, int run, int planned) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.deciding(this);
        }
    }

    /**
     * The end of the decision runs.
     *
     * @param best the best that is proven, else the reference
     * @param settled whether each candidate is told from the reference, or shown to be no use
     */
    record Decided(String best, boolean settled) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.decided(this);
        }
    }

    /**
     * The end of a day on which no pull gave torque.
     *
     * @param pulls pulls so far
     */
    record Nothing(int pulls) implements Reason {
        @Override
        public <T> T in(Cases<T> cases) {
            return cases.nothing(this);
        }
    }

    /**
     * What is made of each reason, so that none is forgotten.
     *
     * @param <T> what becomes of it
     */
    interface Cases<T> {
        T first(First reason);

        T searching(Searching reason);

        T outOfWindow(OutOfWindow reason);

        T knocked(Knocked reason);

        T limitReached(LimitReached reason);

        T notWatched(NotWatched reason);

        T ended(Ended reason);

        T changeOver(ChangeOver reason);

        T deciding(Deciding reason);

        T decided(Decided reason);

        T nothing(Nothing reason);
    }

    /** What these cases make of it. */
    <T> T in(Cases<T> cases);
}
