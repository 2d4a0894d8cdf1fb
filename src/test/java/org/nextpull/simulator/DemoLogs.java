package org.nextpull.simulator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SparkMap;
import org.nextpull.engine.EngineDesign;
import org.nextpull.engine.ExampleEngines;
import org.nextpull.engine.ModelEngine;
import org.nextpull.engine.OperatingPoint;
import org.nextpull.engine.bench.Bench;
import org.nextpull.engine.bench.Brake;
import org.nextpull.engine.bench.FullLoadCurve;
import org.nextpull.engine.bench.Instruments;
import org.nextpull.engine.bench.TruthFinder;
import org.nextpull.engine.bench.WeatherDay;
import org.nextpull.engine.gas.EngineFuel;
import org.nextpull.finding.Outcome;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * The invented logs that come with the project, each made anew from its seed: a hill-climb two-litre on an engine brake and a
 * 1.2-litre hatchback on an inertia roller. They suit the plans of the same names. Sweeps follow the advice to its stop, as {@code engine
 * write} with the same plan, seed and dialect does; the knocking sweep and the comparison show what an operator does by hand.
 */
public final class DemoLogs {
    private static final Span HILL_BAND = Span.of(3500, 6750);
    private static final Span HILL_PULL = Span.of(3300, 7000);
    private static final double ROWS_RPM = 250;
    private static final double HILL_LAMBDA = 0.87;
    private static final double HILL_RATE = 300;
    private static final double HILL_INERTIA = 0.16;
    private static final double HILL_LAMBDA_DELAY_S = 0.15;
    private static final EngineDesign AFTER = withOtherGasPaths(ExampleEngines.hillClimb());

    private DemoLogs() {}

    private static EngineDesign withOtherGasPaths(EngineDesign before) {
        return new EngineDesign(
                before.name(),
                before.cylinder(),
                before.cylinders(),
                before.valves(),
                before.breathing().withResonance(new EngineDesign.Breathing.Resonance(5600, 0.18)),
                before.boost(),
                before.combustion(),
                before.walls(),
                before.friction(),
                new EngineDesign.Exhaust(8e3, 0.20));
    }

    /** All of them. */
    public static List<DemoLog> all() {
        return List.of(timing(), map(), day(), mixture(), manifold(), roller(), knock(), fuels());
    }

    /** Writes all of them into a folder, the truth into the hidden folder {@code .truth} below it. */
    public static void writeTo(Path folder) throws IOException {
        Path truths = Files.createDirectories(folder.resolve(".truth"));
        for (DemoLog log : all()) {
            Files.writeString(folder.resolve(log.name() + ".csv"), log.log(), StandardCharsets.UTF_8);
            Files.writeString(truths.resolve(log.name() + ".toml"), log.truth(), StandardCharsets.UTF_8);
        }
    }

    /** Timing sweep of the hill-climb engine that follows the advice to its stop. */
    public static DemoLog timing() {
        return following("hillclimb-e10-timing", 20_260_429, LogDialect.PLAIN);
    }

    /** Spark map of the hill-climb engine that follows the advice to its stop. */
    public static DemoLog map() {
        return following("hillclimb-e10-map", 20_260_429, LogDialect.PLAIN);
    }

    /** A whole day of the hill-climb engine that follows the advice: timing, mixture, timing again, proof, stop. */
    public static DemoLog day() {
        return following("hillclimb-e10-day", 20_260_503, LogDialect.PLAIN);
    }

    /** Mixture bracket of the hill-climb engine that follows the advice, written with decimal commas. */
    public static DemoLog mixture() {
        return following("hillclimb-e10-mixture", 20_260_429, LogDialect.SEMICOLON);
    }

    /** Mixture bracket of the hatchback on a roller that logs nothing of the engine's but lambda; it follows the advice. */
    public static DemoLog roller() {
        return following("hatchback-roller-mixture", 20_260_509, LogDialect.COMPACT);
    }

    /** A day that decides between three fuels and follows the advice: a sweep of each, then decision runs in blocks. */
    public static DemoLog fuels() {
        return following("hillclimb-fuels", 7, LogDialect.PLAIN);
    }

    private static DemoLog following(String name, long seed, LogDialect dialect) {
        WrittenDay.Order order = new WrittenDay.Order(plan(name), seed, dialect);
        WrittenDay day = WrittenDay.following(order, setting -> {}).value().orElseThrow();
        return new DemoLog(name, seed, day.log(), day.truth());
    }

    private static SweepPlan plan(String name) {
        try {
            String file = name + ".toml";
            return PlanText.read(Files.readString(Path.of("sweep-plans", file)), file)
                    .value()
                    .orElseThrow();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    /** Before and after another exhaust manifold, in the order before, after, after, before, twice. */
    public static DemoLog manifold() {
        Sheet sheet = new Sheet("hillclimb-manifold", 20_260_418, ExampleEngines.hillClimb());
        List<Role> roles = new ArrayList<>(SimulatedDyno.BRAKE_ROLES);
        roles.add(Role.ORDER);
        Bench bench = sheet.brake(roles, WeatherDay.usual());
        Bench.Setting start = sheet.setting(24, HILL_LAMBDA);
        Bench.Setting before = fitted(start, start.engine(), "before");
        Bench.Setting after = fitted(start, engine(AFTER), "after");
        for (Bench.Setting setting : List.of(before, after, after, before, before, after, after, before)) {
            sheet.add(bench.pull(setting, accelerate()));
        }
        double old = mean(before, HILL_BAND);
        double gain = 100 * (mean(after, HILL_BAND) / old - 1);
        List<String> more = List.of(
                "",
                "[comparison]",
                "label = \"after\"",
                "against = \"before\"",
                String.format(Locale.ROOT, "difference_percent = %.3f", gain));
        return sheet.log(LogDialect.TABBED_US, List.of(Role.LABEL), HILL_BAND, more);
    }

    /** Timing sweep of the hill-climb engine with more compression than its fuel likes. */
    public static DemoLog knock() {
        Sheet sheet = new Sheet(
                "hillclimb-knock", 20_260_523, ExampleEngines.hillClimb().withCompressionRatio(12.2));
        List<Role> roles = new ArrayList<>(SimulatedDyno.BRAKE_ROLES);
        roles.add(Role.KNOCK_LEVEL);
        WeatherDay warm = WeatherDay.usual().withMorning(Pressure.ofKilopascals(98.4), Temperature.ofCelsius(28), 0.4);
        Bench bench = sheet.brake(roles, warm);
        Bench.Setting setting = sheet.setting(14, HILL_LAMBDA);
        for (double deg : new double[] {14, 14, 15.5, 17, 18.5, 20, 21.5, 17, 17, 18.5, 17, 20}) {
            sheet.add(bench.pull(setting.withAdvance(deg), accelerate()));
        }
        return sheet.log(LogDialect.PLAIN, List.of(), HILL_BAND, List.of());
    }

    private static Brake.Program accelerate() {
        return new Brake.Program.Acceleration(HILL_PULL, HILL_RATE);
    }

    private static ModelEngine engine(EngineDesign design) {
        return ModelEngine.of(design).value().orElseThrow();
    }

    private static OperatingPoint standard(Bench.Setting setting) {
        return new OperatingPoint(
                4000,
                Advance.ofDeg(setting.spark().degAt(4000)),
                setting.lambda(),
                setting.fuel(),
                OperatingPoint.Surroundings.reference());
    }

    private static double mean(Bench.Setting setting, Span band) {
        return FullLoadCurve.of(setting.engine(), setting.spark(), standard(setting), band)
                .value()
                .orElseThrow()
                .meanTorque(band);
    }

    /** A log in the making. */
    private static final class Sheet {
        private final String name;
        private final long seed;
        private final ModelEngine engine;
        private final List<Samples> parts = new ArrayList<>();
        private Optional<Bench.Setting> first = Optional.empty();
        private WeatherDay day = WeatherDay.usual();

        Sheet(String name, long seed, EngineDesign design) {
            this.name = name;
            this.seed = seed;
            this.engine = engine(design);
        }

        Bench brake(List<Role> roles, WeatherDay ofLog) {
            day = ofLog;
            Instruments instruments = Instruments.usual(20, roles).withLambdaDelay(HILL_LAMBDA_DELAY_S);
            return new Bench(Brake.engineBrake(HILL_INERTIA, true), instruments, day, seed);
        }

        Bench.Setting setting(double deg, double lambda) {
            Bench.Setting setting = new Bench.Setting(
                    engine,
                    SparkMap.flat(deg),
                    Lambda.of(lambda),
                    EngineFuel.named("e10").value().orElseThrow(),
                    Optional.empty());
            first = Optional.of(setting);
            return setting;
        }

        void add(Outcome<Bench.Pull> pull) {
            parts.add(pull.value().orElseThrow().samples());
        }

        DemoLog log(LogDialect dialect, List<Role> words, Span band, List<String> more) {
            Bench.Setting setting = first.orElseThrow();
            TruthFinder.Truth truth = TruthFinder.find(engine, standard(setting).in(day.settled()), band, ROWS_RPM);
            List<String> preamble = List.of(LogText.INVENTED, engine.design().name() + ", seed " + seed);
            List<String> remarks = List.of(
                    LogText.INVENTED,
                    "what is best in " + name + ".csv in the air of that morning with warm oil, torque as in air of"
                            + " 99 kPa dry and 25 degC, at lambda "
                            + setting.lambda().value());
            return new DemoLog(
                    name,
                    seed,
                    LogText.of(parts, dialect, words, preamble),
                    DayTruth.sheet(remarks, seed, band, truth, more));
        }
    }

    private static Bench.Setting fitted(Bench.Setting setting, ModelEngine engine, String label) {
        return new Bench.Setting(engine, setting.spark(), setting.lambda(), setting.fuel(), Optional.of(label));
    }
}
