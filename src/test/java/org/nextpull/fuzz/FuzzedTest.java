package org.nextpull.fuzz;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each seed of the fuzzer, and each input that it found, at its door. */
class FuzzedTest {
    static Stream<Path> seeds() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/test/resources/fuzz"))) {
            return files.filter(Files::isRegularFile).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void neverFailsNorHangs(Path seed) throws IOException {
        Fuzzed door =
                Fuzzed.valueOf(seed.getName(seed.getNameCount() - 2).toString().toUpperCase(Locale.ROOT));
        byte[] bytes = Files.readAllBytes(seed);
        assertTimeoutPreemptively(
                Duration.ofSeconds(5),
                () -> assertThatCode(() -> door.take(bytes)).doesNotThrowAnyException());
    }
}
