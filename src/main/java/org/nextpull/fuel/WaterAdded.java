package org.nextpull.fuel;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Lambda;

/**
 * What water does to a fuel with alcohol. Part volumes are added up; the true volume of alcohol and water is up to 3 % smaller (from
 * memory), so a hydrometer reads a little higher.
 *
 * @param before the fuel without the water
 * @param after the fuel with it
 * @param alcoholBefore alcohol as a fraction of the volume, above 0
 * @param alcoholAfter the same with the water
 */
public record WaterAdded(Fuel before, Fuel after, double alcoholBefore, double alcoholAfter) {
    /** Water that E10 holds at room temperature, as a fraction of its volume, and no more (common practice, no source). */
    private static final double HELD_BY_TENTH_OF_ALCOHOL = 0.005;

    private static final double NEARLY_PURE_ALCOHOL = 0.95;

    /**
     * Adds water. No fuel but a finding when the share is outside 0 to 1, when density or alcohol content is not known, and when there is
     * no alcohol, with which alone water mixes. More water than the alcohol is known to hold comes with a warning.
     *
     * @param fuel the fuel without the water
     * @param waterPerFuel litres of water for each litre of fuel, 0 to 1
     */
    public static Outcome<WaterAdded> to(Fuel fuel, double waterPerFuel) {
        OptionalDouble alcohol = fuel.value(FuelProperty.ALCOHOL_BY_VOLUME);
        if (!(waterPerFuel >= 0 && waterPerFuel <= 1)) {
            return Outcome.failed(finding(FindingCode.FUEL_WATER_SHARE, fuel));
        }
        if (fuel.density().isEmpty()) {
            return Outcome.failed(finding(FindingCode.FUEL_FLOW_NEEDS_DENSITY, fuel));
        }
        if (alcohol.isEmpty()) {
            return Outcome.failed(finding(FindingCode.FUEL_ALCOHOL_UNKNOWN, fuel));
        }
        if (alcohol.getAsDouble() <= 0) {
            return Outcome.failed(finding(FindingCode.FUEL_WATER_DOES_NOT_MIX, fuel));
        }
        Fuel water = PureFuels.water();
        Fuel wet = BlendRecipe.mixed(
                fuel.name() + " with water",
                List.of(
                        new Blends.Part(fuel, fuel.density().getAsDouble()),
                        new Blends.Part(water, waterPerFuel * water.density().orElseThrow())));
        double after = alcohol.getAsDouble() / (1 + waterPerFuel);
        List<Finding> findings = new ArrayList<>();
        if (waterPerFuel > heldBy(alcohol.getAsDouble())) {
            findings.add(Finding.warning(
                    FindingCode.FUEL_WATER_MAY_SEPARATE,
                    Place.nowhere(),
                    Detail.of("name", fuel.name()),
                    Detail.of("held", heldBy(alcohol.getAsDouble()))));
        }
        return Outcome.of(new WaterAdded(fuel, wet, alcohol.getAsDouble(), after), findings);
    }

    /** Flow that the wet fuel needs against the dry one, at equal air and lambda. */
    public FlowComparison flow() {
        Lambda one = Lambda.of(1);
        return FlowComparison.between(new FuelDose(after, one), new FuelDose(before, one));
    }

    private static double heldBy(double alcohol) {
        return alcohol >= NEARLY_PURE_ALCOHOL ? 1 : HELD_BY_TENTH_OF_ALCOHOL * alcohol / 0.1;
    }

    private static Finding finding(FindingCode code, Fuel fuel) {
        return Finding.error(code, Place.nowhere(), Detail.of("name", fuel.name()));
    }
}
