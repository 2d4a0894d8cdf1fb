package blackbox;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The shaded jar, run as a user runs it. */
final class Program {
    private static final int PATIENCE_S = 120;

    private Program() {}

    /** What a run gave. */
    record Run(int status, String out, String err) {}

    static Run run(Path folder, String... arguments) throws IOException, InterruptedException {
        String jar = System.getProperty("nextpull.jar", "target/nextpull.jar");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-jar",
                Path.of(jar).toAbsolutePath().toString()));
        command.addAll(List.of(arguments));
        Path err = Files.createTempFile("err", ".txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(err.toFile())
                .start();
        process.getOutputStream().close();
        String out;
        try (InputStream stream = process.getInputStream()) {
            out = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        assertThat(process.waitFor(PATIENCE_S, TimeUnit.SECONDS)).as("it ends").isTrue();
        String said = Files.readString(err);
        Files.delete(err);
        assertThat(out + said).as("no stack trace reaches a user").doesNotContain("\tat org.nextpull");
        return new Run(process.exitValue(), out, said);
    }
}
