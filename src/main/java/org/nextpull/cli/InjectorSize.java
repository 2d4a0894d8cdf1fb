package org.nextpull.cli;

import org.nextpull.fuel.InjectorRating;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Quantity;
import org.nextpull.unit.Unit;
import picocli.CommandLine;
import picocli.CommandLine.Option;

/** What the sheet of an injector says. */
final class InjectorSize {
    private final OneReading volume = new OneReading("rated flow");
    private final OneReading across = new OneReading("pressure of the rating");
    private final OneReading density = new OneReading("density of the test liquid");
    private Quantity measure = Quantity.VOLUME_FLOW;

    @Option(names = "--rated-cc-min", paramLabel = "N", description = "Flow of one held open, in cm3/min.")
    void ratedCcMin(double value) {
        volume.take("--rated-cc-min", Unit.CUBIC_CENTIMETRE_PER_MINUTE, value);
        measure = Quantity.VOLUME_FLOW;
    }

    @Option(names = "--rated-lb-h", paramLabel = "N", description = "Flow of one held open, in lb/h.")
    void ratedLbH(double value) {
        volume.take("--rated-lb-h", Unit.POUND_PER_HOUR, value);
        measure = Quantity.MASS_FLOW;
    }

    @Option(names = "--rated-kpa", paramLabel = "N", description = "Pressure difference at which it was rated, in kPa.")
    void ratedKpa(double value) {
        across.take("--rated-kpa", Unit.KILOPASCAL, value);
    }

    @Option(names = "--rated-psi", paramLabel = "N", description = "The same in psi.")
    void ratedPsi(double value) {
        across.take("--rated-psi", Unit.PSI, value);
    }

    @Option(
            names = "--test-density-kg-l",
            paramLabel = "N",
            description = "Density of the liquid that it was rated with (default: 0.684, n-heptane; see its sheet).")
    void testDensity(double value) {
        density.take("--test-density-kg-l", Unit.KILOGRAM_PER_LITRE, value);
    }

    InjectorRating rating(CommandLine at) {
        double flow = volume.positive(at, "--rated-cc-min or --rated-lb-h");
        Pressure pressure = Pressure.ofPascals(across.positive(at, "--rated-kpa or --rated-psi"));
        density.check(at, value -> value > 0, "be above 0");
        double liquid = density.value(at).orElse(InjectorRating.USUAL_TEST_DENSITY);
        return measure == Quantity.MASS_FLOW
                ? new InjectorRating(flow, pressure, liquid)
                : InjectorRating.ofVolume(flow, pressure, liquid);
    }
}
