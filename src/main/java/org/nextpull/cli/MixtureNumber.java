package org.nextpull.cli;

import org.nextpull.fuel.LambdaScale;
import org.nextpull.report.Shown;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Lambda and air-fuel ratio from the command line, where the two are easily taken for each other. */
final class MixtureNumber {
    /** No engine burns outside this. */
    private static final Span BURNS = Span.of(0.2, 5);

    private MixtureNumber() {}

    static Lambda lambda(CommandLine at, String option, double value) {
        if (BURNS.contains(value)) {
            return Lambda.of(value);
        }
        String hint = value > BURNS.high() ? "; an air-fuel ratio is turned into lambda by fuel convert --afr" : "";
        throw new ParameterException(
                at,
                option + " " + Shown.plain(value) + " is no lambda that burns; give " + Shown.plain(BURNS.low())
                        + " to " + Shown.plain(BURNS.high()) + hint + ".");
    }

    static Lambda lambda(CommandLine at, double airFuelRatio, LambdaScale scale) {
        double lambda = airFuelRatio / scale.ratioAtLambdaOne();
        if (BURNS.contains(lambda)) {
            return scale.lambda(airFuelRatio);
        }
        String hint = BURNS.contains(airFuelRatio) ? "; if it is a lambda, give it by --lambda" : "";
        throw new ParameterException(
                at,
                "--afr " + Shown.plain(airFuelRatio) + " on a scale of " + Shown.plain(scale.ratioAtLambdaOne())
                        + " means no mixture that burns" + hint + ".");
    }
}
