package org.nextpull.session;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.advice.Advice;
import org.nextpull.advice.Verdict;
import org.nextpull.alarm.ChannelLife;
import org.nextpull.channel.Channel;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Finding;
import org.nextpull.finding.GatheredFindings;
import org.nextpull.finding.WrittenId;
import org.nextpull.fit.Experience;
import org.nextpull.plan.Limit;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.scatter.Repeatability;
import org.nextpull.scatter.Scatter;

/**
 * Everything that the tool has to say about a day. Report, charts, command line and window only show it.
 *
 * @param plan the sweep plan
 * @param sources the logs that were read
 * @param tables the tables of results that were read
 * @param measured all pulls in the order of the day, with their curves
 * @param orderFrom where that order comes from
 * @param repeatability scatter and drift of the day
 * @param experience what earlier days taught and the verdict used
 * @param verdict the fits and the next step; empty when the plan sweeps nothing, or when something hinders it that the findings name
 * @param candidates how far the day has come between its candidates; empty where the plan has none
 * @param amendments what the operator changed by hand
 * @param findings what is wrong or worth saying, beside that of single pulls
 */
public record SessionResult(
        SweepPlan plan,
        List<SourcePulls> sources,
        List<ResultTable> tables,
        List<MeasuredPull.Curve> measured,
        OrderFrom orderFrom,
        Repeatability repeatability,
        Optional<Experience> experience,
        Optional<Verdict> verdict,
        Optional<CandidateDay> candidates,
        Amendments amendments,
        List<Finding> findings) {
    /** Level, peak, curvature and drift. */
    private static final double FITTED = 4;

    public SessionResult {
        sources = List.copyOf(sources);
        tables = List.copyOf(tables);
        measured = List.copyOf(measured);
        findings = List.copyOf(findings);
    }

    public List<MeasuredPull> pulls() {
        return measured.stream().map(MeasuredPull.Curve::pull).toList();
    }

    /** What to do next; empty where nothing can be advised. */
    public Optional<Advice> advice() {
        return verdict.map(Verdict::advice);
    }

    /** The pull of that number over the day. */
    public Optional<MeasuredPull.Curve> pull(int number) {
        return measured.stream().filter(one -> one.pull().number() == number).findFirst();
    }

    /** The days on which it was run, the first first, by the clocks of the logs or the dates in their names; empty where neither tells. */
    public List<LocalDate> days() {
        return Stream.concat(
                        sources.stream()
                                .flatMap(source -> source.candidates().stream()
                                        .flatMap(pull -> DayOrder.day(source.name(), pull).stream())),
                        tables.stream()
                                .flatMap(table ->
                                        DaysApart.dayIn(table.description().name()).stream()))
                .distinct()
                .sorted()
                .toList();
    }

    /** Scatter from pull to pull: by repeats, else as the fit of a sweep has it, known as well as pulls beyond what it fits tell. */
    public Optional<Scatter> scatter() {
        double freedom =
                Math.max(1, pulls().stream().filter(MeasuredPull::isUsed).count() - FITTED);
        return repeatability
                .scatter()
                .or(() -> verdict.flatMap(Verdict::surface).map(fit -> new Scatter(fit.scatterPercent(), freedom)));
    }

    /** The limits of the plan that no live channel watched, and in which pulls. */
    public List<WatchGap> watchGaps() {
        return WatchGap.of(plan, pulls());
    }

    /** The limits that nothing watched in the last pull. */
    public List<Limit> unwatchedNow() {
        return measured.isEmpty()
                ? List.of()
                : plan.watched().stream()
                        .filter(limit ->
                                !measured.get(measured.size() - 1).pull().isWatched(limit))
                        .toList();
    }

    /** Whether nothing was met in a pull, or the operator lifted what was: only such a pull may be called the best. */
    public boolean isClean(MeasuredPull pull) {
        return pull.isClean() || amendments.lifted().contains(pull.number());
    }

    /** What was found of the day, its plan and its files, beside that of single pulls; equal ones gathered. */
    public List<Finding> foundOfDay() {
        GatheredFindings all = new GatheredFindings();
        all.addAll(findings);
        verdict.ifPresent(said -> all.addAll(said.findings()));
        sources.forEach(source -> all.addAll(source.findings()));
        return all.findings();
    }

    /** Everything that was found: of the day and of every pull. Every door says these, and no other list. */
    public List<Finding> found() {
        GatheredFindings all = new GatheredFindings();
        all.addAll(foundOfDay());
        measured.forEach(one -> all.addAll(one.pull().findings()));
        return all.findings();
    }

    /** Whether a pull counts, and where the plan sweeps, gives the figure that is fitted: without one there is no answer. */
    public boolean isWithoutAnswer() {
        List<MeasuredPull> pulls = pulls();
        boolean sweeps = plan.timing().isPresent() || plan.mixture().isPresent();
        return sweeps
                ? verdict.isEmpty() || Reading.of(pulls, plan.goal().response()).isEmpty()
                : pulls.stream().noneMatch(MeasuredPull::isUsed);
    }

    /** Whether anything was found that could be used. */
    public boolean hasPulls() {
        return !measured.isEmpty();
    }

    /** Where the order of the pulls of a day comes from. */
    public enum OrderFrom implements WrittenId {
        /** An order column of a log, of the settings file or of a table. */
        ORDER_COLUMN,
        /** The dates and times of day in the logs. */
        CLOCK,
        /** The order in which files were named and pulls stand in them. */
        COMMAND_LINE;
    }

    /**
     * A limit of the plan that no live channel watched in some pulls of a day.
     *
     * @param what the limit, and what was wrong with the channel
     * @param pulls numbers of those pulls, in their order
     * @param inAll whether they are all pulls of the day
     */
    public record WatchGap(MeasuredPull.Unwatched what, List<Integer> pulls, boolean inAll) {
        public WatchGap {
            pulls = List.copyOf(pulls);
        }

        public Limit limit() {
            return what.limit();
        }

        /** The gaps of a day, in the order of the limits. */
        static List<WatchGap> of(SweepPlan plan, List<MeasuredPull> pulls) {
            Map<MeasuredPull.Unwatched, List<Integer>> numbers = new LinkedHashMap<>();
            for (Limit limit : plan.watched()) {
                for (MeasuredPull pull : pulls) {
                    missing(limit, pull)
                            .forEach(what -> numbers.computeIfAbsent(what, key -> new ArrayList<>())
                                    .add(pull.number()));
                }
            }
            return numbers.entrySet().stream()
                    .map(entry -> new WatchGap(
                            entry.getKey(), entry.getValue(), entry.getValue().size() == pulls.size()))
                    .toList();
        }

        private static List<MeasuredPull.Unwatched> missing(Limit limit, MeasuredPull pull) {
            if (limit == Limit.KNOCK) {
                return pull.isWatched(limit)
                        ? List.of()
                        : List.of(new MeasuredPull.Unwatched(limit, Channel.of(limit.role()), ChannelLife.Life.BLANK));
            }
            return pull.unwatched().stream()
                    .filter(what -> what.limit() == limit)
                    .toList();
        }
    }
}
