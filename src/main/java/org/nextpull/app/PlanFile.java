package org.nextpull.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.nextpull.finding.Finding;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.PlainText;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/**
 * A plan with its file. Not for the event thread.
 *
 * @param plan the plan
 * @param text as it was written
 * @param path where it lies; paths in it are relative to it
 */
public record PlanFile(SweepPlan plan, String text, Path path) {

    /** Reads a plan; failed with all that is wrong with it, else with what is worth saying of it. */
    public static Outcome<PlanFile> read(String name) {
        return text(name).then(text -> PlanText.read(text, name).map(plan -> new PlanFile(plan, text, Path.of(name))));
    }

    /** The text of a plan's file, whatever stands in it. */
    public static Outcome<String> text(String name) {
        return PlainText.read(name, PlanText.MOST_BYTES);
    }

    /** Whether writing there would overwrite something. */
    public static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name));
        } catch (InvalidPathException odd) {
            return false;
        }
    }

    /** Writes the text of a plan whole or not at all; empty when it was written, else why not. */
    public static Optional<Finding> write(String text, String name) {
        try {
            Path file = Path.of(name).toAbsolutePath();
            Path folder = file.getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            WrittenFiles.write(Map.of(file, WrittenFiles.Content.of(text)));
            return Optional.empty();
        } catch (IOException | InvalidPathException fault) {
            return Optional.of(WrittenFiles.notWritable(name, fault));
        }
    }

    /** A path of the plan, seen from where the plan lies. */
    public Path resolve(String relative) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? Path.of(relative) : parent.resolve(relative);
    }
}
