package org.nextpull.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.pull.Candidate;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.Reading;
import org.nextpull.response.TableResponses;

/**
 * The pulls of a day with their curves, before anything is concluded from them.
 *
 * @param sources the logs that were read
 * @param measured all pulls in the order of the day
 * @param orderFrom where that order comes from
 * @param found what was found on the way to them
 */
record MeasuredDay(
        List<SourcePulls> sources,
        List<MeasuredPull.Curve> measured,
        SessionResult.OrderFrom orderFrom,
        List<Finding> found) {
    MeasuredDay {
        sources = List.copyOf(sources);
        measured = List.copyOf(measured);
        found = List.copyOf(found);
    }

    /** The day as it stood after its first pulls. */
    MeasuredDay first(int pulls) {
        return new MeasuredDay(sources, measured.subList(0, pulls), orderFrom, found);
    }

    /** Measures the pulls of a day. */
    static MeasuredDay of(SessionInput input, List<SourcePulls> sources) {
        return of(input, sources, new MeasureCache());
    }

    /** The same of a day that goes on. */
    static MeasuredDay of(SessionInput input, List<SourcePulls> sources, MeasureCache once) {
        AskedSettings settings = AskedSettings.match(input.settings(), sources);
        DayOrder order = DayOrder.of(input, sources, settings);
        List<MeasuredPull.Curve> measured =
                CandidatePulls.of(input.plan(), measured(input, sources, settings, order, once));
        List<Finding> findings = new ArrayList<>(settings.findings());
        findings.addAll(order.findings());
        if (measured.stream().noneMatch(one -> one.pull().isUsed())) {
            findings.addAll(noPull(input, sources));
        }
        return new MeasuredDay(sources, measured, order.from(), findings);
    }

    /** That there is no pull to go by, for each file that should have held one. */
    private static List<Finding> noPull(SessionInput input, List<SourcePulls> sources) {
        List<Finding> each = Stream.concat(
                        sources.stream().map(SourcePulls::name),
                        input.tables().stream().map(table -> table.description().name()))
                .map(file -> Finding.error(FindingCode.NO_PULL_TO_USE, Place.inFile(file)))
                .toList();
        return each.isEmpty() ? List.of(Finding.error(FindingCode.NO_PULL_TO_USE, Place.nowhere())) : each;
    }

    /** Every candidate of the day, in the order in which they were run. */
    private static List<MeasuredPull.Curve> measured(
            SessionInput input, List<SourcePulls> sources, AskedSettings settings, DayOrder order, MeasureCache once) {
        once.begin();
        List<MeasuredPull.Curve> measured = new ArrayList<>();
        for (SourcePulls source : sources) {
            Optional<AskedSetting> last = Optional.empty();
            for (Candidate candidate : source.candidates()) {
                int number = measured.size() + 1;
                Optional<AskedSetting> before = candidate.isKnockAlone() ? last : Optional.empty();
                Optional<AskedSetting> noted =
                        settings.of(source.name(), candidate.number()).or(() -> before);
                Optional<AskedSetting> asked = input.amendments()
                        .correctionOf(number)
                        .map(correction -> correction.orElse(noted.orElseGet(AskedSetting::none)))
                        .or(() -> noted);
                last = asked.map(AskedSetting::ofNextPull).or(() -> before);
                measured.add(
                        said(input, once.measure(input.plan(), candidate, asked, source.alarmsOf(candidate), number)));
            }
        }
        for (ResultTable table : input.tables()) {
            TableResponses.of(table, input.plan(), measured.size() + 1).stream()
                    .forEach(pull -> measured.add(new MeasuredPull.Curve(pull, Optional.empty(), List.of())));
        }
        return HeldSpeeds.alike(measured).stream()
                .map(one -> one.withPull(order.place(one.pull())))
                .map(one -> one.withPull(
                        Reading.positive(one.pull(), input.plan().goal().response())))
                .map(one -> struck(input, one))
                .sorted(Comparator.comparingDouble(one -> one.pull().order()))
                .toList();
    }

    private static MeasuredPull.Curve said(SessionInput input, MeasuredPull.Curve one) {
        MeasuredPull pull = one.pull();
        if (!input.amendments().assumed().contains(pull.number())) {
            return one;
        }
        Place place = Place.inFile(pull.origin().source()).withPull(pull.number());
        return one.withPull(pull.withFinding(Finding.warning(FindingCode.SETTING_ASSUMED, place)));
    }

    private static MeasuredPull.Curve struck(SessionInput input, MeasuredPull.Curve one) {
        MeasuredPull pull = one.pull();
        return input.amendments().struck().containsKey(pull.number())
                ? one.withPull(pull.withStanding(MeasuredPull.Status.STRUCK))
                : one;
    }

    /**
     * Pulls of a day of candidates: each belongs to one, by its label or else to that of the pull before, and runs on its fuel. The first
     * pull after a change flushes the line: it counts for nothing, but its knock and limits stay.
     */
    private static final class CandidatePulls {
        private CandidatePulls() {}

        /** The pulls in their order, as the plan's candidates make them; unchanged where it has none. */
        static List<MeasuredPull.Curve> of(SweepPlan plan, List<MeasuredPull.Curve> measured) {
            if (!plan.decides()) {
                return measured;
            }
            List<MeasuredPull.Curve> pulls = new ArrayList<>();
            String fitted = plan.candidates().get(0).label();
            boolean flushed = true;
            for (MeasuredPull.Curve one : measured) {
                String label = one.pull().setting().label().orElse(fitted);
                flushed &= label.equals(fitted);
                fitted = label;
                MeasuredPull pull = known(plan, one.pull().withLabel(label));
                if (!flushed && pull.isPull()) {
                    pull = pull.isUsed() ? flushing(pull, label) : pull;
                    flushed = true;
                }
                pulls.add(one.withPull(pull));
            }
            return List.copyOf(pulls);
        }

        private static MeasuredPull known(SweepPlan plan, MeasuredPull pull) {
            Optional<SweepPlan.Candidate> candidate = pull.setting().label().flatMap(plan::candidate);
            if (candidate.isEmpty()) {
                return pull.withFinding(Finding.warning(
                        FindingCode.CANDIDATE_UNKNOWN,
                        place(pull),
                        Detail.of("label", pull.setting().label().orElse(""))));
            }
            return candidate.get().fuel().map(pull::withFuel).orElse(pull);
        }

        private static MeasuredPull flushing(MeasuredPull pull, String label) {
            return pull.withStanding(MeasuredPull.Status.THROWN_AWAY)
                    .withFinding(Finding.note(FindingCode.PULL_FLUSHES, place(pull), Detail.of("label", label)));
        }

        private static Place place(MeasuredPull pull) {
            return Place.inFile(pull.origin().source()).withPull(pull.number());
        }
    }
}
