package org.nextpull.simulator;

import java.util.Optional;
import java.util.SplittableRandom;
import org.nextpull.channel.Samples;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Place;
import org.nextpull.intake.serial.Port;

/** One wire of a served engine: its rows become lines, late by the wire's delay, and may be spoilt for practice. For one thread. */
final class ServedWire implements AutoCloseable {
    /** A reader that comes later learns the columns within this time. */
    private static final double HEADER_EVERY_S = 20;

    private static final double SPOILT = 0.1;
    private static final double NS_A_SECOND = 1e9;

    private final WireFormat format;
    private final Port.Settings settings;
    private final Pace pace;
    private final PortFeed feed;
    private final SplittableRandom chance = new SplittableRandom(0);
    private double headerAtS;
    private boolean weighed;

    /**
     * How fast lines come.
     *
     * @param sampleHz rows in a second of the engine
     * @param speed seconds of the engine in a real one
     * @param delayS seconds of the engine between measuring and sending
     */
    record Pace(double sampleHz, double speed, double delayS) {}

    ServedWire(WireFormat format, Port.Settings settings, Pace pace, PortFeed feed) {
        this.format = format;
        this.settings = settings;
        this.pace = pace;
        this.feed = feed;
    }

    /** Starts to send. */
    void begin() {
        feed.begin();
    }

    /**
     * Sends what was just measured.
     *
     * @param samples one row, or none where the logger dropped it
     * @param timeS time of the engine
     * @param spoilt whether bytes change on their way
     * @return that the port is too slow for its lines, the first time that this shows
     */
    Optional<Finding> send(Samples samples, double timeS, boolean spoilt) {
        StringBuilder text = new StringBuilder();
        if (timeS >= headerAtS) {
            headerAtS = timeS + HEADER_EVERY_S;
            text.append(format.header());
        }
        int before = text.length();
        for (int row = 0; row < samples.rows(); row++) {
            text.append(format.text(samples, row));
        }
        int bytes = text.length() - before;
        String sent = spoilt ? spoilt(text) : text.toString();
        if (!sent.isEmpty()) {
            feed.send(sent, System.nanoTime() + Math.round(pace.delayS() / pace.speed() * NS_A_SECOND));
        }
        return weighed || bytes == 0 ? Optional.empty() : tooSlow(bytes * pace.sampleHz() * pace.speed());
    }

    private Optional<Finding> tooSlow(double bytesPerS) {
        weighed = true;
        double most = NS_A_SECOND / settings.port().byteNs();
        return bytesPerS <= most
                ? Optional.empty()
                : Optional.of(Finding.warning(
                        FindingCode.RIG_WIRE_TOO_SLOW,
                        Place.inFile(settings.device()),
                        Detail.of("settings", settings.port().text()),
                        Detail.of("most", (double) Math.round(most)),
                        Detail.of("bytes", (double) Math.round(bytesPerS))));
    }

    private String spoilt(StringBuilder text) {
        for (int at = 0; at < text.length(); at++) {
            if (chance.nextDouble() < SPOILT) {
                text.setCharAt(at, (char) chance.nextInt(256));
            }
        }
        return text.toString();
    }

    @Override
    public void close() {
        feed.close();
    }
}
