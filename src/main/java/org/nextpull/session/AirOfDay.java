package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.nextpull.air.AirState;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.NoCorrection;
import org.nextpull.air.PressureCheck;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.Conditions;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/** What the pulls of a day together show of its air: pressures that disagree, weather that is counted twice, boost and air that differ. */
final class AirOfDay {
    /** Band-average boost that differs by more than this confounds a sweep. */
    private static final double BOOST_SHARE = 0.01;

    /** Inlet air that differs by more than this between pulls changes knock and charge beyond what a correction can mend. */
    private static final double INLET_KELVINS = 10;

    private AirOfDay() {}

    static List<Finding> findings(SweepPlan plan, List<MeasuredPull> pulls) {
        List<Finding> findings = new ArrayList<>(differing(plan, pulls));
        findings.addAll(correction(plan, pulls));
        return findings;
    }

    private static List<Finding> correction(SweepPlan plan, List<MeasuredPull> pulls) {
        Optional<CorrectionStandard> already =
                plan.log().correctedBy().filter(standard -> !(standard instanceof NoCorrection));
        if (already.isPresent()) {
            return List.of(Finding.note(
                    FindingCode.LOG_CORRECTED_ALREADY,
                    Place.nowhere(),
                    Detail.of("standard", already.get().title())));
        }
        CorrectionStandard standard = plan.air().standard();
        if (standard instanceof NoCorrection) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>(PressureCheck.of(readings(plan, pulls), Place.nowhere()));
        if (plan.engine().isBoosted()) {
            findings.add(Finding.warning(
                    FindingCode.BOOST_CORRECTED_TWICE, Place.nowhere(), Detail.of("standard", standard.title())));
        }
        return findings;
    }

    /** A pull's air has the logger's barometer where there is one, else the plan's, which then agrees with itself. */
    private static PressureCheck.Readings readings(SweepPlan plan, List<MeasuredPull> pulls) {
        List<Conditions> conditions = pulls.stream()
                .filter(MeasuredPull::isUsed)
                .map(MeasuredPull::conditions)
                .toList();
        Optional<Pressure> barometer = median(conditions.stream()
                .flatMap(one -> one.air().stream())
                .map(AirState::barometer)
                .toList());
        Optional<Pressure> manifold = plan.engine().isBoosted()
                ? Optional.empty()
                : median(conditions.stream()
                        .flatMap(one -> one.manifold().stream())
                        .toList());
        return new PressureCheck.Readings(
                plan.air().baro(),
                barometer,
                Optional.empty(),
                manifold,
                PressureCheck.Readings.none().altitudeMetres());
    }

    private static Optional<Pressure> median(List<Pressure> pressures) {
        return pressures.stream()
                .sorted((one, other) -> Double.compare(one.pascals(), other.pascals()))
                .skip(pressures.size() / 2)
                .findFirst();
    }

    /** Boost that differs, and air that warms so much that settings are confounded. */
    private static List<Finding> differing(SweepPlan plan, List<MeasuredPull> pulls) {
        List<Finding> findings = new ArrayList<>();
        List<MeasuredPull> used = pulls.stream().filter(MeasuredPull::isUsed).toList();
        if (plan.engine().isBoosted()) {
            double[] boost = used.stream()
                    .flatMap(pull -> pull.conditions().manifold().stream())
                    .mapToDouble(Pressure::pascals)
                    .toArray();
            spread(boost)
                    .filter(range -> range.high() / range.low() - 1 > BOOST_SHARE)
                    .ifPresent(range -> findings.add(Finding.warning(
                            FindingCode.BOOST_DIFFERS,
                            Place.nowhere(),
                            Detail.of("percent", 100 * (range.high() / range.low() - 1)))));
        }
        double[] inlet = used.stream()
                .flatMap(pull -> pull.conditions().inletAir().stream())
                .mapToDouble(Temperature::kelvins)
                .toArray();
        spread(inlet)
                .filter(range -> range.width() > INLET_KELVINS)
                .ifPresent(range -> findings.add(Finding.warning(
                        FindingCode.INLET_AIR_DIFFERS, Place.nowhere(), Detail.of("kelvins", range.width()))));
        return findings;
    }

    private static Optional<Span> spread(double[] values) {
        return values.length < 2
                ? Optional.empty()
                : Optional.of(Span.of(
                        DoubleStream.of(values).min().orElseThrow(),
                        DoubleStream.of(values).max().orElseThrow()));
    }
}
