package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
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
        try (PrintWriter writer = new PrintWriter(new Main.PlainWriter(printed, false))) {
            writer.print(
                    "a\u001b[2Jb\u009b31mc\u0000\u007f\u0080\u009f\u0008\tlambda \u03bb \ud83d\ude00\u00a0\r\n\u0007");
            writer.write('\u001b');
            writer.write("x\u001by".toCharArray(), 1, 2);
        }
        assertThat(printed).hasToString("a?[2Jb?31mc?????\tlambda \u03bb \ud83d\ude00\u00a0\r\n\u0007??y");
    }

    @Test
    void aTerminalWithoutUtf8GetsTheSignsOfUnitsInAscii() throws IOException {
        StringWriter printed = new StringWriter();
        try (PrintWriter writer = new PrintWriter(new Main.PlainWriter(printed, true))) {
            writer.print("905 \u00b0C, 181.4 N\u00b7m, 0.2 kg\u00b7m\u00b2, 8 cm\u00b3, \u00b10.3 %\u001b");
        }
        assertThat(printed).hasToString("905 degC, 181.4 N.m, 0.2 kg.m2, 8 cm3, +-0.3 %?");
    }

    @Test
    void anEscapeCodeInANameDoesNotReachTheTerminal() {
        Run missing = Run.of("inspect", folder.resolve("day\u001b[31m.csv").toString());
        assertThat(missing.status()).isNotZero();
        assertThat(missing.err()).contains("day?[31m.csv").doesNotContain("\u001b");
        Run unknown = Run.of("fuel", "show", "e\u001b[2J85");
        assertThat(unknown.out() + unknown.err()).contains("e?[2J85").doesNotContain("\u001b");
    }

    @Test
    void outputThatCannotBeWrittenEndsWithStatusOneAndASentence() {
        Run full = onFullDevice("fuel", "list", "--json");
        assertThat(full.status()).isEqualTo(1);
        assertThat(full.err()).isEqualToIgnoringNewLines("The output could not be written.");
        Run wrong = onFullDevice("fuel", "list", "--json", "--no-such-option");
        assertThat(wrong.status()).isEqualTo(2);
        assertThat(wrong.err()).doesNotContain("could not be written");
    }

    private static Run onFullDevice(String... args) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        OutputStream full = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("No space left on device");
            }
        };
        int status = Main.run(
                args,
                InputStream.nullInputStream(),
                new PrintStream(full, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Run(status, "", err.toString(StandardCharsets.UTF_8));
    }
}
