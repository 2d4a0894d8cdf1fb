package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.Goal;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * The response of one pull that counts: the figure that scatter, fit and comparison work with.
 *
 * @param pull the pull
 * @param value band-average corrected torque in N.m, or power in W, positive
 */
public record Reading(MeasuredPull pull, double value) {

    /** The readings of the pulls that count and have that figure, in the order given. */
    public static List<Reading> of(List<MeasuredPull> pulls, Goal.Response response) {
        return pulls.stream()
                .filter(MeasuredPull::isUsed)
                .flatMap(pull ->
                        figure(pull, response)
                                .filter(value -> value > 0)
                                .map(value -> new Reading(pull, value))
                                .stream())
                .toList();
    }

    /** The pull, refused where its figure is nought or negative: no full-load pull makes that, so its column or its sign is wrong. */
    public static MeasuredPull positive(MeasuredPull pull, Goal.Response response) {
        Optional<Double> figure = figure(pull, response).or(() -> figure(pull, other(response)));
        if (!pull.isUsed() || figure.isEmpty() || figure.get() > 0) {
            return pull;
        }
        Place place = Place.inFile(pull.origin().source())
                .withLine(pull.origin().firstLine())
                .withPull(pull.number());
        return pull.withStanding(MeasuredPull.Status.REFUSED)
                .withFinding(Finding.warning(FindingCode.RESPONSE_NOT_POSITIVE, place));
    }

    /** The pulls, those refused that count and do not have the figure: they may be compared by another one, but not fitted. */
    public static List<MeasuredPull> fitted(List<MeasuredPull> pulls, Goal.Response response) {
        return pulls.stream().map(pull -> fitted(pull, response)).toList();
    }

    /** The same of one pull. */
    public static MeasuredPull fitted(MeasuredPull pull, Goal.Response response) {
        return isMissing(pull, response) ? pull.withStanding(MeasuredPull.Status.REFUSED) : pull;
    }

    /** What is to be said of pulls that count and do not have the figure; an error where no other pull has it either. */
    public static Optional<Finding> missing(List<MeasuredPull> pulls, Goal.Response response) {
        List<MeasuredPull> without =
                pulls.stream().filter(pull -> isMissing(pull, response)).toList();
        if (without.isEmpty()) {
            return Optional.empty();
        }
        Place place = Place.inFile(without.get(0).origin().source());
        Finding finding = Finding.error(
                FindingCode.RESPONSE_MISSING,
                place,
                Detail.of("response", response.id()),
                Detail.of("other", other(response).id()),
                Detail.of("count", without.size()));
        return Optional.of(of(pulls, response).isEmpty() ? finding : finding.asWarning());
    }

    private static boolean isMissing(MeasuredPull pull, Goal.Response response) {
        return pull.isUsed() && figure(pull, response).isEmpty();
    }

    private static Goal.Response other(Goal.Response response) {
        return response == Goal.Response.TORQUE ? Goal.Response.POWER : Goal.Response.TORQUE;
    }

    /**
     * How far this response lies above another one, in percent of that; negative when it lies below. Both must be of one kind, torque or
     * power.
     */
    public double percentOver(Reading reference) {
        return 100 * (value / reference.value - 1);
    }

    private static Optional<Double> figure(MeasuredPull pull, Goal.Response response) {
        return pull.figures().flatMap(figures -> switch (response) {
            case TORQUE -> figures.meanTorque().map(Torque::newtonMetres);
            case POWER -> figures.meanPower().map(Power::watts);
        });
    }
}
