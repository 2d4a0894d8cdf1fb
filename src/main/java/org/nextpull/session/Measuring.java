package org.nextpull.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.ResultTable;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.pull.Candidate;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.PullMeasure;
import org.nextpull.response.PullStatus;
import org.nextpull.response.Reading;
import org.nextpull.response.TableResponses;

/** Measures every candidate of the day and puts the pulls into the order in which they were run. */
final class Measuring {
    private final SessionInput input;
    private final PullMeasure measure;

    Measuring(SessionInput input) {
        this.input = input;
        this.measure = new PullMeasure(input.plan());
    }

    List<MeasuredCurve> measure(List<SourcePulls> sources, AskedSettings settings) {
        List<MeasuredCurve> measured = new ArrayList<>();
        DayOrder order = DayOrder.of(input, sources, settings);
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
                measured.add(said(measure.measure(candidate.atHand(), asked, source.alarmsOf(candidate), number)));
            }
        }
        for (ResultTable table : input.tables()) {
            TableResponses.of(table, input.plan(), measured.size() + 1).stream()
                    .forEach(pull -> measured.add(new MeasuredCurve(pull, Optional.empty(), List.of())));
        }
        return HeldSpeeds.alike(measured).stream()
                .map(one -> one.withPull(order.place(one.pull())))
                .map(one -> one.withPull(
                        Reading.positive(one.pull(), input.plan().goal().response())))
                .map(this::struck)
                .sorted(Comparator.comparingDouble(one -> one.pull().order()))
                .toList();
    }

    private MeasuredCurve said(MeasuredCurve one) {
        MeasuredPull pull = one.pull();
        if (!input.amendments().assumed().contains(pull.number())) {
            return one;
        }
        Place place = Place.inFile(pull.origin().source()).withPull(pull.number());
        return one.withPull(pull.withFinding(Finding.warning(FindingCode.SETTING_ASSUMED, place)));
    }

    private MeasuredCurve struck(MeasuredCurve one) {
        MeasuredPull pull = one.pull();
        return input.amendments().struck().containsKey(pull.number())
                ? one.withPull(pull.withStanding(PullStatus.STRUCK))
                : one;
    }
}
