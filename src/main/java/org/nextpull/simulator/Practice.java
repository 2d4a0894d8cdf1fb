package org.nextpull.simulator;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Chosen;
import org.nextpull.advice.HoldNow;
import org.nextpull.advice.Reason;
import org.nextpull.advice.Verdict;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.Recording;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.engine.bench.Bench;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.ByteSource;
import org.nextpull.intake.csv.Input;
import org.nextpull.intake.csv.LogFiles;
import org.nextpull.plan.SweepPlan;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.OperatorActions;
import org.nextpull.session.Session;
import org.nextpull.session.SessionInput;
import org.nextpull.session.SessionResult;
import org.nextpull.unit.Advance;

/**
 * A day of practice on the model engine, without any terminal: it proposes, somebody sets, the engine pulls, its log is read as any other
 * is, and the advice moves on. Keeps the day so far; not for use by several threads.
 */
public final class Practice {
    private static final String NAME = "practice.csv";

    private final Map<String, SimulatedEngine> rigs;
    private final Bench bench;
    /** The engine at held speeds; empty for a plan that holds none. */
    private final Optional<HeldEngine> held;

    /** Label of the candidate that is fitted; empty for a plan without any. */
    private String fitted;

    private final List<Samples> parts = new ArrayList<>();
    private int knocking;
    private final List<EngineSetting> settings = new ArrayList<>();
    private OperatorActions acts = OperatorActions.none();
    private SessionResult result;

    private Practice(Map<String, SimulatedEngine> rigs) {
        this.rigs = rigs;
        this.fitted = rigs.keySet().iterator().next();
        this.bench = rig().bench();
        this.held = HeldEngine.of(rig());
        this.result = Session.evaluate(SessionInput.of(plan(), List.of(), List.of()));
    }

    /** A day with the engine that a plan describes and a seed varies, or the findings that say why there is none. */
    public static Outcome<Practice> start(SweepPlan plan, long seed) {
        return SimulatedEngine.candidates(plan, seed).map(Practice::new);
    }

    /** A day with one engine on one fuel. */
    static Practice on(SimulatedEngine rig) {
        return new Practice(Map.of("", rig));
    }

    public SweepPlan plan() {
        return rig().plan();
    }

    /** All that the day says so far. */
    public SessionResult result() {
        return result;
    }

    /** The next step. */
    public Advice advice() {
        return result.advice()
                .orElseThrow(() -> new IllegalStateException("a plan that sweeps something always has an advice"));
    }

    /** Pulls run so far, excluded ones among them. */
    public int pulls() {
        return held.isPresent() ? result.pulls().size() : parts.size();
    }

    /** The settings of the pulls so far, in order. */
    public List<EngineSetting> settings() {
        return List.copyOf(settings);
    }

    /**
     * Runs a pull at a setting, which may be one that was not proposed.
     *
     * @return the day after it, or why the pull was not run: the setting lies outside the plan, or the engine cannot run so
     */
    public Outcome<SessionResult> pull(EngineSetting setting) {
        List<Finding> outside = PlanSpan.check(plan(), setting);
        if (!outside.isEmpty()) {
            return Outcome.failed(outside);
        }
        if (advice().reason() instanceof Reason.ChangeOver to && rigs.containsKey(to.label())) {
            fitted = to.label();
        }
        Outcome<?> pulled = held.isPresent()
                ? held.get().pull(setting).map(number -> log(held.get(), setting))
                : run(setting, words().isEmpty() ? Optional.empty() : Optional.of(fitted));
        return pulled.map(pull -> {
            result = evaluate();
            return result;
        });
    }

    /** What to do at the held speeds of the plan; empty where it holds none, and when all are done. */
    public Optional<HoldNow> hold() {
        return held.map(HeldEngine::now).filter(now -> !now.isOver());
    }

    /**
     * Holds the speed that is asked for until there is something new to do. When that is to close the throttle it is closed, the engine
     * cools down, and the day is read anew.
     *
     * @param typed the advance to set; empty for the one that is asked for
     * @return what was said last, or why the speed was not held
     * @throws IllegalStateException where no speed is to be held
     */
    public Outcome<HoldNow> hold(Optional<Advance> typed) {
        HeldEngine engine = held.orElseThrow(() -> new IllegalStateException("the plan holds no speed"));
        HoldNow before = engine.now();
        Advance advance = typed.orElseGet(() -> Advance.ofDeg(before.advanceDeg()
                .orElseGet(() -> rig().spark(rig().startSetting()).degAt(before.rpm()))));
        EngineSetting setting = EngineSetting.ofNumbers(Optional.of(advance), Optional.empty(), Optional.empty());
        List<Finding> outside = PlanSpan.check(plan(), setting);
        if (!outside.isEmpty()) {
            return Outcome.failed(outside);
        }
        return engine.hold(advance).map(said -> {
            log(engine, setting);
            if (said.step().isClose()) {
                result = evaluate();
            }
            return said;
        });
    }

    private int log(HeldEngine engine, EngineSetting setting) {
        List<Samples> rows = engine.taken();
        knocking += isKnock(rows) ? 1 : 0;
        parts.addAll(rows);
        settings.add(setting);
        return parts.size();
    }

    /** Runs a pull at any setting that the engine can run, and leaves the advice as it is. */
    Outcome<Bench.Pull> run(EngineSetting setting, Optional<String> label) {
        Outcome<Bench.Pull> pulled =
                bench.pull(rig(label).benchSetting(setting, label), rig().kit().program());
        pulled.value().ifPresent(pull -> {
            parts.add(pull.samples());
            knocking += isKnock(List.of(pull.samples())) ? 1 : 0;
            settings.add(setting);
        });
        return pulled;
    }

    /** Reads the log of the day so far and takes the advice on from there. */
    void judge() {
        result = evaluate();
    }

    /** Does what the operator did by hand, or says why it cannot be done: no such pull, or a limit that the plan does not take. */
    public List<Finding> take(OperatorAction act) {
        Outcome<OperatorActions> taken = acts.with(act, plan(), pulls());
        taken.value().ifPresent(now -> {
            acts = now;
            result = evaluate();
            held.ifPresent(engine -> engine.limits(result.plan().limits()));
        });
        return taken.findings();
    }

    /** The truth beside what was found. Takes a second or two. */
    public Debrief debrief() {
        return debrief(rig(), advice().leave().map(Chosen::setting));
    }

    /** The truth of each candidate beside what its sweep found, by label, the reference first. */
    public Map<String, Debrief> debriefs() {
        Map<String, Debrief> all = new LinkedHashMap<>();
        result.candidates()
                .ifPresent(day -> day.candidates()
                        .forEach(state -> all.put(
                                state.plan().label(),
                                debrief(
                                        Objects.requireNonNull(
                                                rigs.get(state.plan().label())),
                                        state.swept().flatMap(Verdict::chosen).map(Chosen::setting)))));
        return all;
    }

    private Debrief debrief(SimulatedEngine of, Optional<EngineSetting> leave) {
        return Debrief.of(of, pulls(), knocking, leave);
    }

    /** The engine on the fuel of what is left, or of what is fitted while the day runs. */
    SimulatedEngine rig() {
        String left = advised()
                .filter(Reason.Decided.class::isInstance)
                .map(reason -> ((Reason.Decided) reason).best())
                .orElse(fitted);
        return Objects.requireNonNull(rigs.get(left));
    }

    /** The engine on the fuel of that candidate; of what is fitted where the label is none. */
    SimulatedEngine rig(Optional<String> label) {
        return label.flatMap(name -> Optional.ofNullable(rigs.get(name))).orElseGet(this::rig);
    }

    private Optional<Reason> advised() {
        return Optional.ofNullable(result)
                .flatMap(SessionResult::verdict)
                .map(verdict -> verdict.advice().reason());
    }

    /** The words that the log needs to tell the candidates apart. */
    List<Role> words() {
        return plan().decides() ? List.of(Role.LABEL) : List.of();
    }

    List<Samples> parts() {
        return List.copyOf(parts);
    }

    private SessionResult evaluate() {
        return Session.evaluate(
                acts.applied(SessionInput.of(plan(), recordings(), List.of()).withSettings(asked())));
    }

    private List<Recording> recordings() {
        if (parts.isEmpty()) {
            return List.of();
        }
        String text = LogText.of(parts, LogDialect.PLAIN, words(), List.of());
        return new LogFiles(plan().log().hints())
                .read(new Written(text)).value().stream()
                        .filter(Input.Log.class::isInstance)
                        .map(input -> ((Input.Log) input).recording())
                        .toList();
    }

    private List<AskedSetting> asked() {
        List<AskedSetting> rows = new ArrayList<>();
        for (int index = 0; rig().needsSettings() && index < settings.size(); index++) {
            rows.add(AskedSetting.ofNumbers(settings.get(index)).ofPull(index + 1));
        }
        return rows;
    }

    private boolean isKnock(List<Samples> run) {
        SimulatedEngine.KnockCount count = new SimulatedEngine.KnockCount(rig());
        run.forEach(count::add);
        return count.isHeard();
    }

    /** The log of the day so far. */
    private record Written(String text) implements ByteSource {
        @Override
        public String name() {
            return NAME;
        }

        @Override
        public InputStream open() {
            return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
        }
    }
}
