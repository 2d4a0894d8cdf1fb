package org.nextpull.intake.capture;

import java.nio.file.Path;
import java.time.InstantSource;
import org.nextpull.intake.wire.Chunk;
import org.nextpull.intake.wire.SessionClock;

/** A program that captures numbered lines, and says after each that it is in the file, until it is killed. */
final class CaptureChild {
    private CaptureChild() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        long number = Long.parseLong(arguments[1]);
        CaptureFolder captures = new CaptureFolder(folder);
        SessionClock clock =
                captures.resume(System::nanoTime, InstantSource.system()).clock();
        CaptureWriter writer = CaptureWriter.open(captures.fileOf("wire"), "wire", clock);
        while (true) {
            writer.received(Chunk.of("wire", clock.now(), number + " " + "x".repeat((int) (number % 300)) + "\n"));
            System.out.println(number);
            number++;
        }
    }
}
