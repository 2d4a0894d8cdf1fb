package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.Writer;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program with a small heap and files that are larger: an answer, or a sentence and status 1, and no trace. */
class SmallHeapIT {
    @TempDir
    private Path folder;

    private record Ended(int status, String said) {}

    private Ended run(int megabytes, String... words) throws IOException, InterruptedException, URISyntaxException {
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-XX:+UseSerialGC",
                "-cp",
                classPath(),
                Main.class.getName()));
        line.addAll(List.of(words));
        Path said = folder.resolve("said.txt");
        Process process = new ProcessBuilder(line)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("it ends").isTrue();
        return new Ended(process.exitValue(), Files.readString(said));
    }

    private static String classPath() throws URISyntaxException {
        if (!(Main.class.getClassLoader() instanceof URLClassLoader loader)) {
            return System.getProperty("java.class.path");
        }
        List<String> parts = new ArrayList<>();
        for (URL url : loader.getURLs()) {
            parts.add(Path.of(url.toURI()).toString());
        }
        return String.join(File.pathSeparator, parts);
    }

    @Test
    void manyMorePullsThanFitAreAdvisedOn() throws Exception {
        Path log = folder.resolve("many-pulls.csv");
        try (Writer out = Files.newBufferedWriter(log)) {
            out.write("time_s,rpm,throttle_percent,torque_nm,advance_deg,egt_c,coolant_c,oil_c\n");
            for (int row = 0; row < 120_000; row++) {
                boolean pull = row % 120 < 90;
                out.write("%d.%d,%d,%d,%d,24.0,820.0,88.0,95.0\n"
                        .formatted(
                                row / 10,
                                row % 10,
                                pull ? 3000 + 40 * (row % 120) : 2000,
                                pull ? 100 : 10,
                                180 + row % 7));
            }
        }
        Ended inspected = run(32, "inspect", log.toString());
        assertThat(inspected.said()).contains("  1000  ").doesNotContain("OutOfMemoryError");
        assertThat(inspected.status()).isEqualTo(ExitCodes.DONE);
        Path plan = Files.writeString(
                folder.resolve("plan.toml"),
                "[timing]\nstart_deg = 20\nleast_deg = 16\nmost_deg = 36\n[band]\nfrom_rpm = 3500\nto_rpm = 6000\n");
        Ended advised = run(32, "advise", "--plan", plan.toString(), log.toString(), "--no-notebook");
        assertThat(advised.said()).contains("\n1000  ").doesNotContain("OutOfMemoryError");
        assertThat(advised.status()).isEqualTo(ExitCodes.DONE);
        String sheet = folder.resolve("sheet.html").toString();
        Ended reported = run(32, "report", "--plan", plan.toString(), "--out", sheet, log.toString(), "--no-notebook");
        assertThat(reported.said()).contains("sheet.json").doesNotContain("OutOfMemoryError");
        assertThat(reported.status()).isEqualTo(ExitCodes.DONE);
    }

    @Test
    void aLineOfAHundredMegabytesIsNoLog() throws Exception {
        Path log = folder.resolve("one-line.csv");
        try (Writer out = Files.newBufferedWriter(log)) {
            out.write("time_s,rpm,torque_nm\n");
            String part = "1,2,3,".repeat(100_000);
            for (int count = 0; count < 167; count++) {
                out.write(part);
            }
        }
        Ended ended = run(48, "inspect", log.toString());
        assertThat(ended.said()).contains("one-line.csv").doesNotContain("OutOfMemoryError");
        assertThat(ended.status()).isEqualTo(ExitCodes.BAD_INPUT);
    }

    @Test
    void aHugePlanIsNoPlan() throws Exception {
        Path plan = folder.resolve("huge.toml");
        try (Writer out = Files.newBufferedWriter(plan)) {
            String part = "# nothing but remarks\n".repeat(10_000);
            for (int count = 0; count < 450; count++) {
                out.write(part);
            }
        }
        Ended ended = run(48, "advise", "--plan", plan.toString(), "no.csv");
        assertThat(ended.said()).contains("it is no plan").doesNotContain("OutOfMemoryError");
        assertThat(ended.status()).isEqualTo(ExitCodes.BAD_INPUT);
    }
}
