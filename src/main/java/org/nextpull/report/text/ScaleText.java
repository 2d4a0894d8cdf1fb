package org.nextpull.report.text;

import java.util.List;
import org.nextpull.fuel.Fuel;
import org.nextpull.fuel.NamedScale;
import org.nextpull.report.Shown;
import org.nextpull.unit.Lambda;

/** What {@code fuel convert} prints. */
public final class ScaleText {
    /** One mixture of a fuel on every scale. */
    public String convert(Fuel fuel, Lambda lambda, List<NamedScale> scales) {
        TextTable table = new TextTable("gauge", "set to", "shows");
        for (NamedScale scale : scales) {
            table.row(
                    scale.name(),
                    Shown.fixed(scale.scale().ratioAtLambdaOne(), 2),
                    Shown.fixed(scale.shows(lambda), 2));
        }
        table.row(
                fuel.name() + " by its elements",
                Shown.fixed(fuel.stoichiometricAirFuelRatio(), 2),
                Shown.fixed(fuel.scale().airFuelRatio(lambda), 2));
        return "Lambda " + Shown.fixed(lambda.value(), 3) + side(lambda) + ", with " + fuel.name()
                + " in the engine\n\n"
                + table.text() + "\nSet to: what it shows at lambda 1. A gauge shows lambda times that on any fuel; "
                + "the last line is the true ratio by mass.\n";
    }

    private static String side(Lambda lambda) {
        String shown = Shown.fixed(lambda.value(), 3);
        return "1.000".equals(shown) ? " (stoichiometric)" : lambda.value() < 1 ? " (rich)" : " (lean)";
    }
}
