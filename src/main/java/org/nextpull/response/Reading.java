package org.nextpull.response;

import java.util.List;
import java.util.Optional;
import org.nextpull.plan.Goal;
import org.nextpull.unit.Power;
import org.nextpull.unit.Torque;

/**
 * The response of one pull that counts: the figure that scatter, fit and comparison work with.
 *
 * @param pull number of the pull
 * @param order its place in the day
 * @param setting what it was run with
 * @param value band-average corrected torque in N.m, or power in W, positive
 */
public record Reading(int pull, double order, Setting setting, double value) {

    /** The readings of the pulls that count and have that figure, in the order given. */
    public static List<Reading> of(List<MeasuredPull> pulls, Goal.Response response) {
        return pulls.stream()
                .filter(MeasuredPull::isUsed)
                .flatMap(
                        pull -> value(pull, response)
                                .map(value -> new Reading(pull.number(), pull.order(), pull.setting(), value))
                                .stream())
                .toList();
    }

    /** How far this response lies above another one, in percent of that. */
    public double percentOver(Reading reference) {
        return 100 * (value / reference.value - 1);
    }

    private static Optional<Double> value(MeasuredPull pull, Goal.Response response) {
        return pull.figures()
                .flatMap(figures -> switch (response) {
                    case TORQUE -> figures.meanTorque().map(Torque::newtonMetres);
                    case POWER -> figures.meanPower().map(Power::watts);
                })
                .filter(value -> value > 0);
    }
}
