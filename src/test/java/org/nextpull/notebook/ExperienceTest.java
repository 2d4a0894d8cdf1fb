package org.nextpull.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.fit.Experience;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.SessionResult;

class ExperienceTest {
    @TempDir
    private Path folder;

    private Notebook open() throws IOException {
        return Notebook.open(folder.resolve("notebook.db"));
    }

    private static final String TIMING = "[timing]\nstart_deg = 20\nleast_deg = 10\nmost_deg = 40\n";

    private static SweepPlan engine(String text) {
        return PlanText.read("[engine]\n" + text + "[fuel]\nblend = \"e10\"\n", "test.toml")
                .value()
                .orElseThrow();
    }

    @Test
    void anEmptyNotebookTeachesNothing() throws IOException {
        try (Notebook notebook = open()) {
            assertThat(notebook.experience(
                            SampleDays.of("hillclimb-e10-timing").input().plan()))
                    .isEmpty();
        }
    }

    @Test
    void theSameEngineIsKnownByItsNameAndWhatItsSparkIsCountedIn() throws IOException {
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-timing"));
            String name = "name = \"Hill-climb two-litre \"\n";
            Experience same = notebook.experience(engine(name + TIMING)).orElseThrow();
            assertThat(same.days()).isEqualTo(1);
            assertThat(notebook.experience(engine("name = \"another\"\n" + TIMING)))
                    .isEmpty();
            assertThat(notebook.experience(engine(name + TIMING + "sets = \"offset\"\n")))
                    .isEmpty();
        }
    }

    @Test
    void aDayGoesOnFromTheDayBeforeItAndSaysOnHowManyItRests() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-map");
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-timing"));
            Experience first =
                    notebook.experience(day.input().plan(), day.sources()).orElseThrow();
            SampleDays.keep(notebook, day.with(day.input().withExperience(first)));
            Experience second = notebook.experience(day.input().plan()).orElseThrow();
            assertThat(second.days()).isEqualTo(2);
            assertThat(second.knowledge()).isNotEqualTo(first.knowledge());
            assertThat(KnowledgeText.read(KnowledgeText.of(second.knowledge()))).isEqualTo(second.knowledge());
        }
    }

    @Test
    void aDayDoesNotLearnFromItself() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, day);
            assertThat(notebook.experience(day.input().plan(), day.sources())).isEmpty();
            assertThat(notebook.experience(day.input().plan(), day.first(3).sources()))
                    .isEmpty();
            SampleDays.Day other = SampleDays.of("hillclimb-e10-map");
            assertThat(notebook.experience(other.input().plan(), other.sources()))
                    .isPresent();
        }
    }

    @Test
    void whatWasLearnedIsSaidAndKeptWithTheSession() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-map"));
            Experience learned =
                    notebook.experience(day.input().plan(), day.sources()).orElseThrow();
            SampleDays.Day taught = day.with(day.input().withExperience(learned));
            SessionResult result = taught.result();
            Finding said = result.findings().stream()
                    .filter(finding -> finding.code() == FindingCode.EXPERIENCE_OF_ENGINE)
                    .findFirst()
                    .orElseThrow();
            assertThat(said.number("days")).hasValue(1);
            KeptSession kept = notebook.session(SampleDays.keep(notebook, taught));
            assertThat(kept.input().experience()).isEqualTo(Optional.of(learned));
            assertThat(kept.result().verdict()).isEqualTo(result.verdict());
        }
    }
}
