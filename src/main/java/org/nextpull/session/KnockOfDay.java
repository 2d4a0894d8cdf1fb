package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
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
     * @param known the first pulls of the day, as far as they were judged before and no later pull says more of them; grows
     */
    static List<MeasuredPull.Curve> heard(
            SweepPlan plan,
            List<MeasuredPull.Curve> measured,
            Function<List<MeasuredPull>, Optional<SparkMap>> asked,
            List<MeasuredPull.Curve> known) {
        int settled = settled(plan, measured.size());
        List<MeasuredPull.Curve> heard = new ArrayList<>(known.subList(0, Math.min(known.size(), settled)));
        for (int place = heard.size(); place < measured.size(); place++) {
            MeasuredPull.Curve one = measured.get(place);
            List<SparkTakenOut> out = isByMap(plan)
                    ? byMap(one.pull(), heard, asked)
                    : SparkTakenOut.in(one.pull(), near(measured, place));
            heard.add(one.withPull(one.pull().withTakenOut(out)));
        }
        known.addAll(heard.subList(Math.min(known.size(), settled), settled));
        return heard;
    }

    /** How many of the first pulls of a day no later pull says more of. */
    static int settled(SweepPlan plan, int pulls) {
        return isByMap(plan) ? pulls : Math.max(0, pulls - SparkTakenOut.REACH);
    }

    private static boolean isByMap(SweepPlan plan) {
        return plan.timing()
                .map(TimingPlan::sets)
                .filter(TimingPlan.Sets.MAP::equals)
                .isPresent();
    }

    private static List<MeasuredPull> near(List<MeasuredPull.Curve> measured, int place) {
        int from = Math.max(0, place - SparkTakenOut.REACH);
        return pulls(measured.subList(from, Math.min(measured.size(), place + SparkTakenOut.REACH + 1)));
    }

    private static List<MeasuredPull> pulls(List<MeasuredPull.Curve> measured) {
        return measured.stream().map(MeasuredPull.Curve::pull).toList();
    }

    private static List<SparkTakenOut> byMap(
            MeasuredPull pull,
            List<MeasuredPull.Curve> before,
            Function<List<MeasuredPull>, Optional<SparkMap>> asked) {
        if (before.size() >= MOST_ASKED || !SparkTakenOut.mayBeIn(pull, pulls(before))) {
            return List.of();
        }
        return asked.apply(pulls(before))
                .map(map -> SparkTakenOut.in(pull, map))
                .orElse(List.of());
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
