package org.nextpull.notebook;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.nextpull.session.OperatorAction;
import org.nextpull.session.SessionResult;

/** A program that keeps sessions pull by pull and says after each commit what is kept, until it is killed. */
final class KeepingChild {
    private KeepingChild() {}

    public static void main(String[] arguments) throws Exception {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        List<SessionResult> results = new ArrayList<>();
        int candidates = day.sources().get(0).candidates().size();
        for (int count = 1; count <= candidates; count++) {
            results.add(day.first(count).result());
        }
        try (Notebook notebook = Notebook.open(Path.of(arguments[0]))) {
            System.out.println("ready");
            while (true) {
                long id = notebook.begin(day.start());
                for (int count = 1; count <= candidates; count++) {
                    notebook.keepPull(id, SampleDays.MORNING, day.first(count).input(), results.get(count - 1));
                    System.out.println(id + " " + count);
                    notebook.keepAct(
                            id, SampleDays.MORNING, new OperatorAction.Note(OptionalInt.of(count), "after " + count));
                }
                notebook.close(id, SampleDays.MORNING);
            }
        }
    }
}
