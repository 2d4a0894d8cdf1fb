package org.nextpull.simulator;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.nextpull.channel.EngineSetting;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;
import org.nextpull.unit.Span;

/** Whether a setting keeps to what the plan allows. */
final class PlanSpan {
    private static final double LEAST_BIT = 1e-9;

    private PlanSpan() {}

    static List<Finding> check(SweepPlan plan, EngineSetting setting) {
        List<Finding> findings = new ArrayList<>();
        plan.timing().ifPresent(timing -> {
            Span allowed = timing.allowedDeg();
            setting.advance()
                    .map(Advance::deg)
                    .ifPresent(deg -> check("advance", deg, allowed).ifPresent(findings::add));
            setting.offset()
                    .map(Advance::deg)
                    .ifPresent(deg -> check("offset", deg, allowed).ifPresent(findings::add));
            setting.map().stream()
                    .flatMap(map -> map.cells().stream())
                    .filter(cell -> plan.band()
                            .filter(band -> band.contains(cell.rpm()))
                            .isPresent())
                    .forEach(cell ->
                            check("advance", cell.advance().deg(), allowed).ifPresent(findings::add));
        });
        plan.mixture().ifPresent(mixture -> {
            Span allowed = mixture.allowedLambda();
            setting.lambda()
                    .map(Lambda::value)
                    .ifPresent(lambda -> check("lambda", lambda, allowed).ifPresent(findings::add));
        });
        return findings;
    }

    private static Optional<Finding> check(String name, double value, Span allowed) {
        boolean inside = value >= allowed.low() - LEAST_BIT && value <= allowed.high() + LEAST_BIT;
        return inside
                ? Optional.empty()
                : Optional.of(Finding.error(
                        FindingCode.RIG_SETTING_OUTSIDE,
                        Place.nowhere(),
                        Detail.of("name", name),
                        Detail.of("value", value),
                        Detail.of("least", allowed.low()),
                        Detail.of("most", allowed.high())));
    }
}
