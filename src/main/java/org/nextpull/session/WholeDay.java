package org.nextpull.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.response.MeasuredPull;
import org.nextpull.unit.Pressure;
import org.nextpull.unit.Span;
import org.nextpull.unit.Temperature;

/** What only the pulls of a day together can show: boost that differs, and air that warms so much that settings are confounded. */
final class WholeDay {
    /** Band-average boost that differs by more than this confounds a sweep. */
    private static final double BOOST_SHARE = 0.01;

    /** Inlet air that differs by more than this between pulls changes knock and charge beyond what a correction can mend. */
    private static final double INLET_KELVINS = 10;

    private WholeDay() {}

    static List<Finding> findings(SweepPlan plan, List<MeasuredPull> pulls) {
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
