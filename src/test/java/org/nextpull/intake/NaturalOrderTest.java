package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {
    @Test
    void numbersInNamesCountAsNumbersWhateverTheOrderBefore() {
        List<String> sorted = List.of(
                "a.csv",
                "Pull-1.csv",
                "pull-1.csv",
                "pull-02.csv",
                "pull-2.csv",
                "pull-10.csv",
                "pull-10-b.csv",
                "pull-99999999999999999999.csv",
                "x");
        Random random = new Random(3);
        for (int round = 0; round < 50; round++) {
            List<String> names = new ArrayList<>(sorted);
            Collections.shuffle(names, random);
            names.sort(new NaturalOrder());
            assertThat(names.indexOf("pull-2.csv")).isLessThan(names.indexOf("pull-10.csv"));
            assertThat(names.indexOf("pull-10.csv")).isLessThan(names.indexOf("pull-99999999999999999999.csv"));
            assertThat(names.get(0)).isEqualTo("a.csv");
            assertThat(names).isSortedAccordingTo(new NaturalOrder());
        }
    }
}
