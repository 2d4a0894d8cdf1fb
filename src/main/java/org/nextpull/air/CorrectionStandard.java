package org.nextpull.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.NearestNames;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/**
 * A rule that brings torque and power of a spark-ignition engine to a reference atmosphere: corrected = measured x factor. All absolute
 * temperatures are taken as the standards print them, degC + 273.
 */
public sealed interface CorrectionStandard
        permits NoCorrection, SaeJ1349Of2004, SaeJ1349Of1990, Iso1585, Din70020, SaeJ607 {
    /** Name in plan files, JSON and on the command line. */
    String id();

    /** Name for people, with the documents that share the formula. */
    String title();

    /**
     * The dimensionless factor for an air state, corrected over measured torque. It is computed outside the limits too, so ask
     * {@link #correction} for the findings.
     */
    double factor(AirState air);

    /** The air at which the factor is 1: 25 degC and 100 kPa, of which 1 kPa is vapour, unless the standard has another. */
    default AirState reference() {
        return new AirState(Pressure.ofKilopascals(100), Temperature.ofCelsius(25), Pressure.ofKilopascals(1));
    }

    /** The standard's own range; empty for no correction. */
    Optional<ValidRange> limits();

    /** Whether the standard has been withdrawn and serves only comparison with old figures. */
    default boolean withdrawn() {
        return false;
    }

    /** Whether the factor asks for the vapour in the air: all do that work with dry pressure. */
    default boolean needsHumidity() {
        return true;
    }

    /** Absolute temperature as the standards print it; the difference to the exact one is below 1e-5 of a factor. */
    static double printedKelvins(Temperature temperature) {
        return temperature.celsius() + 273;
    }

    /** Every standard, in the order in which tables show them. */
    static List<CorrectionStandard> all() {
        return List.of(
                new NoCorrection(),
                new SaeJ1349Of2004(),
                new SaeJ1349Of1990(),
                new Iso1585(),
                new Din70020(),
                new SaeJ607());
    }

    /** The standard of that id, or a finding with the nearest ids. */
    static Outcome<CorrectionStandard> find(String id, Place place) {
        List<String> ids = all().stream().map(CorrectionStandard::id).toList();
        List<String> nearest = NearestNames.of(id, ids);
        return all().stream()
                .filter(standard -> standard.id().equals(id))
                .findFirst()
                .map(Outcome::of)
                .orElseGet(() -> Outcome.failed(Finding.error(
                        FindingCode.AIR_STANDARD_UNKNOWN,
                        place,
                        Detail.of("name", id),
                        Detail.of("nearest", String.join(", ", nearest.isEmpty() ? ids : nearest)))));
    }

    /**
     * Factor and findings together.
     *
     * @param place what the findings are about, such as the pull
     * @throws IllegalArgumentException where the factor is not positive, as for a J1349 factor at more than six times normal pressure
     */
    default Correction correction(AirState air, Place place) {
        return new Correction(this, factor(air), air, check(air, place));
    }

    /** What lies outside the standard's range; empty when the factor may be used as it is. */
    default List<Finding> check(AirState air, Place place) {
        List<Finding> findings = new ArrayList<>();
        limits().ifPresent(limits -> {
            double kelvins = air.temperature().kelvins();
            double pascals = air.dryPressure().pascals();
            limits.kelvins()
                    .flatMap(span -> outside("temperature", kelvins, span))
                    .ifPresent(findings::add);
            limits.dryPascals()
                    .flatMap(span -> outside("dry_pressure", pascals, span))
                    .ifPresent(findings::add);
            outside("factor", factor(air), limits.factor()).ifPresent(findings::add);
        });
        return findings.stream().map(finding -> finding.at(place)).toList();
    }

    private Optional<Finding> outside(String quantity, double value, Span span) {
        double slack = 1e-9 * span.high();
        if (value >= span.low() - slack && value <= span.high() + slack) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(
                FindingCode.AIR_OUTSIDE_STANDARD,
                Place.nowhere(),
                Detail.of("standard", id()),
                Detail.of("quantity", quantity),
                Detail.of("value", value),
                Detail.of("low", span.low()),
                Detail.of("high", span.high())));
    }

    /**
     * Where a standard lets its factor be used.
     *
     * @param kelvins inlet air temperature in K; empty where the standard prints none
     * @param dryPascals dry pressure in Pa; empty where the standard prints none
     * @param factor the factor itself, dimensionless
     */
    record ValidRange(Optional<Span> kelvins, Optional<Span> dryPascals, Span factor) {
        /** No more than 7 % of correction: the bound of ISO 1585 and SAE J1349, taken over for the older standards that print none. */
        static final Span SEVEN_PERCENT = Span.of(0.93, 1.07);

        static ValidRange ofFactorOnly() {
            return new ValidRange(Optional.empty(), Optional.empty(), SEVEN_PERCENT);
        }

        static ValidRange ofKilopascals(double low, double high) {
            Span kelvins = Span.of(
                    Temperature.ofCelsius(15).kelvins(),
                    Temperature.ofCelsius(35).kelvins());
            Span pascals = Span.of(
                    Pressure.ofKilopascals(low).pascals(),
                    Pressure.ofKilopascals(high).pascals());
            return new ValidRange(Optional.of(kelvins), Optional.of(pascals), SEVEN_PERCENT);
        }
    }
}
