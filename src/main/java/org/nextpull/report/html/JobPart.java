package org.nextpull.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.nextpull.finding.Outcome;
import org.nextpull.fuel.Fuel;
import org.nextpull.plan.DynoFacts;
import org.nextpull.plan.Goal;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.report.Shown;
import org.nextpull.unit.Quantity;

/** Engine, fuel, dyno, band and correction. */
final class JobPart {
    private final SweepPlan plan;
    private final Shown shown;
    private final List<Section.Fact> facts = new ArrayList<>();

    JobPart(SweepPlan plan, Shown shown) {
        this.plan = plan;
        this.shown = shown;
    }

    Section section() {
        engine();
        fuel();
        fact("dyno", words(plan.dyno().kind()));
        fact("torque stated at", words(plan.dyno().torqueAt().name()));
        plan.band()
                .ifPresent(band ->
                        fact("band", Shown.fixed(band.fromRpm(), 0) + " to " + Shown.fixed(band.toRpm(), 0) + " rpm"));
        fact(
                "response",
                "plain mean over the band of corrected "
                        + (plan.goal().response() == Goal.Response.TORQUE ? "torque" : "power"));
        fact("correction", plan.air().standard().title());
        plan.log()
                .correctedBy()
                .ifPresent(already -> fact("logged figures", "already corrected by " + already.title()));
        return Section.of("Job").withFacts(facts);
    }

    private void engine() {
        plan.engine().name().ifPresent(name -> fact("engine", name));
        amount("displacement", plan.engine().displacementM3(), shown::displacement);
        plan.engine().cylinders().ifPresent(count -> fact("cylinders", String.valueOf(count)));
        amount("compression ratio", plan.engine().compressionRatio(), ratio -> Shown.fixed(ratio, 1));
        fact("induction", words(plan.engine().induction().name()));
    }

    private void fuel() {
        Optional<Fuel> fuel = plan.fuel().inTank().flatMap(Outcome::value);
        fuel.ifPresent(found -> {
            fact("fuel", found.name());
            fact("air-fuel ratio at lambda 1", Shown.fixed(found.stoichiometricAirFuelRatio(), 2));
            amount("fuel density", found.density(), value -> shown.value(Quantity.DENSITY, value));
            amount(
                    "fuel's lower heating value",
                    found.lowerHeatingValue(),
                    value -> shown.value(Quantity.SPECIFIC_ENERGY, value));
        });
    }

    private void amount(String name, OptionalDouble value, java.util.function.DoubleFunction<String> words) {
        value.stream().mapToObj(words).forEach(text -> fact(name, text));
    }

    private void fact(String name, String value) {
        facts.add(new Section.Fact(name, value));
    }

    /** A kind of dyno as the trade calls it. */
    static String words(DynoFacts.Kind kind) {
        return switch (kind) {
            case ENGINE_BRAKE -> "engine dyno";
            case CHASSIS_BRAKE -> "braked chassis dyno";
            case CHASSIS_INERTIA -> "inertia chassis dyno";
        };
    }

    static String words(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** What another shop needs to run the same again. */
    Section toRepeat() {
        return Section.of("To repeat this elsewhere")
                .withParagraphs(List.of(
                        "Run the engine on the same fuel, hold the start conditions of the plan, move off each setting and re-set it before a repeat, "
                                + "and correct to the same standard. Figures at the wheel or the roller hold for that dyno, gear and "
                                + "tyre only. The plan below is the whole of what was asked; with it and the logs the program gives "
                                + "this sheet again."))
                .withVerbatim(PlanText.write(plan));
    }
}
