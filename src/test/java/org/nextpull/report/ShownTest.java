package org.nextpull.report;

import static org.assertj.core.api.Assertions.assertThat;

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
}
