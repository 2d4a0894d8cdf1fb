package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class ManPageTest {
    private final PrintWriter nowhere = new PrintWriter(PrintWriter.nullWriter());
    private final CommandLine program =
            Program.commandLine(new Console(nowhere, nowhere, new BufferedReader(Reader.nullReader())));

    @Test
    void namesEachCommandAndOption() {
        String page = ManPage.of(program);

        assertThat(page).startsWith(".TH NEXTPULL 1\n");
        program.getSubcommands().forEach((name, command) -> {
            assertThat(page).contains(".SS nextpull " + name.replace("-", "\\-") + "\n");
            command.getCommandSpec().options().stream()
                    .filter(option -> !option.usageHelp() && !option.versionHelp())
                    .forEach(option ->
                            assertThat(page).contains(option.longestName().replace("-", "\\-")));
        });
    }

    /** A line that began with a dot or an apostrophe by chance would be lost. */
    @Test
    void beginsNoLineOfTextAsAMacro() {
        assertThat(ManPage.of(program).lines().filter(line -> line.matches("[.'].*")))
                .allMatch(line -> line.matches("\\.(TH|SH|SS|PP|TP|B)( .*)?"));
    }

    @Test
    void isMadeOfAllCommandsWhereNoneIsAskedFor() {
        assertThat(program.getSubcommands()).hasSize(13).containsKeys("advise", "window");
        assertThat(Program.commandLine(new Console(nowhere, nowhere, new BufferedReader(Reader.nullReader())), "air")
                        .getSubcommands())
                .containsOnlyKeys("air");
    }
}
