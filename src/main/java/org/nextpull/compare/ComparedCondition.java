package org.nextpull.compare;

import java.util.List;
import java.util.Optional;
import org.nextpull.finding.FindingCode;
import org.nextpull.math.Series;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Temperature;

/** What should be alike when labels are compared, and how far medians may differ before it is said (common practice, no source). */
enum ComparedCondition {
    INLET_AIR(FindingCode.COMPARE_INLET_AIR_DIFFERS, "kelvins", 3) {
        @Override
        Optional<Double> reading(MeasuredPull pull) {
            return pull.conditions().inletAir().map(Temperature::kelvins);
        }
    },
    COOLANT(FindingCode.COMPARE_COOLANT_DIFFERS, "kelvins", 4) {
        @Override
        Optional<Double> reading(MeasuredPull pull) {
            return pull.conditions().coolant().map(Temperature::kelvins);
        }
    },
    LAMBDA(FindingCode.COMPARE_LAMBDA_DIFFERS, "lambda", 0.015) {
        @Override
        Optional<Double> reading(MeasuredPull pull) {
            return pull.setting().lambda().map(Lambda::value);
        }
    },
    ADVANCE(FindingCode.COMPARE_ADVANCE_DIFFERS, "deg", 1) {
        @Override
        Optional<Double> reading(MeasuredPull pull) {
            return pull.setting().advance().or(() -> pull.setting().offset()).map(Advance::deg);
        }
    };

    private final FindingCode code;
    private final String detail;
    private final double allowed;

    ComparedCondition(FindingCode code, String detail, double allowed) {
        this.code = code;
        this.detail = detail;
        this.allowed = allowed;
    }

    abstract Optional<Double> reading(MeasuredPull pull);

    FindingCode code() {
        return code;
    }

    /** Name of the difference among the finding's details; its unit is the project's. */
    String detail() {
        return detail;
    }

    double allowed() {
        return allowed;
    }

    Series readings(List<MeasuredPull> pulls) {
        return Series.of(pulls.stream().flatMap(pull -> reading(pull).stream()).mapToDouble(Double::doubleValue));
    }
}
