package org.nextpull.window.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Optional;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.intake.PlainText;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/** Reads and writes plan files. Not for the event thread. */
public final class PlanFiles {
    private PlanFiles() {}

    static Outcome<PlanForm> read(String name) {
        return PlainText.read(name.strip(), PlanText.MOST_BYTES).then(text -> PlanForm.of(text, name.strip()));
    }

    /** The plan in a file, or all that is wrong with it. */
    public static Outcome<SweepPlan> plan(String name) {
        return read(name).then(PlanForm::plan);
    }

    /** Whether writing there would overwrite something. */
    static boolean exists(String name) {
        try {
            return Files.exists(Path.of(name.strip()));
        } catch (InvalidPathException odd) {
            return false;
        }
    }

    /** Writes the plan whole or not at all; empty when it was written, else why not. */
    static Optional<Finding> write(PlanForm form, String name) {
        try {
            Path file = Path.of(name.strip()).toAbsolutePath();
            Path folder = file.getParent();
            if (folder == null || file.getFileName() == null) {
                return Optional.of(unwritable(name, "it is a folder"));
            }
            Files.createDirectories(folder);
            Path beside = Files.createTempFile(folder, "plan", ".part");
            try {
                Files.writeString(beside, form.draft().text(), StandardCharsets.UTF_8);
                Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(beside);
            }
            return Optional.empty();
        } catch (IOException | InvalidPathException fault) {
            return Optional.of(unwritable(name, why(fault)));
        }
    }

    private static Finding unwritable(String name, String why) {
        return Finding.error(FindingCode.FOLDER_NOT_WRITABLE, Place.inFile(name), Detail.of("why", why));
    }

    private static String why(Exception fault) {
        return fault.getClass().getSimpleName() + ": " + fault.getMessage();
    }
}
