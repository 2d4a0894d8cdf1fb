package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.nextpull.intake.serial.PtyPair;

/** {@code engine serve} as a process of its own on a pseudo-terminal. */
@Timeout(120)
class EngineServeIT {
    private static final String PLAN = """
            [engine]
            displacement_l = 1.6
            cylinders = 4
            [dyno]
            kind = "engine-brake"
            torque_at = "crank"
            inertia_in_log = true
            [band]
            from_rpm = 4000
            to_rpm = 5000
            rows_every_rpm = 500
            [timing]
            start_deg = 20
            least_deg = 14
            most_deg = 36
            [[wire]]
            columns = ["rpm", "torque [N.m]"]
            """;

    @TempDir
    private Path folder;

    private String plan() throws IOException {
        return Files.writeString(folder.resolve("plan.toml"), PLAN).toString();
    }

    private Process start(String port, String... more) throws IOException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "org.nextpull.cli.Main",
                "engine",
                "serve",
                "--plan",
                plan(),
                "--seed",
                "5",
                "--port",
                port));
        line.addAll(List.of(more));
        return new ProcessBuilder(line).redirectErrorStream(true).start();
    }

    private static void type(Process process, String text) throws IOException {
        OutputStream in = process.getOutputStream();
        in.write(text.getBytes(StandardCharsets.UTF_8));
        in.flush();
    }

    private static String readUntil(BufferedReader out, String mark) throws IOException {
        StringBuilder text = new StringBuilder();
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            text.append(line).append('\n');
            if (line.contains(mark)) {
                return text.toString();
            }
        }
        throw new AssertionError("\"" + mark + "\" never came: " + text);
    }

    private static BufferedReader output(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    private static String rest(BufferedReader out) {
        return String.join("\n", out.lines().toList());
    }

    @Test
    void aDayIsTypedAndTheTruthComesAtTheEnd() throws Exception {
        try (PtyPair pair = PtyPair.plugIn(folder)) {
            Path truth = folder.resolve("truth.toml");
            Process process = start(pair.near(), "--speed", "20", "--truth", truth.toString());
            type(process, "help\nwhy\nbanana\ngarbage x\nidle 9999\n22\n99\n60\n\n24,5\n\nend\n");
            String said = rest(output(process));
            assertThat(process.waitFor()).as(said).isZero();
            assertThat(said)
                    .contains("The engine idles, set to 20.0 deg.")
                    .contains("Type   to")
                    .contains("\"why\" is neither a number nor a word")
                    .contains("\"banana\" is neither a number nor a word")
                    .contains("garbage takes seconds")
                    .contains("idle takes seconds")
                    .contains("Set to 22.0 deg.")
                    .contains("No engine runs at 99.0 deg")
                    .contains("The plan allows advance from 14.000 to 36.000, not 60.000")
                    .contains("Pull 1 at 22.0 deg")
                    .contains("Pull 2 at 24.5 deg")
                    .contains("Pull 2 has ended");
            assertThat(Files.readString(truth)).contains("seed = 5", "pulls = 2", "advance_deg = 24.5");
        }
    }

    /** 130 is what shells give to a program that Ctrl-C ended: 128 and the number of the signal. */
    @Test
    void controlCEndsItInGoodOrder() throws Exception {
        try (PtyPair pair = PtyPair.plugIn(folder)) {
            Process process = start(pair.near());
            BufferedReader out = output(process);
            readUntil(out, "The engine idles");
            type(process, "\n");
            readUntil(out, "Pull 1 at");
            new ProcessBuilder("kill", "-INT", String.valueOf(process.pid()))
                    .start()
                    .waitFor();
            String said = rest(out);
            assertThat(process.waitFor()).as(said).isEqualTo(130);
            assertThat(said).contains("The truth of engine 5").contains("Pulls: 1");
        }
    }

    @Test
    void theEndOfInputEndsItAfterWhatWasTyped() throws Exception {
        try (PtyPair pair = PtyPair.plugIn(folder)) {
            Process process = start(pair.near(), "--speed", "20");
            type(process, "\n");
            process.getOutputStream().close();
            String said = rest(output(process));
            assertThat(process.waitFor()).as(said).isZero();
            assertThat(said).contains("Pull 1 has ended").contains("Pulls: 1");
        }
    }

    @Test
    void aPortThatIsPulledOutEndsItWithASentence() throws Exception {
        PtyPair pair = PtyPair.plugIn(folder);
        String port = pair.near();
        Process process = start(port);
        BufferedReader out = output(process);
        readUntil(out, "The engine idles");
        pair.close();
        String said = rest(out);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        assertThat(said).contains(port + " went away, so the engine stops").contains("The truth of engine 5");
    }

    @ParameterizedTest
    @CsvSource({
        "no-such-port, there is no such port, 1",
        "plan.toml, this is not a serial port, 1",
        "'', needs the name of a port, 1"
    })
    void aPortThatIsNoneIsSaidInASentence(String name, String sentence, int status) throws Exception {
        Process process = start(name.isEmpty() ? name : folder.resolve(name).toString());
        process.getOutputStream().close();
        String said = rest(output(process));
        assertThat(process.waitFor()).as(said).isEqualTo(status);
        assertThat(said).contains(sentence).doesNotContain("Exception");
    }

    @Test
    void wrongUsageIsSaid() throws Exception {
        assertThat(Run.of("engine serve --plan " + plan()).status()).isEqualTo(2);
        Run slow = Run.of("engine serve --plan " + plan() + " --port a --speed 0");
        assertThat(slow.status()).isEqualTo(2);
        assertThat(slow.err()).contains("--speed lies between 0.1 and 100");
        Run nowhere = Run.of("engine serve --plan " + plan() + " --port a --truth " + folder.resolve("no/such/file"));
        assertThat(nowhere.status()).isEqualTo(1);
        assertThat(nowhere.err()).contains("Nothing could be written");
    }
}
