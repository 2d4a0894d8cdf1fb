package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ShownTest {
    @Test
    void oneOfAThingIsNoPlural() {
        assertThat(Shown.count(1, "pull")).isEqualTo("1 pull");
        assertThat(Shown.count(0, "pull")).isEqualTo("0 pulls");
        assertThat(Shown.count(12, "more pull")).isEqualTo("12 more pulls");
        assertThat(Shown.count(1, "degree") + " of freedom").isEqualTo("1 degree of freedom");
        assertThat(Shown.count(2.5, "degree")).isEqualTo("2.5 degrees");
    }

    @Test
    void aNumberIsRoundedAsFormatsRoundIt() {
        Random random = new Random(3);
        for (int i = 0; i < 20_000; i++) {
            // halves of the last place, and any other number
            double value = i % 2 == 0 ? random.nextInt(-4000, 4000) / 16.0 : random.nextGaussian() * 100;
            int places = random.nextInt(5);
            String format = String.format(Locale.ROOT, "%." + places + "f", value);
            assertThat(Shown.fixed(value, places))
                    .isEqualTo(format.matches("-0(\\.0*)?") ? format.substring(1) : format);
        }
    }

    @Test
    void aNumberIsNoLongerThanFourDigitsNeed() {
        assertThat(Shown.plain(3)).isEqualTo("3");
        assertThat(Shown.plain(0.25)).isEqualTo("0.25");
        assertThat(Shown.plain(1234.5)).isEqualTo("1234.5");
        assertThat(Shown.plain(2.0004)).isEqualTo("2");
        assertThat(Shown.plain(-0.00000001)).isEqualTo("0");
        assertThat(Shown.plain(1_000_000)).isEqualTo("1000000");
    }

    @Test
    void whatIsNoFiniteNumberIsSaidAsSuch() {
        assertThat(Shown.fixed(Double.POSITIVE_INFINITY, 1)).isEqualTo("Infinity");
        assertThat(Shown.plain(Double.NEGATIVE_INFINITY)).isEqualTo("-Infinity");
    }
}
