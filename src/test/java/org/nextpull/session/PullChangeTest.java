package org.nextpull.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.KnockMark;
import org.nextpull.session.Days.Run;

class PullChangeTest {
    private static final SessionResult DAY =
            Days.ofTable(List.of(new Run(20, 200), new Run(22, 204), new Run(24, 202), new Run(26, 210)));

    private static PullChange of(int number) {
        return PullChange.of(DAY, DAY.pulls().get(number - 1));
    }

    @Test
    void aPullIsComparedWithTheBestAndTheFirstOfThoseBeforeIt() {
        PullChange third = of(3);
        assertThat(third.response()).hasValue(202);
        assertThat(third.best().orElseThrow().pull()).isEqualTo(2);
        assertThat(third.best().orElseThrow().percent()).isCloseTo(100 * (202 / 204.0 - 1), within(1e-9));
        assertThat(third.baseline().orElseThrow().pull()).isEqualTo(1);
        assertThat(third.baseline().orElseThrow().percent()).isCloseTo(1, within(1e-9));
    }

    @Test
    void aPullThatKnockedIsNotTheBest() {
        SessionResult day = Days.ofTable(
                List.of(new Run(20, 200), new Run(22, 204), new Run(24, 206, KnockMark.HEARD), new Run(22, 203)));
        PullChange fourth = PullChange.of(day, day.pulls().get(3));
        assertThat(fourth.best().orElseThrow().pull()).isEqualTo(2);
    }

    @Test
    void theFirstPullHasNothingBesideIt() {
        assertThat(of(1).response()).hasValue(200);
        assertThat(of(1).best()).isEqualTo(Optional.empty());
        assertThat(of(1).baseline()).isEqualTo(Optional.empty());
    }
}
