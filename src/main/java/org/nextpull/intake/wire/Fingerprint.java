package org.nextpull.intake.wire;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * What tells the content of a file from any other.
 *
 * @param length bytes of the file
 * @param sha256 SHA-256 (FIPS 180-4) of them, as 64 hexadecimal digits
 */
public record Fingerprint(long length, String sha256) {
    private static final int DIGITS = 64;

    public Fingerprint {
        if (sha256.length() != DIGITS) {
            throw new IllegalArgumentException("a SHA-256 has 64 digits: " + sha256);
        }
    }

    /** The fingerprint of what a digest has seen; the digest may go on. */
    public static Fingerprint of(long length, MessageDigest digest) {
        try {
            return new Fingerprint(length, HexFormat.of().formatHex(((MessageDigest) digest.clone()).digest()));
        } catch (CloneNotSupportedException e) {
            throw new IllegalStateException("the platform's SHA-256 cannot be copied", e);
        }
    }

    /** An empty digest. */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every platform has SHA-256", e);
        }
    }
}
