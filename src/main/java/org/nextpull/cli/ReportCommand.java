package org.nextpull.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.nextpull.app.DayInput;
import org.nextpull.app.DaySheet;
import org.nextpull.session.SessionResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code report}: the sheet that another shop can check. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the sheet of a day as one HTML file that prints on A4 and Letter.",
            "Page 1 is for the customer: result, before and after, chart, map. The rest is for the shop: every pull, "
                    + "method, limits and findings. The pulls as CSV and all figures as JSON are written beside it."
        })
final class ReportCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private DayOptions day = new DayOptions();

    @Option(
            names = "--out",
            paramLabel = "FILE|-",
            defaultValue = "sheet.html",
            description =
                    "Where to write; - is standard output, and then nothing beside it (default: ${DEFAULT-VALUE}).")
    private String out = "sheet.html";

    @Option(
            names = "--against",
            paramLabel = "LABEL",
            description = "Label that the others are compared with; the one that ran first when left out.")
    private Optional<String> against = Optional.empty();

    @Option(names = "--title", paramLabel = "TEXT", description = "The job in your words, as the heading.")
    private Optional<String> title = Optional.empty();

    @Mixin
    private OutputOptions.Units units = new OutputOptions.Units();

    ReportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        DayInput input = day.readLabelled();
        DaySheet sheet = DaySheet.of(input);
        SessionResult result = sheet.replay().whole();
        DaySheet.Order order = new DaySheet.Order(
                title, against, LocalDate.now(ZoneId.systemDefault()), Program.version(), units.shown());
        if (out.equals("-")) {
            console.out().print(sheet.html(order));
        } else {
            Program.usable(DaySheet.write(out, sheet, order))
                    .forEach(file -> console.err().println("wrote " + file));
        }
        console.print(input.findings());
        boolean nothing = result.isWithoutAnswer();
        return input.someFailed() || nothing ? ExitCodes.BAD_INPUT : ExitCodes.DONE;
    }
}
