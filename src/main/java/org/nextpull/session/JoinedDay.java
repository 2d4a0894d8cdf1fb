package org.nextpull.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SourceDescription;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.pull.Refusal;

/**
 * Several days one after the other as one, under one plan: logs beside kept sessions. Pulls are numbered over all logs first and all
 * tables then, as everywhere; what was done by hand in a part follows its pulls. A pull that stands in several
 * of them counts once.
 *
 * @param input what the result is made from
 * @param sources the logs of all parts in order
 */
public record JoinedDay(SessionInput input, List<SourcePulls> sources) {
    public JoinedDay {
        sources = List.copyOf(sources);
    }

    public static JoinedDay of(SweepPlan plan, List<Part> parts) {
        List<SourcePulls> sources = new ArrayList<>();
        List<ResultTable> tables = new ArrayList<>();
        List<AskedSetting> settings = new ArrayList<>();
        Amendments amendments = Amendments.none();
        int candidates = parts.stream().mapToInt(Part::candidates).sum();
        int candidatesBefore = 0;
        int rowsBefore = 0;
        for (Part part : parts) {
            int own = part.candidates();
            int intoCandidates = candidatesBefore;
            int intoRows = candidates + rowsBefore - own;
            amendments = amendments.with(part.input()
                    .amendments()
                    .renumbered(pull -> pull <= own ? pull + intoCandidates : pull + intoRows));
            sources.addAll(part.sources());
            tables.addAll(part.input().tables());
            settings.addAll(part.input().settings());
            candidatesBefore += own;
            rowsBefore += part.rows();
        }
        SessionInput input =
                SessionInput.of(plan, List.of(), tables).withSettings(settings).withAmendments(amendments);
        return new JoinedDay(input, DuplicatePulls.in(sources, input.amendments()));
    }

    /**
     * Lets a pull count once that stands in a day more than once, as when a log is named beside the session that keeps it: counted twice it
     * would narrow every interval by nothing.
     */
    private static final class DuplicatePulls {
        private final List<SourcePulls> sources;
        private final Amendments amendments;

        /** Number of a pull over the day, and the source of the copy that counts in its place. */
        private final Map<Integer, String> otherSource = new HashMap<>();

        private DuplicatePulls(List<SourcePulls> sources, Amendments amendments) {
            this.sources = sources;
            this.amendments = amendments;
        }

        /** The same sources with all copies of a pull but one refused; the numbers of the pulls stay. */
        static List<SourcePulls> in(List<SourcePulls> sources, Amendments amendments) {
            if (sources.size() < 2) {
                return sources;
            }
            DuplicatePulls day = new DuplicatePulls(sources, amendments);
            day.copies().values().stream().filter(same -> same.size() > 1).forEach(day::choose);
            return day.otherSource.isEmpty() ? sources : day.refused();
        }

        /** A pull where it stands, by its number over the day. */
        private record Copy(int number, String source, Candidate candidate) {
            boolean isThrownAway() {
                return candidate
                        .refusal()
                        .filter(refusal -> refusal.reason() == Refusal.Reason.THROWN_AWAY_FIRST)
                        .isPresent();
            }
        }

        private Map<String, List<Copy>> copies() {
            Map<String, List<Copy>> byPrint = new LinkedHashMap<>();
            int number = 0;
            for (SourcePulls source : sources) {
                for (Candidate candidate : source.candidates()) {
                    number++;
                    Samples samples = candidate.samples();
                    if (samples.rows() > 0) {
                        byPrint.computeIfAbsent(PullFingerprint.of(samples), print -> new ArrayList<>())
                                .add(new Copy(number, source.name(), candidate));
                    }
                }
            }
            return byPrint;
        }

        /**
         * One copy counts, rather one that the operator amended than another. What somebody struck, or what was thrown away as warming up,
         * does not come in by another door.
         */
        private void choose(List<Copy> same) {
            Copy counts = same.stream()
                    .filter(this::isOut)
                    .findFirst()
                    .or(() -> same.stream().filter(this::isCorrected).findFirst())
                    .or(() -> same.stream()
                            .filter(copy -> copy.candidate().isUsable())
                            .findFirst())
                    .orElse(same.get(0));
            same.stream()
                    .filter(copy -> !copy.equals(counts))
                    .forEach(copy -> otherSource.put(copy.number(), counts.source()));
        }

        private boolean isOut(Copy copy) {
            return copy.isThrownAway() || amendments.struck().containsKey(copy.number());
        }

        private boolean isCorrected(Copy copy) {
            Set<Integer> corrected = amendments.corrected().keySet();
            return copy.candidate().isUsable() && corrected.contains(copy.number());
        }

        private List<SourcePulls> refused() {
            List<SourcePulls> once = new ArrayList<>();
            int number = 0;
            for (SourcePulls source : sources) {
                List<Candidate> candidates = new ArrayList<>();
                for (Candidate candidate : source.candidates()) {
                    number++;
                    candidates.add(Optional.ofNullable(otherSource.get(number))
                            .map(other -> candidate.refused(refusal(candidate, other)))
                            .orElse(candidate));
                }
                once.add(source.withCandidates(candidates));
            }
            return once;
        }

        private static Refusal refusal(Candidate candidate, String other) {
            return new Refusal(
                    Refusal.Reason.COUNTED_ALREADY,
                    Finding.warning(
                            FindingCode.PULL_COUNTED_ALREADY,
                            Place.inFile(candidate.source()).withPull(candidate.number()),
                            Detail.of("other", other)));
        }
    }

    /**
     * A day, or a part of one, that can be put beside others.
     *
     * @param input tables, settings and amendments; its plan does not count
     * @param sources its logs
     */
    public record Part(SessionInput input, List<SourcePulls> sources) {
        public Part {
            sources = List.copyOf(sources);
        }

        int candidates() {
            return sources.stream()
                    .mapToInt(source -> source.candidates().size())
                    .sum();
        }

        int rows() {
            return input.tables().stream()
                    .mapToInt(table -> table.rows().size())
                    .sum();
        }

        /**
         * The same under another name: its only log or table is called that, several are called that with their own name behind a slash. Each
         * setting then names the pull that it belongs to.
         */
        public Part named(String name) {
            boolean single = sources.size() + input.tables().size() == 1;
            AskedSettings asked = AskedSettings.match(input.settings(), sources);
            List<SourcePulls> renamed = new ArrayList<>();
            List<AskedSetting> settings = new ArrayList<>();
            for (SourcePulls source : sources) {
                String to = single ? name : name + "/" + source.name();
                renamed.add(renamed(source, to));
                for (Candidate candidate : source.candidates()) {
                    asked.of(source.name(), candidate.number())
                            .map(setting -> setting.of(to, candidate.number()))
                            .ifPresent(settings::add);
                }
            }
            List<ResultTable> tables = input.tables().stream()
                    .map(table -> renamed(
                            table,
                            single ? name : name + "/" + table.description().name()))
                    .toList();
            SessionInput changed = new SessionInput(
                    input.plan(), List.of(), tables, settings, input.amendments(), input.experience(), input.now());
            return new Part(changed, renamed);
        }

        private static SourcePulls renamed(SourcePulls source, String name) {
            return new SourcePulls(
                    name,
                    source.description(),
                    source.rowCount(),
                    source.candidates().stream()
                            .map(candidate -> candidate.withSource(name))
                            .toList(),
                    source.alarms(),
                    source.findings(),
                    source.thrownAway());
        }

        private static ResultTable renamed(ResultTable table, String name) {
            SourceDescription before = table.description();
            return new ResultTable(
                    new SourceDescription(
                            name, before.encoding(), before.separator(), before.decimal(), before.columns()),
                    table.rows(),
                    table.rowCount());
        }
    }
}
