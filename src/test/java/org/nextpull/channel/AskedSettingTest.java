package org.nextpull.channel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class AskedSettingTest {
    private static final AskedSetting ALL = AskedSetting.none()
            .withValues(Optional.of(Advance.ofDeg(24)), Optional.empty(), Optional.of(Lambda.of(0.87)))
            .withConfiguration(Optional.of("stock"), Optional.of("e10"))
            .withKnock(KnockMark.HEARD)
            .withNote(Optional.of("rain"));

    @Test
    void whatIsNotSaidIsAsTheOtherSaysIt() {
        AskedSetting joined = AskedSetting.none()
                .withConfiguration(Optional.of("cam"), Optional.empty())
                .orElse(ALL);

        assertThat(joined.setting().label()).contains("cam");
        assertThat(joined.setting().fuel()).contains("e10");
        assertThat(joined.setting().advance()).contains(Advance.ofDeg(24));
        assertThat(joined.knock()).isEqualTo(KnockMark.HEARD);
    }

    /** Advance and offset are two ways to say one thing: an offset from now on does not stand beside a flat advance of before. */
    @Test
    void anOffsetTakesThePlaceOfAFlatAdvance() {
        AskedSetting joined = AskedSetting.none()
                .withValues(Optional.empty(), Optional.of(Advance.ofDeg(2)), Optional.empty())
                .orElse(ALL);

        assertThat(joined.setting().advance()).isEmpty();
        assertThat(joined.setting().offset()).contains(Advance.ofDeg(2));
        assertThat(joined.setting().lambda()).contains(Lambda.of(0.87));
    }

    @Test
    void knockAndRemarkStayWithTheirPullWhenTheNextIsSet() {
        AskedSetting next = ALL.ofNextPull();

        assertThat(next.setting().advance()).contains(Advance.ofDeg(24));
        assertThat(next.setting().label()).contains("stock");
        assertThat(next.knock()).isEqualTo(KnockMark.NOT_MEASURED);
        assertThat(next.setting().note()).isEmpty();
    }
}
