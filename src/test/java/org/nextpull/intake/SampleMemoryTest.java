package org.nextpull.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

class SampleMemoryTest {
    private static final int ROWS = 2000;

    private static Samples pull(int seed) {
        SamplesBuilder builder = Samples.builder(List.of(Channel.of(Role.TIME), Channel.of(Role.LAMBDA)));
        for (int row = 0; row < ROWS; row++) {
            builder.row(10L * row + seed).set(0, seed + row / 3.0);
            if ((row + seed) % 7 == 0) {
                builder.set(1, Math.sqrt(row + seed));
            }
        }
        return builder.build();
    }

    @Test
    void whatGoesToTheFileComesBackBitForBit() {
        SampleMemory memory = new SampleMemory(2L * ROWS * (2 * 8 + 24));
        List<Supplier<Samples>> kept = new ArrayList<>();
        for (int count = 0; count < 5; count++) {
            kept.add(memory.keep(pull(count)));
        }
        assertThat(kept.get(0).get()).as("at hand").isSameAs(kept.get(0).get());
        assertThat(kept.get(4).get())
                .as("out of the file")
                .isNotSameAs(kept.get(4).get());
        for (int count : List.of(0, 2, 3, 4)) {
            Samples back = kept.get(count).get();
            Samples written = pull(count);
            assertThat(back.rows()).isEqualTo(ROWS);
            for (Channel channel : written.channels()) {
                assertThat(back.presentRows(channel)).isEqualTo(written.presentRows(channel));
                assertThat(back.presentValues(channel)).isEqualTo(written.presentValues(channel));
            }
            assertThat(back.line(ROWS - 1)).isEqualTo(written.line(ROWS - 1));
        }
    }

    @Test
    void rowsWithWordsStayAtHand() {
        SampleMemory memory = new SampleMemory(0);
        SamplesBuilder builder = Samples.builder(List.of(Channel.of(Role.TIME)));
        builder.row(1, Optional.of("stock"), Optional.empty()).set(0, 1.0);
        Samples samples = builder.build();
        assertThat(memory.keep(samples).get().label(0)).contains("stock");
    }
}
