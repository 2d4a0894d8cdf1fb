package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.TimingPlan;
import org.nextpull.response.KnockHeard;
import org.nextpull.response.MeasuredCurve;
import org.nextpull.response.MeasuredPull;
import org.nextpull.response.SparkTakenOut;

/** What only the pulls of a day together tell of knock: an ignition that takes out advance, and a counter that never counted. */
final class KnockOfDay {
    private KnockOfDay() {}

    /**
     * The pulls with what the ignition took out in each, judged by the pulls of the day so far. Where cells of a map are set one by one,
     * an advance below that of the other pulls is as likely the operator's own, so nothing is judged by it.
     *
     * @param known pulls by their place that no later pull says more of; grows
     */
    static List<MeasuredCurve> heard(SweepPlan plan, List<MeasuredCurve> measured, Map<Integer, MeasuredCurve> known) {
        if (plan.timing()
                .map(TimingPlan::sets)
                .filter(TimingPlan.Sets.MAP::equals)
                .isPresent()) {
            return measured;
        }
        List<MeasuredPull> pulls = measured.stream().map(MeasuredCurve::pull).toList();
        List<MeasuredCurve> heard = new ArrayList<>();
        for (int place = 0; place < pulls.size(); place++) {
            boolean isSettled = place + SparkTakenOut.REACH < pulls.size();
            if (isSettled && known.containsKey(place)) {
                heard.add(known.get(place));
                continue;
            }
            MeasuredPull pull = pulls.get(place);
            List<MeasuredPull> near = pulls.subList(
                    Math.max(0, place - SparkTakenOut.REACH), Math.min(pulls.size(), place + SparkTakenOut.REACH + 1));
            MeasuredCurve one = measured.get(place)
                    .withPull(pull.withKnock(pull.knock().withTakenOut(SparkTakenOut.in(pull, near))));
            heard.add(one);
            if (isSettled) {
                known.put(place, one);
            }
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
