package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;
import org.nextpull.channel.SamplesBuilder;

class SampleBlobTest {
    private static final List<Channel> CHANNELS = List.of(
            Channel.of(Role.TIME), Channel.of(Role.TORQUE), new Channel(Role.LAMBDA, 2), Channel.of(Role.KNOCK_LEVEL));

    private static Samples random(long seed) {
        Random random = new Random(seed);
        double[] odd = {-0.0, Double.MIN_VALUE, -Double.MAX_VALUE, 1e-310, Math.PI};
        SamplesBuilder builder = Samples.builder(CHANNELS);
        int rows = random.nextInt(300);
        for (int row = 0; row < rows; row++) {
            builder.row(
                    random.nextLong() >>> 1,
                    random.nextBoolean() ? Optional.of("Grün \u0000\n=" + random.nextInt(3)) : Optional.empty(),
                    random.nextInt(5) == 0 ? Optional.of("e10") : Optional.empty());
            for (int channel = 0; channel < CHANNELS.size(); channel++) {
                if (random.nextInt(3) > 0) {
                    builder.set(
                            channel, random.nextInt(4) == 0 ? odd[random.nextInt(odd.length)] : random.nextGaussian());
                }
            }
        }
        return builder.build();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyBitComesBack(long seed) throws IOException {
        Samples before = random(seed);
        Samples after = SampleBlob.read(SampleBlob.write(before));
        assertThat(after).usingRecursiveComparison().isEqualTo(before);
        for (Channel channel : CHANNELS) {
            assertThat(Arrays.stream(after.presentValues(channel))
                            .map(Double::doubleToRawLongBits)
                            .toArray())
                    .isEqualTo(Arrays.stream(before.presentValues(channel))
                            .map(Double::doubleToRawLongBits)
                            .toArray());
        }
    }

    @Test
    void anEmptyStretchComesBack() throws IOException {
        Samples none = Samples.builder(List.of()).build();
        assertThat(SampleBlob.read(SampleBlob.write(none)).rows()).isZero();
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15, 16})
    void aChangedByteIsNoticed(long seed) {
        byte[] bytes = SampleBlob.write(random(seed));
        Random random = new Random(seed);
        for (int change = 0; change < 50; change++) {
            byte[] changed = bytes.clone();
            changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
            assertThatThrownBy(() -> SampleBlob.read(changed)).isInstanceOf(IOException.class);
        }
    }

    @Test
    void aCutBlobIsNoticed() {
        byte[] bytes = SampleBlob.write(random(3));
        for (int length = 0; length < bytes.length; length += 7) {
            byte[] cut = Arrays.copyOf(bytes, length);
            assertThatThrownBy(() -> SampleBlob.read(cut)).isInstanceOf(IOException.class);
        }
    }
}
