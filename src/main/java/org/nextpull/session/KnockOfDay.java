package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.nextpull.channel.KnockMark;
import org.nextpull.channel.SparkMap;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.SparkTakenOut;

/** What only the pulls of a day together tell of knock: an ignition that takes out advance, and a counter that never counted. */
final class KnockOfDay {
    /** Of pulls beyond so many nobody was led by what is asked here: they are an archive's. */
    private static final int MOST_ASKED = 60;

    private KnockOfDay() {}

    /**
     * The pulls with what the ignition took out in each, judged by the pulls of the day so far. Where cells of a map are set one by one,
     * an advance below that of the other pulls is as likely the operator's own, so a pull is judged by the map that was asked for.
     *
     * @param asked the map that the pulls before one ask for
     * @param known pulls by their place that no later pull says more of; grows
     */
    static List<MeasuredPull.Curve> heard(
            SweepPlan plan,
            List<MeasuredPull.Curve> measured,
            Function<List<MeasuredPull>, Optional<SparkMap>> asked,
            Map<Integer, MeasuredPull.Curve> known) {
        if (plan.timing()
                .map(TimingPlan::sets)
                .filter(TimingPlan.Sets.MAP::equals)
                .isPresent()) {
            return heardByMap(measured, asked, known);
        }
        List<MeasuredPull> pulls =
                measured.stream().map(MeasuredPull.Curve::pull).toList();
        List<MeasuredPull.Curve> heard = new ArrayList<>();
        for (int place = 0; place < pulls.size(); place++) {
            boolean isSettled = place + SparkTakenOut.REACH < pulls.size();
            if (isSettled && known.containsKey(place)) {
                heard.add(known.get(place));
                continue;
            }
            MeasuredPull pull = pulls.get(place);
            List<MeasuredPull> near = pulls.subList(
                    Math.max(0, place - SparkTakenOut.REACH), Math.min(pulls.size(), place + SparkTakenOut.REACH + 1));
            MeasuredPull.Curve one = measured.get(place)
                    .withPull(pull.withKnock(pull.knock().withTakenOut(SparkTakenOut.in(pull, near))));
            heard.add(one);
            if (isSettled) {
                known.put(place, one);
            }
        }
        return heard;
    }

    private static List<MeasuredPull.Curve> heardByMap(
            List<MeasuredPull.Curve> measured,
            Function<List<MeasuredPull>, Optional<SparkMap>> asked,
            Map<Integer, MeasuredPull.Curve> known) {
        List<MeasuredPull.Curve> heard = new ArrayList<>();
        List<MeasuredPull> before = new ArrayList<>();
        for (int place = 0; place < measured.size(); place++) {
            MeasuredPull.Curve one = measured.get(place);
            MeasuredPull pull = one.pull();
            MeasuredPull.Curve judged = known.computeIfAbsent(place, at -> {
                boolean isAsked = at < MOST_ASKED && SparkTakenOut.mayBeIn(pull, before);
                List<SparkTakenOut> out = isAsked
                        ? asked.apply(before)
                                .map(map -> SparkTakenOut.in(pull, map))
                                .orElse(List.of())
                        : List.of();
                return one.withPull(pull.withKnock(pull.knock().withTakenOut(out)));
            });
            heard.add(judged);
            before.add(judged.pull());
        }
        return heard;
    }

    static List<Finding> findings(List<MeasuredPull> pulls) {
        List<Finding> findings = new ArrayList<>();
        for (MeasuredPull pull : pulls) {
            KnockHeard knock = pull.knock();
            knock.takenOut().stream()
                    .max((one, other) -> Double.compare(one.deg(), other.deg()))
                    .map(most -> Finding.warning(
                            knock.isDenied() ? FindingCode.SPARK_TAKEN_OUT : FindingCode.SPARK_TAKEN_OUT_KNOCK,
                            Place.inFile(pull.origin().source()).withPull(pull.number()),
                            Detail.of("deg", most.deg()),
                            Detail.of("rpm", most.rpm())))
                    .ifPresent(findings::add);
        }
        boolean counted = pulls.stream().anyMatch(pull -> pull.knock().events().isPresent());
        boolean silent = pulls.stream()
                .allMatch(pull ->
                        pull.knock().events().orElse(0) == 0 && pull.knock().told() != KnockMark.HEARD);
        if (counted && silent) {
            findings.add(Finding.warning(FindingCode.KNOCK_NEVER_COUNTED, Place.nowhere()));
        }
        return findings;
    }
}
