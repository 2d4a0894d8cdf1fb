package org.nextpull.window.page;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.LineUnavailableException;
import javax.sound.sampled.SourceDataLine;
import org.tinylog.Logger;

/** The sound of alarms. Safe for several threads; nothing here waits. */
public interface AlarmSound {
    /** Sounds, or falls silent. */
    void sound(boolean on);

    /** One short sound. */
    void chime();

    /** Sounds alarms through the mixer of the platform: two tones in turn, on a thread of its own. */
    final class Mixer implements AlarmSound, AutoCloseable {
        private static final float RATE = 22_050;
        private static final double TONE_S = 0.2;
        private static final double LOW_HZ = 880;
        private static final double HIGH_HZ = 1320;
        private static final double LOUD = 0.9 * Short.MAX_VALUE;
        private static final double FADE_S = 0.005;

        private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
            Thread made = new Thread(task, "nextpull-window-sound");
            made.setDaemon(true);
            return made;
        });
        private final Lines lines;
        private volatile Consumer<String> listener = text -> {};
        private volatile boolean on;
        private boolean isTold;

        /** Where a line to the loudspeaker comes from. */
        @FunctionalInterface
        interface Lines {
            SourceDataLine line(AudioFormat format) throws LineUnavailableException;
        }

        public Mixer() {
            this(AudioSystem::getSourceDataLine);
        }

        Mixer(Lines lines) {
            this.lines = lines;
        }

        /** Tries whether the mixer is there, and tells a listener, once and on any thread, when no sound can be made. */
        public void whenSilent(Consumer<String> told) {
            listener = told;
            thread.execute(() -> onLine(line -> {}));
        }

        @Override
        public void sound(boolean wanted) {
            boolean starts = wanted && !on;
            on = wanted;
            if (starts) {
                thread.execute(() -> play(true));
            }
        }

        @Override
        public void chime() {
            if (!on) {
                thread.execute(() -> play(false));
            }
        }

        private void play(boolean alarm) {
            onLine(line -> {
                line.start();
                byte[] low = tone(LOW_HZ);
                byte[] high = tone(HIGH_HZ);
                line.write(high, 0, high.length);
                while (alarm && on) {
                    line.write(low, 0, low.length);
                    line.write(high, 0, high.length);
                }
                line.drain();
            });
        }

        private void onLine(Consumer<SourceDataLine> use) {
            AudioFormat format = new AudioFormat(RATE, 16, 1, true, false);
            try (SourceDataLine line = lines.line(format)) {
                line.open(format, (int) (2 * RATE * TONE_S));
                use.accept(line);
            } catch (LineUnavailableException | IllegalArgumentException silent) {
                if (!isTold) {
                    isTold = true;
                    Logger.warn("no sound: {}", silent.getMessage());
                    listener.accept("No sound can be made on this computer: alarms are only SEEN.");
                }
            }
        }

        /** Signed samples of 16 bits, low byte first, faded at both ends so that it does not click. */
        static byte[] tone(double hertz) {
            int count = (int) (RATE * TONE_S);
            byte[] bytes = new byte[2 * count];
            for (int index = 0; index < count; index++) {
                double edge = Math.min(index, count - 1 - index) / (RATE * FADE_S);
                int sample = (int) (LOUD * Math.min(1, edge) * Math.sin(2 * Math.PI * hertz * index / RATE));
                bytes[2 * index] = (byte) sample;
                bytes[2 * index + 1] = (byte) (sample >> 8);
            }
            return bytes;
        }

        @Override
        public void close() {
            on = false;
            thread.shutdown();
        }
    }
}
