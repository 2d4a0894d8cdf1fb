package org.nextpull.report.html;

import com.samskivert.mustache.Mustache;
import com.samskivert.mustache.Template;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.nextpull.fuel.Caution;
import org.nextpull.plan.SweepPlan;
import org.nextpull.report.Cautions;
import org.nextpull.report.FuelWords;
import org.nextpull.report.Shown;
import org.nextpull.session.ComparedDay;
import org.nextpull.session.Replay;
import org.nextpull.session.SessionResult;

/** The sheet of a day: one HTML file without script and without anything that it would have to fetch. */
public final class Sheet {
    private Sheet() {}

    /** The sheet of a day, headed by the name of its engine. */
    public static String of(Replay replay, Shown shown) {
        return of(replay, shown, Heading.none());
    }

    /** The sheet of a day under a heading. */
    public static String of(Replay replay, Shown shown, Heading heading) {
        return of(replay, Optional.empty(), shown, heading);
    }

    /** The sheet of a day whose labels were compared, under a heading. */
    public static String of(Replay replay, Optional<ComparedDay> compared, Shown shown, Heading heading) {
        SessionResult result = replay.whole();
        String title = heading.title().or(() -> result.plan().engine().name()).orElse("Engine without a name");
        ComparePart comparison = new ComparePart(compared, result, shown);
        DayParts day = new DayParts(replay, shown);
        Stream<Section> sections = Stream.of(
                day.answer(),
                new JobPart(result.plan(), shown).section(),
                new ChartsPart(result, shown).section(comparison.hasOverlay()),
                day.rows(),
                comparison.section(),
                day.pulls(),
                day.conditions(),
                day.path(),
                day.changes(),
                day.findings(),
                new JobPart(result.plan(), shown).toRepeat(),
                Section.of("Cautions").withItems(cautions(result.plan())));
        Page page = new Page(
                title,
                heading.day().stream().toList(),
                new FrontPart(result, comparison, shown).front(),
                heading.software().stream().toList(),
                sections.filter(section -> !section.isEmpty()).toList());
        return template().execute(page);
    }

    /** Of engines and dynos, and of every fuel that the plan names; what is said of several is said once. */
    private static List<String> cautions(SweepPlan plan) {
        Map<Caution, List<String>> fuels = new LinkedHashMap<>();
        plan.namedFuels()
                .forEach(fuel -> fuel.cautions()
                        .forEach(caution -> fuels.computeIfAbsent(caution, first -> new ArrayList<>())
                                .add(fuel.name())));
        Stream<String> ofFuels = fuels.entrySet().stream()
                .map(one -> String.join(", ", one.getValue()) + ": " + FuelWords.sentence(one.getKey()));
        return Stream.concat(Cautions.sentences().stream(), ofFuels).toList();
    }

    /** All that the template is given. */
    record Page(
            String title, List<String> below, FrontPart.Front front, List<String> software, List<Section> sections) {}

    private static Template template() {
        try (Reader sheet = part("sheet")) {
            return Mustache.compiler().escapeHTML(true).withLoader(Sheet::part).compile(sheet);
        } catch (IOException broken) {
            throw new UncheckedIOException("the template of the sheet cannot be read", broken);
        }
    }

    private static Reader part(String name) {
        return new InputStreamReader(
                Objects.requireNonNull(Sheet.class.getResourceAsStream(name + ".html"), name), StandardCharsets.UTF_8);
    }

    /**
     * What stands at the head of a sheet, as the caller knows it: the sheet itself has no clock.
     *
     * @param title the job in the operator's words
     * @param day when it was run or printed, as text
     * @param software name and version of the program
     */
    public record Heading(Optional<String> title, Optional<String> day, Optional<String> software) {
        public static Heading none() {
            return new Heading(Optional.empty(), Optional.empty(), Optional.empty());
        }
    }
}
