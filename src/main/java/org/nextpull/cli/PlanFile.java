package org.nextpull.cli;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import org.nextpull.finding.Detail;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.finding.Place;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;

/**
 * A plan, read from its file.
 *
 * @param plan the plan
 * @param text as it was written
 * @param path where it lies; paths in it are relative to it
 * @param findings what is worth saying of it
 */
record PlanFile(SweepPlan plan, String text, Path path, List<Finding> findings) {
    PlanFile {
        findings = List.copyOf(findings);
    }

    /** Reads a plan, or gives up with all that is wrong with it. */
    static PlanFile read(String name) {
        String text = text(name);
        Outcome<SweepPlan> outcome = PlanText.read(text, name);
        SweepPlan plan = outcome.value().orElseThrow(() -> new Program.BadInput(outcome.findings()));
        return new PlanFile(plan, text, Path.of(name), outcome.findings());
    }

    private static String text(String name) {
        try {
            return Files.readString(Path.of(name), StandardCharsets.UTF_8);
        } catch (NoSuchFileException | InvalidPathException missing) {
            throw new Program.BadInput(List.of(Finding.error(FindingCode.FILE_NOT_FOUND, Place.inFile(name))));
        } catch (MalformedInputException binary) {
            throw new Program.BadInput(List.of(Finding.error(FindingCode.PLAN_NOT_TEXT, Place.inFile(name))));
        } catch (IOException unreadable) {
            throw new Program.BadInput(List.of(Finding.error(
                    FindingCode.FILE_UNREADABLE,
                    Place.inFile(name),
                    Detail.of("why", String.valueOf(unreadable.getMessage())))));
        }
    }

    /** A path of the plan, seen from where the plan lies. */
    Path resolve(String relative) {
        Path parent = path.toAbsolutePath().getParent();
        return parent == null ? Path.of(relative) : parent.resolve(relative);
    }
}
