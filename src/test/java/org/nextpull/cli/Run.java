package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * One run of the program with its streams captured.
 *
 * @param status exit status
 * @param out standard output
 * @param err standard error
 */
record Run(int status, String out, String err) {
    /** Runs the command line; a blank line of words is split at its blanks. */
    static Run of(String line) {
        return of(line.isBlank() ? new String[0] : line.strip().split("\\s+"));
    }

    static Run of(String... args) {
        return typing("", args);
    }

    /** Runs the command line with lines typed on standard input. */
    static Run typing(String typed, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Main.run(
                args,
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The one JSON document on standard output. */
    JsonNode json() {
        try {
            JsonNode document = new ObjectMapper().readTree(out);
            assertThat(document.path("schema").asInt()).isEqualTo(1);
            return document;
        } catch (JsonProcessingException broken) {
            throw new AssertionError("no JSON document: " + out, broken);
        }
    }
}
