package org.nextpull.response;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.air.Correction;
import org.nextpull.finding.Finding;
import org.nextpull.plan.Limit;
import org.nextpull.unit.Lambda;

/**
 * One pull: what was set, what came out, and what was met on the way. A pull without {@link #figures} gives no response but keeps its
 * knock and its limits met.
 *
 * @param number number over the whole day, from 1
 * @param origin where it came from
 * @param order place in the day that drift is counted in, in pulls, from 0
 * @param setting what it was run with
 * @param standing whether it counts
 * @param correction the correction that its figures carry
 * @param figures corrected figures; present whenever the pull spanned the band, even when it was struck
 * @param knock what is known of knock
 * @param leanestLambda leanest band average of any lambda sensor
 * @param conditions conditions of the pull
 * @param limitsMet limits met, worst of each
 * @param unwatched limits of the plan that no live channel watched; knock has its mark instead
 * @param findings what is wrong or worth saying
 */
public record MeasuredPull(
        int number,
        Origin origin,
        double order,
        Setting setting,
        PullStatus standing,
        Optional<Correction> correction,
        Optional<Figures> figures,
        KnockHeard knock,
        Optional<Lambda> leanestLambda,
        Conditions conditions,
        List<LimitMet> limitsMet,
        List<Unwatched> unwatched,
        List<Finding> findings) {
    public MeasuredPull {
        limitsMet = List.copyOf(limitsMet);
        unwatched = List.copyOf(unwatched);
        findings = List.copyOf(findings);
    }

    /** Whether the pull gives a response. */
    public boolean isUsed() {
        return standing.isUsed() && figures.isPresent();
    }

    /** Whether it is a plateau at a held speed. */
    public boolean isHeld() {
        return figures.stream()
                .flatMap(known -> known.rows().stream())
                .anyMatch(row -> row.heldAtS().isPresent());
    }

    /** Whether it is a pull, though perhaps one that does not count, and not only a stretch that is kept for its knock. */
    public boolean isPull() {
        return standing != PullStatus.NO_PULL;
    }

    /** Clean: no knock heard and no limit met. A pull in which knock was not measured may be clean. */
    public boolean isClean() {
        return !knock.isHeard() && limitsMet.isEmpty();
    }

    /** Whether a live channel watched a limit of the plan; for knock, whether a channel or the operator listened. */
    public boolean isWatched(Limit limit) {
        return limit == Limit.KNOCK
                ? knock.isMeasured()
                : unwatched.stream().noneMatch(missing -> missing.limit() == limit);
    }

    public MeasuredPull withStanding(PullStatus newStanding) {
        return new MeasuredPull(
                number,
                origin,
                order,
                setting,
                newStanding,
                correction,
                figures,
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    public MeasuredPull withKnock(KnockHeard newKnock) {
        return new MeasuredPull(
                number,
                origin,
                order,
                setting,
                standing,
                correction,
                figures,
                newKnock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    /** The same pull with other rows of its figures. */
    public MeasuredPull withRows(List<RowFigure> rows) {
        return new MeasuredPull(
                number,
                origin,
                order,
                setting,
                standing,
                correction,
                figures.map(known -> known.withRows(rows)),
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    /** The same pull at another place in the order, counted in pulls from 0 over all days, and on a day of its own number. */
    public MeasuredPull at(double newOrder, int day) {
        return new MeasuredPull(
                number,
                origin.onDay(day),
                newOrder,
                setting,
                standing,
                correction,
                figures,
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    /** The same pull under another label. */
    public MeasuredPull withLabel(String label) {
        return fitted(Optional.of(label), setting.fuel());
    }

    /** The same pull on a fuel of that name. */
    public MeasuredPull withFuel(String fuel) {
        return fitted(setting.label(), Optional.of(fuel));
    }

    private MeasuredPull fitted(Optional<String> label, Optional<String> fuel) {
        Setting labelled = new Setting(
                setting.advance(),
                setting.offset(),
                setting.askedAdvance(),
                setting.lambda(),
                setting.askedLambda(),
                fuel,
                label,
                setting.note());
        return new MeasuredPull(
                number,
                origin,
                order,
                labelled,
                standing,
                correction,
                figures,
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                findings);
    }

    /** The same pull with one more finding. */
    public MeasuredPull withFinding(Finding finding) {
        List<Finding> more = new ArrayList<>(findings);
        more.add(finding);
        return new MeasuredPull(
                number,
                origin,
                order,
                setting,
                standing,
                correction,
                figures,
                knock,
                leanestLambda,
                conditions,
                limitsMet,
                unwatched,
                more);
    }
}
