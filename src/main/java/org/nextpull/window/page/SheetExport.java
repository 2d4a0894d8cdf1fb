package org.nextpull.window.page;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.nextpull.app.DaySheet;
import org.nextpull.finding.Outcome;
import org.nextpull.report.FindingText;

/**
 * The question where the sheet of a day goes, with its CSV and JSON; it is written on the working thread.
 *
 * @param foot asks, and says what was written
 */
public record SheetExport(Work work, FootBar foot) {
    /**
     * Asks, and writes.
     *
     * @param of whose sheet it is, behind the question; may be empty
     * @param name of the files, where no other is given
     * @param order how it is written
     * @param sheet reads the day, away from the event thread
     */
    public void ask(String of, String name, DaySheet.Order order, Supplier<Outcome<DaySheet>> sheet) {
        foot.ask(new Question(
                "Write sheet, CSV and JSON" + of + ".",
                List.of(Question.Field.folder("Folder", "."), Question.Field.narrow("Name", name)),
                texts -> {
                    String stem = Question.word(texts.get(1)).orElse(name);
                    if (!stem.matches("[^/\\\\]{1,100}")) {
                        return Optional.of(Question.noWord("Name", "that of a file, without folders"));
                    }
                    work.think(
                            () -> sheet.get().then(day -> DaySheet.write(texts.get(0), stem, day, order)),
                            written -> foot.say(said(stem, written, order)));
                    return Optional.empty();
                }));
    }

    private static String said(String stem, Outcome<Path> written, DaySheet.Order order) {
        return written.value()
                .map(folder -> "Wrote " + stem + ".html, .csv and .json into "
                        + folder.toAbsolutePath().normalize() + ".")
                .orElseGet(() -> FindingText.in(order.shown()).first(written.findings()));
    }
}
