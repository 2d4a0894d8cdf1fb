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
import org.nextpull.fit.Kin;
import org.nextpull.plan.SweepPlan;
import org.nextpull.plan.text.PlanText;
import org.nextpull.session.SessionResult;

class ExperienceTest {
    @TempDir
    private Path folder;

    private Notebook open() throws IOException {
        return Notebook.open(folder.resolve("notebook.db"));
    }

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
    void theSameEngineIsKnownByItsNameAndOthersByTheirClass() throws IOException {
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, SampleDays.of("hillclimb-e10-timing"));
            SampleDays.keep(notebook, SampleDays.of("hillclimb-manifold"));
            Experience same = notebook.experience(engine("name = \"Hill-climb two-litre \"\n"))
                    .orElseThrow();
            assertThat(same.kin()).isEqualTo(Kin.ENGINE);
            assertThat(same.days()).isEqualTo(2);
            assertThat(same.scatter()).isPresent();
            String near = "name = \"another\"\ndisplacement_l = 1.8\ncylinders = 4\n";
            assertThat(notebook.experience(engine(near)).map(Experience::kin)).hasValue(Kin.CLASS);
            assertThat(notebook.experience(engine("displacement_l = 1.8\ncylinders = 6\n")))
                    .isEmpty();
            assertThat(notebook.experience(engine("displacement_l = 1.2\ncylinders = 4\n")))
                    .isEmpty();
            assertThat(notebook.experience(engine(near + "induction = \"boosted\"\n")))
                    .isEmpty();
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
            SampleDays.Day other = SampleDays.of("hillclimb-manifold");
            assertThat(notebook.experience(other.input().plan(), other.sources()))
                    .isPresent();
        }
    }

    @Test
    void whatWasLearnedIsSaidAndKeptWithTheSession() throws IOException {
        SampleDays.Day day = SampleDays.of("hillclimb-e10-timing");
        try (Notebook notebook = open()) {
            SampleDays.keep(notebook, SampleDays.of("hillclimb-manifold"));
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
