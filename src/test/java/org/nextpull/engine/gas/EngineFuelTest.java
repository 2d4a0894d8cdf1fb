package org.nextpull.engine.gas;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.fuel.Blends;

class EngineFuelTest {
    @Test
    void aFuelWithoutAFigureIsRefusedByItsName() {
        Outcome<EngineFuel> outcome =
                Blends.listed().find("avgas-100ll", Place.nowhere()).then(EngineFuel::of);
        assertThat(outcome.isFailed()).isTrue();
        assertThat(outcome.findings()).extracting(Finding::code).containsOnly(FindingCode.ENGINE_FUEL_LACKS);
        assertThat(outcome.findings())
                .extracting(finding -> finding.text("property").orElseThrow())
                .contains("research_octane", "latent_heat");
    }
}
