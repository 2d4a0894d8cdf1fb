package org.nextpull.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestNamesTest {
    private static final List<String> KNOWN =
            List.of("sae-j1349-2004", "sae-j1349-1990", "sae-j607", "iso-1585", "din-70020", "none");

    @Test
    void aSlipOfTheFingerFindsItsName() {
        assertThat(NearestNames.of("iso-1558", KNOWN)).first().isEqualTo("iso-1585");
        assertThat(NearestNames.of("DIN 70020", KNOWN)).first().isEqualTo("din-70020");
        assertThat(NearestNames.of("nnoe", KNOWN)).containsExactly("none");
    }

    @Test
    void aPartOfANameFindsAllThatHoldItNearestFirst() {
        assertThat(NearestNames.of("sae", KNOWN)).containsExactly("sae-j607", "sae-j1349-1990", "sae-j1349-2004");
        assertThat(NearestNames.of("J1349", KNOWN)).containsExactly("sae-j1349-1990", "sae-j1349-2004");
    }

    @Test
    void aStrangerFindsNothing() {
        assertThat(NearestNames.of("weather", KNOWN)).isEmpty();
        assertThat(NearestNames.of("", KNOWN)).isEmpty();
    }
}
