package org.nextpull.pull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.math.Series;

/** Numbers the drafts of a source, lines their lambda up, and makes candidates of them. */
final class CandidateMaker {
    /** Share of missing rows that is said, and that refuses a pull. */
    private static final double MISSING_SAID = 0.02;

    private static final double MISSING_REFUSED = 0.2;

    /** Least share of the log's best torque that is full load. */
    private static final double FULL_LOAD_SHARE = 0.6;

    private final String source;
    private final PullRules rules;
    private final Optional<LoadGate.Level> level;
    private int number;
    private int thrownAway;

    CandidateMaker(String source, PullRules rules, Optional<LoadGate.Level> level) {
        this.source = source;
        this.rules = rules;
        this.level = level;
    }

    /** One that goes on as this would, and leaves this as it is. */
    CandidateMaker copy() {
        CandidateMaker copy = new CandidateMaker(source, rules, level);
        copy.number = number;
        copy.thrownAway = thrownAway;
        return copy;
    }

    int thrownAway() {
        return thrownAway;
    }

    /**
     * What a stretch is, before its candidates have numbers.
     *
     * @param drafts its candidates; nothing else counts where there are none
     */
    record Judged(
            FullLoadStretch stretch,
            SpeedSource speed,
            SpeedTrace trace,
            List<CandidateDraft> drafts,
            Candidate.LambdaAlignment alignment) {}

    /** Judges a stretch, which may be done while earlier ones are numbered. */
    Judged judged(FullLoadStretch stretch, SpeedSource speed) {
        SpeedTrace trace = SpeedTrace.of(stretch.samples(), stretch.core(), speed);
        List<CandidateDraft> drafts = new StretchJudge(stretch, trace, speed, rules).drafts();
        return new Judged(
                stretch,
                speed,
                trace,
                drafts,
                drafts.isEmpty() ? new Candidate.LambdaAlignment.NotApplied() : alignment(stretch));
    }

    /** Numbers the candidates of a stretch; call it in the order of the stretches. */
    List<Candidate> candidates(Judged judged) {
        List<CandidateDraft> drafts = judged.drafts();
        List<Candidate> candidates = new ArrayList<>();
        for (CandidateDraft draft : drafts) {
            boolean cut = judged.stretch().end() == FullLoadStretch.End.CUT && candidates.size() == drafts.size() - 1;
            candidates.add(candidate(cut ? stopped(draft) : draft, judged));
        }
        return candidates;
    }

    /** A candidate of rows in which knock was counted outside any pull. */
    Candidate knockAlone(Samples knock, SpeedSource speed) {
        number++;
        Place place = Place.inFile(source).withLine(knock.line(0)).withPull(number);
        double[] rpm = IntStream.range(0, knock.rows())
                .mapToDouble(row -> speed.rpm(knock, row).orElse(0))
                .toArray();
        double from = rpm[0];
        double to = rpm[rpm.length - 1];
        KnockReading reading = KnockReading.of(knock);
        Finding said = Finding.warning(
                FindingCode.PULL_KNOCK_ALONE,
                place,
                Detail.of("low", Arrays.stream(rpm).min().orElseThrow()),
                Detail.of("high", Arrays.stream(rpm).max().orElseThrow()),
                Detail.of(
                        "events",
                        IntStream.range(0, knock.rows())
                                .mapToDouble(row -> reading.knocks(row, rules.knockLevel()))
                                .sum()));
        return new Candidate(
                number,
                source,
                Candidate.Lines.of(knock),
                from > to ? Candidate.Kind.FALLING : Candidate.Kind.RISING,
                from,
                to,
                new Samples.AtHand(knock),
                List.of(),
                speed,
                new Candidate.LambdaAlignment.NotApplied(),
                knock,
                Optional.of(new Refusal(Refusal.Reason.KNOCK_ALONE, said)),
                List.of());
    }

    private static CandidateDraft stopped(CandidateDraft draft) {
        return draft.withObjection(CandidateDraft.Objection.of(Refusal.Reason.DATA_STOPPED));
    }

    private Candidate.LambdaAlignment alignment(FullLoadStretch stretch) {
        boolean logged = stretch.samples().has(LambdaDelay.LAMBDA);
        if (!logged) {
            return new Candidate.LambdaAlignment.NotApplied();
        }
        if (rules.lambdaDelayS().isPresent()) {
            return new Candidate.LambdaAlignment.Given(rules.lambdaDelayS().getAsDouble());
        }
        Optional<Candidate.LambdaAlignment.Estimated> estimate = LambdaDelay.of(stretch);
        return estimate.isPresent() ? estimate.get() : new Candidate.LambdaAlignment.NotApplied();
    }

    private Candidate candidate(CandidateDraft draft, Judged judged) {
        number++;
        Samples all = judged.stretch().samples();
        SpeedTrace trace = judged.trace();
        SpeedSource speed = judged.speed();
        Candidate.LambdaAlignment alignment = judged.alignment();
        TrimmedRows rows = TrimmedRows.of(all, trace, draft.parts(), alignment.appliedS());
        Place place = Place.inFile(source).withLine(rows.samples().line(0)).withPull(number);
        List<Finding> findings = new ArrayList<>();
        double missing = missing(rows);
        Optional<CandidateDraft.Objection> objection = draft.objection()
                .or(() -> draft.kind().isSweep()
                        ? WheelSlip.of(rows.samples(), speed, rules.gearing())
                        : Optional.empty())
                .or(() -> missing > MISSING_REFUSED
                        ? Optional.of(CandidateDraft.Objection.of(
                                Refusal.Reason.ROWS_DROPPED, Detail.of("percent", 100 * missing)))
                        : Optional.empty())
                .or(() -> tooLittleLoad(rows.samples(), speed))
                .or(this::throwAway);
        if (objection.isEmpty() && missing > MISSING_SAID) {
            findings.add(Finding.warning(FindingCode.PULL_ROWS_MISSING, place, Detail.of("percent", 100 * missing)));
        }
        if (rows.spikes() > 0) {
            findings.add(Finding.warning(FindingCode.PULL_SPEED_SPIKES, place, Detail.of("count", rows.spikes())));
        }
        lambdaFinding(all, alignment, place).ifPresent(findings::add);
        Optional<Refusal> refusal = objection.map(why -> new Refusal(
                why.reason(), new Finding(why.reason().code(), why.reason().severity(), why.details(), place)));
        return new Candidate(
                number,
                source,
                Candidate.Lines.of(rows.samples()),
                draft.kind(),
                rpm(draft, draft.first(), true, trace),
                rpm(draft, draft.last(), false, trace),
                new Samples.AtHand(rows.samples()),
                draft.kind().isSweep() ? List.of() : rows.parts(),
                speed,
                alignment,
                KnockRows.NONE,
                refusal,
                findings);
    }

    private static double rpm(CandidateDraft draft, SpeedTrace.Points part, boolean atStart, SpeedTrace trace) {
        if (!draft.kind().isSweep()) {
            return part.meanRpm(trace);
        }
        return trace.smoothRpm(atStart ? part.first() : part.last());
    }

    /** Share of the rows that are missing, by the usual distance of the others. */
    private static double missing(TrimmedRows rows) {
        double expected = 0;
        double present = 0;
        Samples.Cells times = rows.samples().cells(TimedChannel.TIME);
        for (RowRange part : rows.parts()) {
            if (part.rows() < 3) {
                continue;
            }
            double usual = TimedChannel.usualStepS(times::value, part.first(), part.end() - 1);
            if (usual > 0) {
                expected += (times.value(part.end() - 1) - times.value(part.first())) / usual;
                present += part.rows() - 1;
            }
        }
        return expected > present ? 1 - present / expected : 0;
    }

    private Optional<CandidateDraft.Objection> tooLittleLoad(Samples samples, SpeedSource speed) {
        if (samples.has(LoadGate.ThrottleGate.THROTTLE) || level.isEmpty()) {
            return Optional.empty();
        }
        return LoadSignal.of(samples, speed).flatMap(effort -> {
            double[] torques = new double[samples.rows()];
            int count = 0;
            for (int row = 0; row < samples.rows(); row++) {
                OptionalDouble torque = effort.newtonMetres(samples, row);
                if (torque.isPresent()) {
                    torques[count++] = torque.getAsDouble();
                }
            }
            if (count == 0) {
                return Optional.empty();
            }
            double share =
                    Series.copyOf(torques, 0, count).median() / level.get().newtonMetres();
            return share >= FULL_LOAD_SHARE
                    ? Optional.empty()
                    : Optional.of(CandidateDraft.Objection.of(
                            Refusal.Reason.LOAD_TOO_LOW, Detail.of("percent", 100 * share)));
        });
    }

    private Optional<CandidateDraft.Objection> throwAway() {
        if (thrownAway >= rules.throwAwayFirst()) {
            return Optional.empty();
        }
        thrownAway++;
        return Optional.of(CandidateDraft.Objection.of(
                Refusal.Reason.THROWN_AWAY_FIRST, Detail.of("count", rules.throwAwayFirst())));
    }

    private static Optional<Finding> lambdaFinding(Samples samples, Candidate.LambdaAlignment alignment, Place place) {
        if (!samples.has(LambdaDelay.LAMBDA) || alignment instanceof Candidate.LambdaAlignment.Given) {
            return Optional.empty();
        }
        if (alignment instanceof Candidate.LambdaAlignment.Estimated estimate) {
            return Optional.of(Finding.note(
                    FindingCode.LAMBDA_DELAY_ESTIMATED,
                    place,
                    Detail.of("seconds", estimate.appliedS()),
                    Detail.of("error", estimate.errorS())));
        }
        return Optional.of(Finding.note(FindingCode.LAMBDA_DELAY_NOT_APPLIED, place));
    }

    /**
     * The rows of a candidate: its parts of the stretch without impossible speeds, lambda read as much later as its sensor lags.
     *
     * @param samples the rows
     * @param parts the parts as rows of the samples
     * @param spikes rows left out for their speed
     */
    private record TrimmedRows(Samples samples, List<RowRange> parts, int spikes) {
        TrimmedRows {
            parts = List.copyOf(parts);
        }

        static TrimmedRows of(Samples all, SpeedTrace trace, List<SpeedTrace.Points> parts, double lambdaDelayS) {
            int[] spikeRows = trace.spikeRows();
            SamplesBuilder builder = Samples.builder(all.channels());
            List<RowRange> ranges = new ArrayList<>();
            int spikes = 0;
            for (SpeedTrace.Points part : parts) {
                int first = builder.rows();
                int row = trace.row(part.first());
                int end = trace.row(part.last()) + 1;
                for (int spike : spikeRows) {
                    if (spike >= row && spike < end) {
                        builder.appendRows(all, row, spike);
                        row = spike + 1;
                        spikes++;
                    }
                }
                builder.appendRows(all, row, end);
                ranges.add(new RowRange(first, builder.rows()));
            }
            // rows that were added at once fill their arrays; others are copied into arrays that they fill
            Samples samples = ranges.size() == 1 && spikes == 0 ? builder.take() : builder.build();
            return new TrimmedRows(lambdaDelayS > 0 ? late(samples, all, lambdaDelayS) : samples, ranges, spikes);
        }

        private static Samples late(Samples rows, Samples all, double delayS) {
            Samples late = rows;
            for (Channel channel : all.channels()) {
                if (channel.role() == Role.LAMBDA || channel.role() == Role.AIR_FUEL_RATIO) {
                    int[] shown = rows.presentRows(channel);
                    TimedChannel.Reading lagging = TimedChannel.of(all, channel)
                            .at(TimedChannel.of(rows, channel), new RowRange(0, shown.length), delayS);
                    late = late.reread(
                            channel,
                            Arrays.stream(lagging.indices, 0, lagging.size())
                                    .map(index -> shown[index])
                                    .toArray(),
                            lagging.values);
                }
            }
            return late;
        }
    }
}
