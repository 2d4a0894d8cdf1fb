package org.nextpull.window.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.lang.reflect.Proxy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.SourceDataLine;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is handed to the mixer; no loudspeaker is needed. */
@Timeout(20)
class AlarmSoundTest {
    private static final double LOUDNESS_TOLERANCE = 0.02;

    private final ByteArrayOutputStream written = new ByteArrayOutputStream();
    private final List<AudioFormat> formats = new ArrayList<>();
    private final CountDownLatch drained = new CountDownLatch(1);
    private final CountDownLatch tones = new CountDownLatch(5);

    private SourceDataLine line(AudioFormat asked) {
        return (SourceDataLine) Proxy.newProxyInstance(
                getClass().getClassLoader(), new Class<?>[] {SourceDataLine.class}, (self, method, arguments) -> {
                    switch (method.getName()) {
                        case "open" -> formats.add(asked);
                        case "write" -> {
                            written.write((byte[]) arguments[0], (int) arguments[1], (int) arguments[2]);
                            tones.countDown();
                            return arguments[2];
                        }
                        case "drain" -> drained.countDown();
                        default -> {}
                    }
                    return null;
                });
    }

    private static double sample(byte[] bytes, int index) {
        return (short) ((bytes[2 * index] & 0xff) | (bytes[2 * index + 1] << 8)) / 32_768.0;
    }

    /** Frequency by the crossings of zero from below. */
    private static double hertz(byte[] bytes, double rate) {
        int rises = 0;
        for (int index = 1; index < bytes.length / 2; index++) {
            rises += sample(bytes, index - 1) < 0 && sample(bytes, index) >= 0 ? 1 : 0;
        }
        return rises * rate / (bytes.length / 2.0);
    }

    @Test
    void aChimeIsAFifthOfASecondOfALoudTone() throws Exception {
        try (AlarmSound.Mixer sound = new AlarmSound.Mixer(this::line)) {
            sound.chime();
            assertThat(drained.await(10, TimeUnit.SECONDS)).isTrue();
        }
        AudioFormat format = formats.get(0);
        byte[] bytes = written.toByteArray();
        int samples = bytes.length / format.getFrameSize();
        double power = 0;
        for (int index = 0; index < samples; index++) {
            power += sample(bytes, index) * sample(bytes, index) / samples;
        }
        assertThat(samples / format.getSampleRate()).isEqualTo(0.2f);
        // a sine of nine tenths of the most that the format holds, less its faded ends
        assertThat(Math.sqrt(power)).isCloseTo(0.9 / Math.sqrt(2), within(LOUDNESS_TOLERANCE));
        assertThat(hertz(bytes, format.getSampleRate())).isCloseTo(1320, within(6.0));
        assertThat(sample(bytes, 0)).isZero();
        assertThat(Math.abs(sample(bytes, samples - 1))).isLessThan(LOUDNESS_TOLERANCE);
    }

    @Test
    void anAlarmGoesOnInTwoTonesUntilItIsTurnedOff() throws Exception {
        try (AlarmSound.Mixer sound = new AlarmSound.Mixer(this::line)) {
            sound.sound(true);
            assertThat(tones.await(10, TimeUnit.SECONDS)).isTrue();
            assertThat(drained.getCount()).isEqualTo(1);
            sound.sound(false);
            assertThat(drained.await(10, TimeUnit.SECONDS)).isTrue();
        }
        int tone = AlarmSound.Mixer.tone(880).length;
        assertThat(Arrays.copyOfRange(written.toByteArray(), tone, 2 * tone)).isEqualTo(AlarmSound.Mixer.tone(880));
        assertThat(hertz(AlarmSound.Mixer.tone(880), formats.get(0).getSampleRate()))
                .isCloseTo(880, within(6.0));
    }

    @Test
    void aComputerWithoutAMixerSaysOnceThatAlarmsAreOnlySeen() throws Exception {
        List<String> said = new ArrayList<>();
        CountDownLatch tried = new CountDownLatch(3);
        try (AlarmSound.Mixer sound = new AlarmSound.Mixer(format -> {
            tried.countDown();
            throw new IllegalArgumentException("no line");
        })) {
            sound.whenSilent(said::add);
            sound.chime();
            sound.chime();
            assertThat(tried.await(10, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(said).containsExactly("No sound can be made on this computer: alarms are only SEEN.");
    }
}
