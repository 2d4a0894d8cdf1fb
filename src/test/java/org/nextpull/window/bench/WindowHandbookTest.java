package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.nextpull.app.DaySheet;
import org.nextpull.report.Shown;
import org.nextpull.session.OperatorAction;
import org.nextpull.unit.UnitSystem;
import org.nextpull.window.day.DaySource;
import org.nextpull.window.page.FootBar;
import org.nextpull.window.page.KeyCommand;
import org.nextpull.window.page.Work;

/** Holds the handbook's list of keys together with the keys that there are. */
class WindowHandbookTest {
    private static final Path PAGE = Path.of("src/site/markdown/window.md");

    private record Source(Optional<DaySource.Player> player) implements DaySource {
        @Override
        public void start(Consumer<DaySource.Moment> watcher) {}

        @Override
        public void tell(OperatorAction act) {}

        @Override
        public DaySheet sheet() {
            throw new IllegalStateException("no day");
        }

        @Override
        public void close() {}
    }

    private static List<KeyCommand> keys(Optional<DaySource.Player> player) {
        try (Work work = new Work()) {
            return new BenchActions(
                            new Source(player),
                            work,
                            new FootBar(),
                            Optional::empty,
                            Optional::empty,
                            () -> DaySheet.Order.usual(LocalDate.EPOCH, "test", new Shown(UnitSystem.METRIC)))
                    .keys();
        }
    }

    private static Set<KeyCommand> all() {
        Set<KeyCommand> all = new LinkedHashSet<>(keys(Optional.of(change -> {})));
        all.addAll(keys(Optional.empty()));
        return all;
    }

    @Test
    void everyKeyOfTheBenchPageHasItsRow() throws IOException {
        String page = Files.readString(PAGE);
        Matcher row = Pattern.compile("(?m)^\\| (.+?) \\| (.+?) \\|$").matcher(page);
        List<String> rows = new ArrayList<>();
        while (row.find()) {
            rows.add(row.group(1) + ": " + row.group(2));
        }
        for (KeyCommand key : all()) {
            assertThat(rows).contains("`" + key.shown() + "`: " + key.what());
        }
    }

    @Test
    void noKeyMeansTwoThingsAtOnce() {
        for (List<KeyCommand> together : List.of(keys(Optional.of(change -> {})), keys(Optional.empty()))) {
            assertThat(together.stream().flatMap(key -> key.strokes().stream())).doesNotHaveDuplicates();
            assertThat(together.stream().flatMap(key -> key.strokes().stream()))
                    .as("keys of the frame")
                    .doesNotContain("U", "D", "G", "F1", "F11", "ctrl Q", "1", "2", "3");
        }
    }
}
