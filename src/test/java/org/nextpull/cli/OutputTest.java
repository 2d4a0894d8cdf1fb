package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is printed, whatever the input holds and wherever it goes. */
class OutputTest {
    @TempDir
    private Path folder;

    @Test
    void controlCharactersAreReplacedAndTheBellAndLinesStay() throws IOException {
        StringWriter printed = new StringWriter();
        try (PrintWriter writer = new PrintWriter(new PlainWriter(printed))) {
            writer.print(
                    "a\u001b[2Jb\u009b31mc\u0000\u007f\u0080\u009f\u0008\tlambda \u03bb \ud83d\ude00\u00a0\r\n\u0007");
            writer.write('\u001b');
            writer.write("x\u001by".toCharArray(), 1, 2);
        }
        assertThat(printed).hasToString("a?[2Jb?31mc?????\tlambda \u03bb \ud83d\ude00\u00a0\r\n\u0007??y");
    }

    @Test
    void anEscapeCodeInANameDoesNotReachTheTerminal() {
        Run missing = Run.of("inspect", folder.resolve("day\u001b[31m.csv").toString());
        assertThat(missing.status()).isNotZero();
        assertThat(missing.err()).contains("day?[31m.csv").doesNotContain("\u001b");
        Run unknown = Run.of("fuel", "show", "e\u001b[2J85");
        assertThat(unknown.out() + unknown.err()).contains("e?[2J85").doesNotContain("\u001b");
    }
}
