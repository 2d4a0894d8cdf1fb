package org.nextpull.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.channel.SparkMap;
import org.nextpull.fit.TorqueLeft;
import org.nextpull.unit.Lambda;

/**
 * The next map, or the end of a day: climb by the largest step, each speed as far as its own limits allow; then a pull below and a pull
 * above the best in turn; prove the map as soon as it would be the answer; stop when little is left or little can be gained.
 */
public final class DayPlanner {
    private static final double STILL_CLIMBING_DEG = 0.5;
    /** With a mixture the search for the pull that leaves least goes the last step of a climb better than the climb does. */
    private static final double STILL_CLIMBING_LEANER_DEG = 1.5;

    private static final double BELOW_DEG = 4;
    private static final double NEARLY_KNOWN = 10;
    private static final double ABOVE_DEG = 1;
    /** One number learns nothing from how speeds differ, so it must see torque fall further beyond its best. */
    private static final double ABOVE_OF_ONE_NUMBER_DEG = 3;
    /** Where pulls of one number differ by more than this the posterior knows their scatter from below at best, and what it leaves is too little. */
    private static final double SCATTER_KNOWN_PERCENT = 0.7;

    private static final int LEAST_FOR_PROOF = 2;
    private static final int LEAST_FOR_NO_GAIN = 4;
    private static final int PATIENCE_PULLS = 6;
    private static final double NO_GAIN_A_PULL_PERCENT = 0.01;

    private final PlannerRules rules;

    public DayPlanner(PlannerRules rules) {
        this.rules = rules;
    }

    /** A setting with what it leaves. */
    private record Judged(SparkMap map, Optional<Lambda> lambda, TorqueLeft left) {
        EngineSetting setting() {
            return EngineSetting.of(map, lambda);
        }
    }

    /**
     * What to do after the pulls so far.
     *
     * @throws IllegalArgumentException where no pull was run: the first is the plan's
     */
    public PlannerDecision decide(DayEvidence evidence) {
        if (evidence.pulls().isEmpty()) {
            throw new IllegalArgumentException("the first pull is the plan's own");
        }
        return new Turn(evidence).decide();
    }

    /** One decision. */
    private final class Turn {
        private final DayEvidence evidence;
        private final FlagLooks looks;
        private final PlannerView.Day day;
        private final int count;
        private final MixtureSearch mixture;
        private final Optional<Lambda> lambda;
        private final PlannerView view;
        private final Judged peak;
        /** The least advance at each speed that is near enough to its best, whatever may be run next; the best where nothing may be given away. */
        private final double[] wantedLeast;
        /** The same as it may be run next: what stays in the engine. */
        private final Judged least;

        Turn(DayEvidence evidence) {
            this.evidence = evidence;
            count = evidence.pulls().size();
            double[] rows = evidence.posterior().rows().rpm();
            looks = new FlagLooks(evidence.pulls(), rules.looksAgain());
            day = new PlannerView.Day(
                    evidence.posterior(),
                    evidence.pulls().stream().map(looks::withoutStruck).toList(),
                    new Exclusions(evidence.pulls(), rules.spark(), rows, looks),
                    levels(rows),
                    new SettingGrid(rows, evidence.present(), rules.spark().resolutionDeg()),
                    rules.spark());
            mixture = new MixtureSearch(day, rules.mixture());
            lambda = mixture.target();
            view = new PlannerView(day, lambda);
            SparkMap map = view.allowed(view.best);
            peak = new Judged(map, lambda, view.aim.left(map.degAt(view.rows)));
            double nearBest = rules.ending().nearBestPercent();
            wantedLeast = nearBest == 0 ? view.best : view.aim.leastWithin(nearBest);
            least = leastMap();
        }

        private StepLimit.RowLevels levels(double[] rows) {
            return evidence.levels()
                    .<StepLimit.RowLevels>map(found -> new StepLimit.LevelCeiling(found, rows))
                    .orElse(rpm -> Double.POSITIVE_INFINITY);
        }

        private int today() {
            return count - evidence.earlier();
        }

        private boolean isLittle(TorqueLeft left) {
            return (!evidence.present().isFlat() || evidence.posterior().scatterPercent() <= SCATTER_KNOWN_PERCENT)
                    && left.expectedPercent() <= rules.ending().expectedLeftPercent()
                    && left.chanceOfMuch() <= rules.ending().chanceOfMuch();
        }

        PlannerDecision decide() {
            if (!view.isWithinPlan(peak.map)) {
                return stop(PlannerDecision.StopReason.NO_ROOM, Optional.empty());
            }
            Optional<PlannerDecision> look = lookAgain();
            if (look.isPresent()) {
                return look.get();
            }
            boolean isSettled = isLittle(peak.left);
            Optional<Judged> proven = proven();
            if (count >= rules.ending().leastPulls() && proven.isPresent() && isSettled(proven.get(), isSettled)) {
                return stop(PlannerDecision.StopReason.SETTLED, proven);
            }
            if (today() >= rules.ending().mostPulls()) {
                return stop(PlannerDecision.StopReason.BUDGET, proven);
            }
            if (count >= LEAST_FOR_PROOF && isSettled) {
                return pull(least, PlannerDecision.Purpose.PROVE, proven);
            }
            PlannerDecision next = search(proven);
            return hasNoGain(next, proven) ? end(proven) : next;
        }

        private boolean isSettled(Judged leave, boolean peakIsSettled) {
            return rules.ending().nearBestPercent() > 0 ? peakIsSettled : isLittle(leave.left) || isProvenTwice();
        }

        /** Whether the last two pulls were clean and nearly one setting, and the target would be settled. */
        private boolean isProvenTwice() {
            if (count < LEAST_FOR_NO_GAIN || rules.mixture().isEmpty() || !isLittle(peak.left)) {
                return false;
            }
            TriedPull last = day.pulls().get(count - 1);
            TriedPull before = day.pulls().get(count - 2);
            return last.isClean()
                    && before.isClean()
                    && mixture.isNear(last, before)
                    && isNearMap(last.spark(), before.spark());
        }

        private boolean isNearMap(SparkMap map, SparkMap other) {
            double sum = 0;
            for (double rpm : view.rows) {
                sum += Math.abs(map.degAt(rpm) - other.degAt(rpm));
            }
            return sum / view.rows.length <= 2 * rules.spark().resolutionDeg();
        }

        /** What stays in the engine: at each speed the least advance that is near enough to its best. */
        private Judged leastMap() {
            if (rules.ending().nearBestPercent() == 0) {
                return peak;
            }
            double[] deg = wantedLeast.clone();
            for (int r = 0; r < deg.length; r++) {
                deg[r] = Math.min(deg[r], peak.map.degAt(view.rows[r]));
            }
            SparkMap map = view.allowed(deg);
            return new Judged(map, lambda, view.aim.left(map.degAt(view.rows)));
        }

        /** The best of the settings that were run clean and that nothing forbids now. */
        private Optional<Judged> proven() {
            List<Judged> found = new ArrayList<>();
            for (TriedPull pull : day.pulls()) {
                if (!pull.isClean() || !pull.isRunOver(view.rows) || !isAtTarget(pull)) {
                    continue;
                }
                PlannerView there = pull.lambda().isPresent() && rules.mixture().isPresent()
                        ? new PlannerView(day, pull.lambda())
                        : view;
                if (there.isUnderCaps(pull.spark())) {
                    TorqueLeft left = there.aim.left(pull.spark().degAt(view.rows));
                    if (rules.ending().nearBestPercent() == 0 || isAsGoodAs(least, pull.spark(), left)) {
                        found.add(new Judged(
                                pull.spark(), rules.mixture().isPresent() ? leave(pull) : Optional.empty(), left));
                    }
                }
            }
            return found.stream()
                    .min(Comparator.comparingDouble(judged -> judged.left().expectedPercent()));
        }

        /** What was run a little leaner than the target, within what a mixture scatters about it, is left at the target. */
        private Optional<Lambda> leave(TriedPull pull) {
            return rules.ending().nearBestPercent() == 0
                    ? pull.lambda()
                    : pull.lambda()
                            .map(run -> lambda.filter(aimed -> aimed.value() < run.value())
                                    .orElse(run));
        }

        /** Whether a pull was run with the mixture that would be left, as far as a mixture scatters about what was set. */
        private boolean isAtTarget(TriedPull pull) {
            return rules.ending().nearBestPercent() == 0
                    || rules.mixture().isEmpty()
                    || pull.lambda()
                            .filter(run ->
                                    Math.abs(run.value() - lambda.orElseThrow().value()) <= MixtureSearch.NEAR_LAMBDA)
                            .isPresent();
        }

        /**
         * Whether a map that was run may stand for the least one: gives away no more than it may and what counts as little, and is hardly
         * more advanced. A proof moves the surface by about that much, and would be run again and again.
         */
        private boolean isAsGoodAs(Judged least, SparkMap run, TorqueLeft left) {
            double given = left.expectedPercent() - peak.left.expectedPercent();
            if (given
                    > Math.max(
                                    rules.ending().nearBestPercent(),
                                    least.left.expectedPercent() - peak.left.expectedPercent())
                            + rules.ending().expectedLeftPercent()) {
                return false;
            }
            double more = 0;
            for (double rpm : view.rows) {
                more += Math.max(0, run.degAt(rpm) - least.map.degAt(rpm));
            }
            return more / view.rows.length <= 2 * rules.spark().resolutionDeg();
        }

        private PlannerDecision search(Optional<Judged> proven) {
            double near = rules.mixture().isPresent() ? STILL_CLIMBING_LEANER_DEG : STILL_CLIMBING_DEG;
            if (view.gapDeg() > near && mixture.climbs()) {
                Optional<Lambda> climbing = mixture.climbing();
                return pull(above(new PlannerView(day, climbing)), climbing, PlannerDecision.Purpose.CLIMB, proven);
            }
            if (rules.mixture().isPresent()) {
                MixtureSearch.Found found = mixture.best(view);
                return pull(found.map(), Optional.of(found.lambda()), PlannerDecision.Purpose.EXPLORE, proven);
            }
            return count % 2 == 1
                    ? pull(below(proven), lambda, PlannerDecision.Purpose.BRACKET_BELOW, proven)
                    : pull(
                            above(view),
                            lambda,
                            decidedBy().stream().allMatch(by -> by == ChosenBy.KNOCK_LIMIT)
                                    ? PlannerDecision.Purpose.UP_TO_KNOCK
                                    : PlannerDecision.Purpose.BRACKET_ABOVE,
                            proven);
        }

        private SparkMap above(PlannerView there) {
            return there.shifted(evidence.present().isFlat() ? ABOVE_OF_ONE_NUMBER_DEG : ABOVE_DEG);
        }

        /**
         * A pull below the best: where that is nearly known, the map that is to stay, unless that is proven already; else further below,
         * where the curve tells more.
         */
        private SparkMap below(Optional<Judged> proven) {
            boolean isNearlyKnown =
                    peak.left.chanceOfMuch() <= NEARLY_KNOWN * rules.ending().chanceOfMuch();
            return rules.ending().nearBestPercent() > 0 && isNearlyKnown && proven.isEmpty()
                    ? least.map()
                    : view.shifted(-BELOW_DEG);
        }

        private boolean hasNoGain(PlannerDecision next, Optional<Judged> proven) {
            if (count < LEAST_FOR_NO_GAIN || !(next instanceof PlannerDecision.Pull pull)) {
                return false;
            }
            // what stays gives some torque away by intent: no pull wins that back
            double now = rules.ending().nearBestPercent() > 0
                    ? peak.left.expectedPercent()
                    : proven.map(judged -> judged.left.expectedPercent()).orElse(Double.POSITIVE_INFINITY);
            double after = mixture.leftAfter(
                    view, pull.setting().spark().orElseThrow(), pull.setting().lambda());
            double bar =
                    rules.ending().noGainPercent() + NO_GAIN_A_PULL_PERCENT * Math.max(0, today() - PATIENCE_PULLS);
            return now - after < bar;
        }

        /** Nothing more to gain: the map that stays is proven first, if it was not run yet. */
        private PlannerDecision end(Optional<Judged> proven) {
            if (proven.isEmpty()) {
                return pull(least, PlannerDecision.Purpose.PROVE, proven);
            }
            boolean isCapped = mixture.isHeldRich();
            boolean byPlan = true;
            for (int r = 0; r < view.rows.length; r++) {
                if (view.lossCaps.isCapped(r)) {
                    isCapped = true;
                    byPlan &= view.limit.isPlanLimited(view.rows[r]);
                }
            }
            PlannerDecision.StopReason reason = !isCapped
                    ? PlannerDecision.StopReason.SCATTER_LIMITED
                    : byPlan ? PlannerDecision.StopReason.PLAN_LIMITED : PlannerDecision.StopReason.KNOCK_LIMITED;
            return stop(reason, proven);
        }

        /** A lone flag that holds back torque worth a pull is looked at again. */
        private Optional<PlannerDecision> lookAgain() {
            return new SecondLook(day, looks, view, rules.spark())
                    .next()
                    .map(map -> pull(map, lambda, PlannerDecision.Purpose.LOOK_AGAIN, proven()));
        }

        private PlannerDecision pull(Judged judged, PlannerDecision.Purpose purpose, Optional<Judged> proven) {
            return new PlannerDecision.Pull(judged.setting(), purpose, answer(proven));
        }

        private PlannerDecision pull(
                SparkMap map, Optional<Lambda> there, PlannerDecision.Purpose purpose, Optional<Judged> proven) {
            return new PlannerDecision.Pull(EngineSetting.of(map, there), purpose, answer(proven));
        }

        private PlannerDecision stop(PlannerDecision.StopReason reason, Optional<Judged> proven) {
            return new PlannerDecision.Stop(reason, answer(proven));
        }

        private PlannerDecision.Answer answer(Optional<Judged> proven) {
            return new PlannerDecision.Answer(
                    peak.setting(),
                    peak.left,
                    least.setting(),
                    least.left,
                    proven.map(Judged::setting),
                    proven.map(Judged::left),
                    view.caps,
                    decidedBy(),
                    view.pullsTo(wantedLeast));
        }

        /** What decides each row: where what stays is within reach, a step that ends below the peak is no limit. */
        private List<ChosenBy> decidedBy() {
            List<ChosenBy> by = new ArrayList<>();
            SparkMap stays = least.map;
            for (int r = 0; r < view.rows.length; r++) {
                ChosenBy row = view.decidedBy(peak.map, r);
                boolean isWithinReach = row == ChosenBy.HIGHEST_TRIED
                        && wantedLeast[r]
                                <= stays.degAt(view.rows[r]) + 2 * rules.spark().resolutionDeg();
                by.add(isWithinReach ? ChosenBy.PEAK : row);
            }
            return by;
        }
    }
}
