package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.air.AirState;
import org.nextpull.air.CorrectionStandard;
import org.nextpull.air.NoCorrection;
import org.nextpull.air.PressureCheck;
import org.nextpull.air.PressureReadings;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.Conditions;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Pressure;

/** What is worth saying of the air and the correction of a day: pressures that disagree, and weather that is counted twice. */
final class AirOfDay {
    private AirOfDay() {}

    static List<Finding> findings(SweepPlan plan, List<MeasuredPull> pulls) {
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
    private static PressureReadings readings(SweepPlan plan, List<MeasuredPull> pulls) {
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
        return new PressureReadings(
                plan.air().baro(),
                barometer,
                Optional.empty(),
                manifold,
                PressureReadings.none().altitudeMetres());
    }

    private static Optional<Pressure> median(List<Pressure> pressures) {
        return pressures.stream()
                .sorted((one, other) -> Double.compare(one.pascals(), other.pascals()))
                .skip(pressures.size() / 2)
                .findFirst();
    }
}
