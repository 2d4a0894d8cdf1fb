package org.nextpull.intake.serial;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Assumptions;
import org.nextpull.Await;

/** Two pseudo-terminals, each the other end of the other, made by {@code socat}; closing it is pulling the plug. */
public final class PtyPair implements AutoCloseable {
    private final Path near;
    private final Path far;
    private final Process socat;

    private PtyPair(Path near, Path far, Process socat) {
        this.near = near;
        this.far = far;
        this.socat = socat;
    }

    /** Makes a pair whose ends are links in a folder. Without {@code socat} the test is skipped, but fails on the build server. */
    public static PtyPair plugIn(Path folder) throws IOException {
        Path near = folder.resolve("near");
        Path far = folder.resolve("far");
        Process socat;
        try {
            socat = new ProcessBuilder("socat", "pty,raw,echo=0,link=" + near, "pty,raw,echo=0,link=" + far)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException e) {
            if ("true".equals(System.getenv("CI"))) {
                throw new IOException("socat is not installed: .ci/run does it", e);
            }
            Assumptions.abort("socat is not installed, so nothing was tested on a pseudo-terminal");
            throw e;
        }
        BooleanSupplier isMade = () -> Files.exists(near) && Files.exists(far);
        Await.comes(Duration.ofSeconds(10), () -> isMade.getAsBoolean() || !socat.isAlive());
        if (!isMade.getAsBoolean()) {
            socat.destroyForcibly();
            throw new IOException("socat made no pseudo-terminals");
        }
        return new PtyPair(near, far, socat);
    }

    public String near() {
        return near.toString();
    }

    public String far() {
        return far.toString();
    }

    @Override
    public void close() {
        socat.destroyForcibly();
        try {
            socat.waitFor();
            Files.deleteIfExists(near);
            Files.deleteIfExists(far);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
