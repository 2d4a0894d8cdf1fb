package org.nextpull.session;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.OptionalDouble;
import org.nextpull.channel.Channel;
import org.nextpull.channel.Role;
import org.nextpull.channel.Samples;

/**
 * Tells whether two stretches of samples are the same pull: the digest of the row of most torque (power, speed, where there is none),
 * which stays the same when the stretch is trimmed otherwise. Lambda is left out, since lining it up moves it.
 */
public final class PullFingerprint {
    private static final int BYTES = 16;
    private static final List<Role> RANKED = List.of(Role.TORQUE, Role.POWER, Role.ENGINE_SPEED, Role.ROLLER_SPEED);

    private PullFingerprint() {}

    /**
     * The digest. That of no rows is one and the same, and says nothing.
     *
     * @throws IllegalStateException on a Java without SHA-256, which its specification rules out
     */
    public static String of(Samples samples) {
        MessageDigest digest = sha256();
        int row = chosen(samples);
        if (row < samples.rows()) {
            samples.channels().stream()
                    .filter(channel -> channel.role() != Role.LAMBDA)
                    .map(channel -> cell(samples, channel, row))
                    .sorted()
                    .forEach(cell -> digest.update(cell.getBytes(StandardCharsets.UTF_8)));
            digest.update(
                    ByteBuffer.allocate(Long.BYTES).putLong(samples.line(row)).array());
        }
        return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
    }

    private static String cell(Samples samples, Channel channel, int row) {
        OptionalDouble value = samples.find(channel, row);
        return channel.id() + "=" + (value.isPresent() ? Double.toString(value.getAsDouble()) : "") + ";";
    }

    private static int chosen(Samples samples) {
        for (Role role : RANKED) {
            Channel channel = Channel.of(role);
            int best = -1;
            for (int row : samples.presentRows(channel)) {
                if (best < 0 || samples.value(channel, row) > samples.value(channel, best)) {
                    best = row;
                }
            }
            if (best >= 0) {
                return best;
            }
        }
        return 0;
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
