package org.nextpull.notebook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.Belief;
import org.nextpull.fit.CarriedShape;
import org.nextpull.fit.MixturePrior;
import org.nextpull.fit.SpeedRows;
import org.nextpull.fit.SurfaceKnowledge;
import org.nextpull.fit.SurfacePriors;
import org.nextpull.unit.Lambda;

/** Knowledge of an engine as text: a line a part, its name and then its numbers, each to the last digit. A belief is mean and spread. */
final class KnowledgeText {
    private static final String MAP = "map";
    private static final String ROWS = "rows";
    private static final String DOUBT = "doubt";
    private static final String CURVATURE = "ln_curvature";
    private static final String SCATTER = "ln_scatter";
    private static final String DRIFT = "drift";
    private static final List<String> SHAPE =
            List.of("asymmetry", "asymmetry_slope", "curvature_slope", "curvature_wave", "curvature_ripple");
    private static final String LAMBDA = "lambda";
    private static final List<String> MIXTURE = List.of("spark_shift", "best_lambda", "ln_fall", "fall_asymmetry");

    private KnowledgeText() {}

    static String of(SurfaceKnowledge knowledge) {
        List<String> lines = new ArrayList<>();
        lines.add(line(
                MAP,
                knowledge.map().cells().stream()
                        .flatMapToDouble(cell ->
                                DoubleStream.of(cell.rpm(), cell.advance().deg()))
                        .toArray()));
        lines.add(line(ROWS, knowledge.doubt().learned().rpm()));
        lines.add(line(DOUBT, knowledge.doubt().covariance()));
        lines.add(line(CURVATURE, knowledge.lnCurvature()));
        lines.add(line(SCATTER, knowledge.lnScatter()));
        lines.add(line(DRIFT, knowledge.drift()));
        SurfacePriors.Shape shape = knowledge.shape();
        List<Belief> shapes = List.of(
                shape.asymmetry(),
                shape.asymmetrySlope(),
                shape.curvatureSlope(),
                shape.curvatureWave(),
                shape.curvatureRipple());
        for (int i = 0; i < shapes.size(); i++) {
            lines.add(line(SHAPE.get(i), shapes.get(i)));
        }
        knowledge.mixture().ifPresent(mixture -> {
            lines.add(line(LAMBDA, mixture.guess().value(), mixture.widening()));
            List<Belief> beliefs = List.of(mixture.sparkShift(), mixture.best(), mixture.lnFall(), mixture.asymmetry());
            for (int i = 0; i < beliefs.size(); i++) {
                lines.add(line(MIXTURE.get(i), beliefs.get(i)));
            }
        });
        return String.join("\n", lines);
    }

    private static String line(String name, Belief belief) {
        return line(name, belief.centre(), belief.sd());
    }

    private static String line(String name, double... numbers) {
        return name + DoubleStream.of(numbers).mapToObj(number -> " " + number).collect(Collectors.joining());
    }

    /**
     * Knowledge that was written so.
     *
     * @throws IllegalArgumentException where the text is another
     */
    static SurfaceKnowledge read(String text) {
        Map<String, double[]> parts = new HashMap<>();
        text.lines().forEach(line -> {
            String[] words = line.split(" ");
            parts.put(
                    words[0],
                    Arrays.stream(words)
                            .skip(1)
                            .mapToDouble(Double::parseDouble)
                            .toArray());
        });
        double[] cells = part(parts, MAP);
        double[] rpm = new double[cells.length / 2];
        double[] deg = new double[rpm.length];
        for (int i = 0; i < rpm.length; i++) {
            rpm[i] = cells[2 * i];
            deg[i] = cells[2 * i + 1];
        }
        List<Belief> shape = SHAPE.stream().map(name -> belief(parts, name)).toList();
        return new SurfaceKnowledge(
                SparkMap.of(rpm, deg),
                CarriedShape.asKept(SpeedRows.ofRpm(part(parts, ROWS)), part(parts, DOUBT)),
                belief(parts, CURVATURE),
                belief(parts, SCATTER),
                new SurfacePriors.Shape(shape.get(0), shape.get(1), shape.get(2), shape.get(3), shape.get(4)),
                belief(parts, DRIFT),
                Optional.ofNullable(parts.get(LAMBDA)).map(lambda -> {
                    List<Belief> beliefs =
                            MIXTURE.stream().map(name -> belief(parts, name)).toList();
                    return new MixturePrior(
                            Lambda.of(lambda[0]),
                            beliefs.get(0),
                            beliefs.get(1),
                            beliefs.get(2),
                            beliefs.get(3),
                            lambda[1]);
                }));
    }

    private static double[] part(Map<String, double[]> parts, String name) {
        return Optional.ofNullable(parts.get(name))
                .orElseThrow(() -> new IllegalArgumentException("knowledge without " + name));
    }

    private static Belief belief(Map<String, double[]> parts, String name) {
        double[] numbers = part(parts, name);
        return new Belief(numbers[0], numbers[1]);
    }
}
