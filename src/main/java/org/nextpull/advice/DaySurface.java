package org.nextpull.advice;

import java.util.Optional;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.Experience;
import org.nextpull.fit.MapPrior;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.Surface;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

/** What is fitted of a day: its pulls, beside what is thought of such an engine before them. */
final class DaySurface {
    /** The best is looked for this far above the present map: an operator starts 6 to 10 deg on the retarded side, or from a fair map. */
    private static final double BEST_ABOVE_PRESENT_DEG = 6;

    /** And this far above the start of one number, which is well on the retarded side. */
    private static final double BEST_ABOVE_START_DEG = 8;

    /** A bracket starts on the rich side of its best, in lambda. */
    private static final double BEST_ABOVE_START_LAMBDA = 0.03;

    /** Mixtures that differ by more than this over a day move torque by what the spark does not explain. */
    private static final double ONE_MIXTURE = 0.01;

    private final DayView view;
    private final DayReadings maps;

    DaySurface(DayView view, DayReadings maps) {
        this.view = view;
        this.maps = maps;
    }

    /** Torque over speed, advance and, where it moved, mixture. */
    Surface surface() {
        SpeedRows speeds = SpeedRows.ofRpm(maps.rows());
        return new Surface(speeds, new SurfacePulls(maps::readRows).of(maps.used(), speeds), priors());
    }

    private SurfacePriors priors() {
        SurfacePriors usual = SurfacePriors.usual(guess()).withMixture(mixturePrior());
        SurfacePriors priors = view.day()
                .experience()
                .map(Experience::knowledge)
                .map(known -> known.knowsShapeOver(maps.rows())
                        ? known.priors(usual)
                        : known.priors(usual).withMap(usual.map()))
                .orElse(usual);
        return maps.ignition() == Ignition.STANDING ? priors.withMap(MapPrior.standing(guess())) : priors;
    }

    private SparkMap guess() {
        double above = switch (maps.ignition()) {
            case MAP -> BEST_ABOVE_PRESENT_DEG;
            case FLAT, OFFSET -> BEST_ABOVE_START_DEG;
            case STANDING -> 0;
        };
        return new SparkMap(maps.present().orElseThrow().cells().stream()
                .map(cell -> new SparkMap.Cell(
                        cell.rpm(),
                        Advance.ofDeg(
                                Math.min(maps.plan().mostDeg(), cell.advance().deg() + above))))
                .toList());
    }

    private Optional<MixturePrior> mixturePrior() {
        double[] lambdas = maps.used().stream()
                .flatMap(pull -> DayReadings.lambda(pull).stream())
                .mapToDouble(Lambda::value)
                .sorted()
                .toArray();
        if (lambdas.length < maps.used().size()) {
            return Optional.empty();
        }
        boolean moved = lambdas[lambdas.length - 1] - lambdas[0] > ONE_MIXTURE;
        if (!maps.sweepsMixture() && !moved) {
            return Optional.empty();
        }
        MixturePrior prior = MixturePrior.ofGuess(view.day()
                .plan()
                .mixture()
                .map(mixture -> Lambda.of(Math.min(
                        mixture.start().value() + BEST_ABOVE_START_LAMBDA,
                        mixture.leanest().value())))
                .orElse(Lambda.of(lambdas[lambdas.length / 2])));
        return Optional.of(maps.ignition() == Ignition.STANDING ? prior.withSparkStanding() : prior);
    }
}
