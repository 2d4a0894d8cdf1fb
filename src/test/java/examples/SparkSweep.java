package examples;

import java.io.PrintStream;
import org.nextpull.api.SparkFit;
import org.nextpull.unit.Advance;

/** Fits a sweep from arrays: torque of a published engine model, without a plan and without a log. */
public final class SparkSweep {
    private SparkSweep() {}

    /** Writes what the fit says. */
    public static void show(PrintStream out) {
        // degrees before top dead centre and newton metres, in the order in which the pulls were run
        double[] advanceDeg = {22, 26, 30, 34, 36, 32, 28, 24};
        double[] torqueNm = {151.82, 153.10, 153.56, 153.22, 152.74, 153.49, 153.43, 152.56};

        SparkFit fit = SparkFit.of(advanceDeg, torqueNm, Advance.ofDeg(28));
        SparkFit.Peak best = fit.best();
        out.printf(
                "peak at %.1f deg, 90 %% from %.1f to %.1f%n",
                best.deg(), best.ninety().low(), best.ninety().high());
        out.printf("bracketed: %s%n", best.isBracketed());
        out.printf("0.5 %% of torque given up from %.1f deg%n", fit.leastDeg(0.5));
        out.printf("24 deg leaves %.1f %%%n", fit.leftPercent(24));
    }
}
