package org.nextpull.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Torque over advance about its top, of shapes that the fit does not assume; x is degrees from the middle of the top. All of them invented. */
enum TopShape {
    /** What the fit assumes. */
    PARABOLA(0, 0) {
        @Override
        double loss(double x) {
            return 3.5e-4 * x * x;
        }
    },
    /** Nothing is lost over 6 deg, and then it falls off steeply. */
    FLAT(3, 0) {
        @Override
        double loss(double x) {
            double beyond = Math.max(0, Math.abs(x) - 3);
            return 6e-4 * beyond * beyond;
        }
    },
    /** Flat at the top, 0.2 % at 4.3 deg and 1.5 % at 7 deg. */
    QUARTIC(0, 0) {
        @Override
        double loss(double x) {
            return 6e-6 * x * x * x * x;
        }
    },
    /** A parabola on a day that loses 0.15 % a pull. */
    FADING(0, -0.15) {
        @Override
        double loss(double x) {
            return PARABOLA.loss(x);
        }
    },
    /** A parabola on a day that gains 0.15 % a pull. */
    GROWING(0, 0.15) {
        @Override
        double loss(double x) {
            return PARABOLA.loss(x);
        }
    };

    private static final double NEAR_BEST = 0.002;
    private static final double SCATTER = 0.0025;

    private final double flat;
    private final double driftPercent;

    TopShape(double flat, double driftPercent) {
        this.flat = flat;
        this.driftPercent = driftPercent;
    }

    abstract double loss(double x);

    /** A day of fixed settings: the start twice, up by 2 deg to well past the top, and twice at what the truth has for the best. */
    record Swept(Optional<Optimum> optimum, double top, double best, double flat) {
        boolean holdsBest() {
            return optimum.orElseThrow().bestInterval().contains(best);
        }

        boolean holdsTop() {
            Optimum found = optimum.orElseThrow();
            return found.peakInterval().low() <= top + flat
                    && found.peakInterval().high() >= top - flat;
        }
    }

    private double best() {
        double x = 0;
        while (loss(x) < NEAR_BEST) {
            x -= 0.01;
        }
        return x;
    }

    Swept sweep(long seed) {
        Random random = new Random(1_000_003 * seed + List.of(values()).indexOf(this));
        double top = 25.5 + 5 * random.nextDouble();
        List<Double> settings = new ArrayList<>(List.of(20.0));
        for (double advance = 20; advance < top + 5; advance += 2) {
            settings.add(advance);
        }
        double best = Math.rint(top + best());
        settings.addAll(List.of(best, best));
        Pulls pulls = new Pulls();
        for (double advance : settings) {
            double day = 1 + driftPercent / 100 * pulls.count();
            pulls.clean(advance, 0.87, 200 * (1 - loss(advance - top)) * day * (1 + SCATTER * random.nextGaussian()));
        }
        Optional<Optimum> found =
                SimulatedDay.judge(Pulls.timingOnly(), pulls.list()).timing().flatMap(SweepAnswer::optimum);
        return new Swept(found, top, top + best(), flat);
    }
}
