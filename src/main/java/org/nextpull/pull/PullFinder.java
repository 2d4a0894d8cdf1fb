package org.nextpull.pull;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.nextpull.channel.Block;
import org.nextpull.channel.BlockReader;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Recording;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;

/**
 * Finds the pulls of one source as its blocks come in, live or from a file; how the rows are cut into blocks does not matter. Only
 * stretches at full load are kept, each until it is over and judged. Every candidate gets a number, the refused ones too.
 *
 * <p>Full load is told by the throttle; without one by torque of at least half of what the log reaches, which is known when a
 * {@link LoadGate.Survey} has looked at the log before and else follows the highest torque so far; without torque and power by a speed that
 * rises. {@link #survey} takes that look.
 *
 * <p>Stretches may be judged aside, while the next rows come in; what is found is the same, some stretches later.
 */
public final class PullFinder {
    private static final Channel RUN = Channel.of(Role.RUN);

    /** Seconds kept after a stretch where lambda is logged, for its sensor answers late. */
    private static final double AFTER_S = 2;

    private static final double AFTER_DELAY_S = 0.5;

    /** Rows that are looked ahead at, also where only the first of them can be taken. */
    private static final int MOST_TOGETHER = 256;

    private final String source;
    private final PullRules rules;
    private final Optional<LoadGate.Level> level;
    private final CandidateMaker maker;
    private final KnockRows knock;
    private final TimeGuard guard = new TimeGuard();
    private final List<Finding> findings = new ArrayList<>();
    private final Optional<JudgedAside> aside;
    private @Nullable SpeedSource speed;
    private @Nullable LoadGate gate;
    private @Nullable StretchCollector collector;
    private OptionalDouble run = OptionalDouble.empty();
    private boolean started;

    /** Finds pulls without having seen the log before. */
    public PullFinder(String source, PullRules rules) {
        this(source, rules, Optional.empty(), Optional.empty());
    }

    /**
     * Finds pulls in a log.
     *
     * @param level its level of torque where it is known; it matters only where no throttle is logged
     * @param aside judges stretches while the next rows come in; without it each is judged at once
     */
    public PullFinder(String source, PullRules rules, Optional<LoadGate.Level> level, Optional<Aside> aside) {
        this.source = source;
        this.rules = rules;
        this.level = level;
        this.maker = new CandidateMaker(source, rules, level);
        this.knock = new KnockRows(rules);
        this.aside = aside.map(other -> new JudgedAside(maker, other));
    }

    /**
     * The level of torque that a recording reaches; empty, and the recording not read, where a throttle is logged.
     *
     * @throws IOException when the recording cannot be opened or read to its end
     */
    public static Optional<LoadGate.Level> survey(Recording recording, PullRules rules) throws IOException {
        try (BlockReader reader = recording.open()) {
            boolean throttle = reader.description().columns().stream()
                    .anyMatch(column -> column.channel().equals(Optional.of(LoadGate.ThrottleGate.THROTTLE)));
            if (throttle) {
                return Optional.empty();
            }
            LoadGate.Survey survey = new LoadGate.Survey(rules.gearing());
            for (Optional<Block> block = reader.next(); block.isPresent(); block = reader.next()) {
                survey.accept(block.get());
            }
            return survey.level();
        }
    }

    /** Takes the next rows in and gives the candidates that are over, in order. */
    public List<Candidate> accept(Block block) {
        Samples samples = block.samples();
        if (!started && samples.rows() > 0) {
            start(samples);
        }
        List<Candidate> found = new ArrayList<>();
        if (collector == null || !samples.has(TimedChannel.TIME)) {
            return found;
        }
        Samples.Cells times = samples.cells(TimedChannel.TIME);
        boolean isOneRun = !samples.has(RUN);
        for (int row = isOneRun ? pass(samples, times, 0) : 0; row < samples.rows(); ) {
            if (times.isPresent(row)) {
                for (TimeGuard.Placed placed : guard.offer(new TimeGuard.RowRef(samples, row, times.value(row)))) {
                    take(placed, found);
                }
            }
            row = isOneRun ? pass(samples, times, row + 1) : row + 1;
        }
        return found;
    }

    /**
     * Takes rows together that only go on: in their time, at full load or not as the row before, without knock. Most rows do; the first one
     * that does not.
     */
    private int pass(Samples samples, Samples.Cells times, int first) {
        StretchCollector stretches = Objects.requireNonNull(collector);
        int most = Math.min(first + MOST_TOGETHER, samples.rows());
        int end = stretches.steadyUntil(samples, times, first, most);
        end = end > first ? knock.quietUntil(samples, first, end) : first;
        end = end > first ? guard.pass(times, first, end) : first;
        if (end > first) {
            stretches.pass(samples, first, end);
            knock.pass(samples, first, end);
        }
        return end;
    }

    private void take(TimeGuard.Placed placed, List<Candidate> found) {
        StretchCollector stretches = Objects.requireNonNull(collector);
        boolean otherRun = isOtherRun(placed.ref());
        judge(stretches.accept(placed, otherRun), found);
        if (otherRun || placed.step() == TimeGuard.Step.NEW_RUN) {
            keepKnock(found);
        }
        knock.see(placed.ref());
        if (stretches.isIdle() && knock.isOver(placed.ref().timeS())) {
            keepKnock(found);
        }
    }

    /** Knock that no pull has taken is a stretch of its own. */
    private void keepKnock(List<Candidate> found) {
        SpeedSource from = speed;
        if (from != null && !knock.isEmpty()) {
            finishAside(found);
            knock.take().map(rows -> maker.knockAlone(rows, from)).ifPresent(found::add);
        }
    }

    /** The candidates that the end of the log ends. */
    public List<Candidate> finish() {
        List<Candidate> found = new ArrayList<>();
        if (collector != null) {
            judge(collector.finish(), found);
            finishAside(found);
            keepKnock(found);
        }
        return found;
    }

    /**
     * Data is missing from here on: a pull that is in progress is refused as cut, one whose load is off already is judged as it is, and
     * what comes next is another.
     */
    public List<Candidate> cut() {
        List<Candidate> found = new ArrayList<>();
        if (collector != null) {
            judge(collector.cut(), found);
            finishAside(found);
            keepKnock(found);
        }
        return found;
    }

    /**
     * The candidates of a stretch that is over, before {@link #accept} gives them: that waits for some rows more, which only tell when
     * lambda was measured. Empty when there is none.
     */
    public List<Candidate> ahead() {
        SpeedSource from = speed;
        if (collector == null || from == null) {
            return List.of();
        }
        return collector
                .over()
                .map(stretch -> {
                    CandidateMaker copy = maker.copy();
                    return knock.among(copy.candidates(copy.judged(stretch, from)));
                })
                .orElse(List.of());
    }

    /** Whether a stretch is over that {@link #accept} has not given yet. */
    public boolean isAhead() {
        return collector != null && collector.isOver();
    }

    /** Time of the log in s at which the engine went to the full load that it is at now; empty when it is not. */
    public OptionalDouble loadedSinceS() {
        return collector == null ? OptionalDouble.empty() : collector.openSinceS();
    }

    /** Good candidates that were refused as warming pulls so far. */
    public int thrownAway() {
        return maker.thrownAway();
    }

    /** Rows that are kept at the moment. */
    public int heldRows() {
        int held = collector == null ? 0 : collector.heldRows();
        return held + aside.map(JudgedAside::rows).orElse(0);
    }

    /** What is to be said about the source as a whole, so far. */
    public List<Finding> findings() {
        List<Finding> all = new ArrayList<>(findings);
        Place place = Place.inFile(source);
        if (gate instanceof LoadGate.ThrottleGate throttle
                && throttle.highest() < rules.pulls().fullLoad()
                && Double.isFinite(throttle.highest())) {
            all.add(Finding.warning(
                    FindingCode.THROTTLE_NEVER_FULL,
                    place,
                    Detail.of("percent", 100 * throttle.highest()),
                    Detail.of("want", 100 * rules.pulls().fullLoad())));
        }
        if (guard.leftOut() > 0) {
            all.add(Finding.warning(FindingCode.ROWS_OUT_OF_TIME, place, Detail.of("count", (double) guard.leftOut())));
        }
        return List.copyOf(all);
    }

    private void start(Samples samples) {
        started = true;
        Place place = Place.inFile(source);
        Optional<SpeedSource> found = SpeedSource.of(samples, rules.gearing());
        if (!samples.has(TimedChannel.TIME)) {
            findings.add(Finding.error(FindingCode.LOG_WITHOUT_TIME, place));
        }
        if (found.isEmpty()) {
            findings.add(Finding.error(FindingCode.LOG_WITHOUT_SPEED, place));
        }
        if (found.isEmpty() || !samples.has(TimedChannel.TIME)) {
            return;
        }
        SpeedSource from = found.get();
        switch (from.axis()) {
            case ENGINE -> {}
            case ENGINE_FROM_ROLLER -> findings.add(Finding.note(FindingCode.SPEED_FROM_ROLLER, place));
            case ROLLER -> findings.add(Finding.warning(FindingCode.SPEED_IS_ROLLER, place));
        }
        LoadGate newGate = gate(samples, from);
        boolean lambda = samples.has(LambdaDelay.LAMBDA);
        double after = lambda ? Math.max(AFTER_S, rules.lambdaDelayS().orElse(0) + AFTER_DELAY_S) : 0;
        speed = from;
        gate = newGate;
        collector = new StretchCollector(newGate, after);
    }

    private LoadGate gate(Samples samples, SpeedSource from) {
        if (samples.has(LoadGate.ThrottleGate.THROTTLE)) {
            return new LoadGate.ThrottleGate(rules.pulls().fullLoad());
        }
        Optional<LoadSignal> effort = LoadSignal.of(samples, from);
        String by = effort.map(source -> source.channel().role().id()).orElse("speed rising");
        findings.add(Finding.note(FindingCode.LOAD_WITHOUT_THROTTLE, Place.inFile(source), Detail.of("by", by)));
        return effort.isPresent() ? new LoadGate.EffortGate(effort.get(), level) : new LoadGate.RisingGate(from);
    }

    /** Whether the log numbers its runs and another one begins. */
    private boolean isOtherRun(TimeGuard.RowRef ref) {
        OptionalDouble now = ref.samples().find(RUN, ref.row());
        boolean other = now.isPresent() && run.isPresent() && now.getAsDouble() != run.getAsDouble();
        run = now.isPresent() ? now : run;
        return other;
    }

    private void judge(List<FullLoadStretch> stretches, List<Candidate> found) {
        SpeedSource from = speed;
        if (from != null) {
            for (FullLoadStretch stretch : stretches) {
                if (aside.isPresent() && knock.isEmpty()) {
                    found.addAll(aside.get().add(stretch, from));
                } else {
                    finishAside(found);
                    List<Candidate> candidates = knock.among(maker.candidates(maker.judged(stretch, from)));
                    if (!candidates.isEmpty()) {
                        knock.take();
                    }
                    found.addAll(candidates);
                }
            }
        }
    }

    /** Stretches that still are judged aside come before what follows; no knock was heard when they ended. */
    private void finishAside(List<Candidate> found) {
        aside.ifPresent(stretches -> found.addAll(stretches.finish()));
    }
}
