package org.nextpull.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.nextpull.engine.cycle.BurnDuration;
import org.nextpull.engine.gas.TestFuels;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class EngineLimitsTest {
    private static final OperatingPoint POINT = new OperatingPoint(
            3000, Advance.ofDeg(20), Lambda.of(0.9), TestFuels.E10, OperatingPoint.Surroundings.reference());

    @Test
    void aCompressionRatioBelowOneIsRefusedByName() {
        Outcome<ModelEngine> outcome = ModelEngine.of(ExampleEngines.hillClimb().withCompressionRatio(0.9));
        assertThat(outcome.isFailed()).isTrue();
        Finding finding = outcome.findings().get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.ENGINE_PARAMETER_OUT_OF_RANGE);
        assertThat(finding.text("name")).contains("compression_ratio");
        assertThat(finding.number("value")).hasValue(0.9);
    }

    @Test
    void everyWrongNumberIsNamedAtOnce() {
        EngineDesign design = with(ExampleEngines.hillClimb().combustion(), new EngineDesign.Exhaust(-1, 0.2))
                .withCompressionRatio(Double.NaN);
        Outcome<ModelEngine> outcome = ModelEngine.of(design);
        assertThat(outcome.findings())
                .extracting(finding -> finding.text("name").orElseThrow())
                .containsExactly("compression_ratio", "back_pressure_pa");
    }

    @Test
    void aBurnLongerThanTheStrokeIsRefused() {
        EngineDesign quick = ExampleEngines.hillClimb();
        EngineDesign slow = with(
                new EngineDesign.Combustion(
                        new BurnDuration(190_000), 0.1, 0.97, EngineDesign.Combustion.HotSpot.USUAL),
                quick.exhaust());
        Outcome<EnginePoint> outcome = ModelEngine.of(slow).then(engine -> engine.at(POINT.atRpm(6000)));
        assertThat(outcome.isFailed()).isTrue();
        assertThat(outcome.findings().get(0).code()).isEqualTo(FindingCode.ENGINE_BURN_TOO_LONG);
        assertThat(outcome.findings().get(0).number("deg").orElseThrow()).isGreaterThan(180);
    }

    @Test
    void anOperatingPointOutsideTheCorrelationsIsRefusedByName() {
        ModelEngine engine = ModelEngine.of(ExampleEngines.hillClimb()).value().orElseThrow();
        assertThat(engine.at(POINT.atAdvance(120)).findings())
                .extracting(finding -> finding.text("name").orElseThrow())
                .containsExactly("advance_deg");
        assertThat(engine.at(POINT.atLambda(3)).findings())
                .extracting(finding -> finding.text("name").orElseThrow())
                .containsExactly("lambda");
        assertThat(engine.at(POINT.atRpm(Double.NaN)).isFailed()).isTrue();
    }

    @Test
    void theExamplesAreEngines() {
        assertThat(ModelEngine.of(ExampleEngines.hillClimb()).isFailed()).isFalse();
        assertThat(ModelEngine.of(ExampleEngines.hatchback()).isFailed()).isFalse();
        assertThat(ModelEngine.of(ExampleEngines.boosted()).isFailed()).isFalse();
    }

    private static EngineDesign with(EngineDesign.Combustion combustion, EngineDesign.Exhaust exhaust) {
        EngineDesign example = ExampleEngines.hillClimb();
        return new EngineDesign(
                example.name(),
                example.cylinder(),
                example.cylinders(),
                example.valves(),
                example.breathing(),
                example.boost(),
                combustion,
                example.walls(),
                example.friction(),
                exhaust);
    }
}
