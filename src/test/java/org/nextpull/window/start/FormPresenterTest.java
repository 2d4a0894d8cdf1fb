package org.nextpull.window.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.nextpull.app.PlanFile;
import org.nextpull.plan.text.KeyKind;
import org.nextpull.plan.text.PlanDraft;
import org.nextpull.plan.text.PlanKey;
import org.nextpull.plan.text.PlanKeys;
import org.nextpull.plan.text.PlanTable;
import org.nextpull.plan.text.PlanText;
import org.nextpull.report.Shown;
import org.nextpull.unit.UnitSystem;

class FormPresenterTest {
    private final FormPresenter presenter = new FormPresenter(new Shown(UnitSystem.METRIC));

    private static PlanKey<?> field(String table, String key) {
        return shown().filter(section -> section.name().equals(table))
                .flatMap(section -> section.keys().stream())
                .filter(field -> field.name().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<PlanTable<?>> shown() {
        return PlanKeys.tables().stream().filter(table -> table.presence() != PlanTable.Presence.LISTED_IN_TEXT);
    }

    static Stream<Path> shipped() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("sweep-plans"))) {
            return files.sorted().toList().stream();
        }
    }

    private FormPage page(PlanForm form) {
        return presenter.page(form.draft(), form.file(), form.isChanged());
    }

    @Test
    void theFormHasEveryKeyThatCanBeTyped() {
        PlanForm form = PlanForm.fresh();
        for (String table : List.of("candidate[1]", "band", "timing", "mixture", "wire[1]")) {
            form = form.switched(table, true);
        }
        List<String> rows = page(form).parts().stream()
                .flatMap(part -> part.rows().stream())
                .map(FormPage.Row::id)
                .toList();
        List<String> keys = new ArrayList<>();
        shown().forEach(table -> table.keys().stream()
                .filter(key -> key.kind() != KeyKind.IN_TEXT)
                .forEach(key -> keys.add(table.name().replaceFirst("^(wire|candidate)$", "$1[1]") + "." + key.name())));
        assertThat(rows).isEqualTo(keys).doesNotContain("log.columns").contains("wire[1].columns");
    }

    @Test
    void everyFieldHasAHintThatEndsAsASentence() {
        PlanKeys.tables().forEach(table -> {
            assertThat(table.purpose()).endsWith(".");
            table.keys()
                    .forEach(key -> assertThat(key.help())
                            .as(table.name() + "." + key.name())
                            .matches("[A-Z0-9].*\\."));
        });
    }

    @Test
    void unitsOfFieldsAreThoseOfTheirKeys() {
        Map<String, String> endings = Map.of(
                "_c",
                "°C",
                "_kpa",
                "kPa",
                "_rpm",
                "rpm",
                "_deg",
                "deg",
                "_percent",
                "%",
                "_s",
                "s",
                "_lambda",
                "lambda");
        PlanKeys.tables()
                .forEach(table -> table.keys()
                        .forEach(key -> endings.forEach((ending, unit) -> {
                            if (key.name().endsWith(ending)) {
                                assertThat(key.unitSign()).as(key.name()).isEqualTo(unit);
                            }
                        })));
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void aShippedPlanTypedIntoAnEmptyFormIsTheSamePlan(Path file) throws IOException {
        // blends of one's own are in the text of a plan alone
        String text = Files.readString(file)
                .replaceAll("(?s)\\[\\[blend]].*?(?=\\n\\[)", "")
                .replace("fuel = \"race\"", "fuel = \"e10\"");
        PlanDraft shown = PlanDraft.of(text, "p").value().orElseThrow();
        FormPage page = presenter.page(shown, Optional.of("p"), false);
        assertThat(page.errors()).isZero();
        PlanForm typed = new PlanForm(PlanDraft.empty(), Optional.empty(), PlanDraft.empty());
        for (FormPage.Part part : page.parts()) {
            for (FormPage.Row row : part.rows()) {
                typed = row.typed().isEmpty() ? typed : typed.typed(row.table(), row.field(), row.typed());
            }
        }
        assertThat(typed.plan().value()).isEqualTo(PlanText.read(text, "p").value());
    }

    @Test
    void severalErrorsAreShownAtTheirFieldsAtOnce() {
        PlanForm form = PlanForm.fresh()
                .typed("engine", field("engine", "displacement_l"), "two")
                .typed("band", field("band", "from_rpm"), "6000")
                .typed("band", field("band", "to_rpm"), "3000")
                .typed("limits", field("limits", "exhaust_c"), "9000")
                .typed("start", field("start", "oil_c"), "90 to 70");
        FormPage page = page(form);
        assertThat(said(page, "engine.displacement_l")).contains("must be a number");
        assertThat(said(page, "band.from_rpm")).contains("\"From\" ", "must be below \"To\"");
        assertThat(said(page, "limits.exhaust_c")).contains("from 100 to 1400");
        assertThat(said(page, "start.oil_c")).contains("lower number first");
        assertThat(page.row("timing.start_deg").orElseThrow().isMissing())
                .as("nobody came to it yet: needed, and no error")
                .isTrue();
        assertThat(page.row("timing.start_deg").orElseThrow().otherwise()).isEqualTo("needed");
        assertThat(page.loose()).isEmpty();
        assertThat(page.errors()).isEqualTo(7);
    }

    private static String said(FormPage page, String id) {
        return page.row(id).orElseThrow().said().get(0).sentence();
    }

    @Test
    void defaultsStandInEmptyFieldsAndFollowTheEngine() {
        PlanForm form = PlanForm.fresh();
        assertThat(page(form).row("timing.largest_step_deg").orElseThrow().otherwise())
                .isEqualTo("2");
        PlanForm boosted = form.typed("engine", field("engine", "induction"), "boosted");
        assertThat(page(boosted).row("timing.largest_step_deg").orElseThrow().otherwise())
                .isEqualTo("1");
        assertThat(page(boosted).row("timing.largest_step_deg").orElseThrow().spoken())
                .contains("In deg.")
                .contains("Left empty: 1.");
    }

    @Test
    void aSweepIsSwitchedOnAndOff() {
        PlanForm off = PlanForm.fresh().switched("timing", false);
        assertThat(page(off).row("timing.start_deg")).isEmpty();
        PlanForm on = off.switched("mixture", true);
        assertThat(page(on).row("mixture.start_lambda").orElseThrow().isMissing())
                .isTrue();
        assertThat(said(page(saved(on, "plan.toml")), "mixture.start_lambda")).contains("is missing");
    }

    @Test
    void wiresAreAddedAndTakenOut() {
        PlanForm two = PlanForm.fresh()
                .added("wire")
                .added("wire")
                .typed("wire[1]", field("wire", "device"), "COM1")
                .typed("wire[2]", field("wire", "device"), "COM2");
        assertThat(page(two).parts().stream().map(FormPage.Part::title)).contains("Wire 1", "Wire 2");
        PlanForm one = two.switched("wire[1]", false);
        assertThat(page(one).row("wire[1].device").orElseThrow().typed()).isEqualTo("COM2");
    }

    @Test
    void aKeyThatNoPlanHasIsNamedAndCanBeTakenOut() {
        PlanForm form = PlanForm.of("[limits]\nexhaustc = 900 # hot\n[log]\ncolumns = { torque = 'x' }\n", "p.toml")
                .value()
                .orElseThrow();
        FormPage page = page(form);
        assertThat(page.loose()).hasSize(1);
        assertThat(page.loose().get(0).said().sentence()).contains("exhaust_c");
        assertThat(page.kept()).contains("limits.exhaustc").contains("log.columns");
        PlanForm mended = form.without(page.loose().get(0).removable().orElseThrow());
        assertThat(page(mended).errors()).isZero();
        assertThat(mended.draft().text()).contains("columns = { torque = 'x' }");
    }

    @Test
    void whatIsTypedIsAlsoShownInUsUnits() {
        FormPresenter us = new FormPresenter(new Shown(UnitSystem.US));
        PlanForm form = PlanForm.fresh()
                .typed("limits", field("limits", "exhaust_c"), "900")
                .typed("start", field("start", "coolant_c"), "80 to 95")
                .typed("limits", field("limits", "oil_pressure_kpa"), "250");
        FormPage page = us.page(form.draft(), Optional.empty(), true);
        assertThat(page.row("limits.exhaust_c").orElseThrow().converted()).isEqualTo("1652 °F");
        assertThat(page.row("start.coolant_c").orElseThrow().converted()).isEqualTo("176 to 203 °F");
        assertThat(page.row("limits.oil_pressure_kpa").orElseThrow().converted())
                .isEqualTo("36.3 psi");
        assertThat(page(form).row("limits.exhaust_c").orElseThrow().converted()).isEmpty();
    }

    @Test
    void aPlanIsWrittenAndReadBackTheSame(@TempDir Path folder) throws IOException {
        PlanForm form = PlanForm.fresh()
                .typed("engine", field("engine", "name"), "a \"quoted\" \\ name")
                .switched("timing", false)
                .switched("band", false);
        String file = folder.resolve("new/plan.toml").toString();
        assertThat(PlanFile.write(form.draft().text(), file)).isEmpty();
        PlanForm read = PlanForm.read(file).value().orElseThrow();
        assertThat(read.draft()).isEqualTo(form.draft());
        assertThat(read.plan().value()).isEqualTo(form.plan().value());
        try (Stream<Path> files = Files.list(folder.resolve("new"))) {
            assertThat(files).hasSize(1);
        }
        assertThat(PlanFile.write(form.draft().text(), folder.toString())).isPresent();
        assertThat(PlanForm.read(folder.resolve("none.toml").toString()).isFailed())
                .isTrue();
        assertThat(form.isChanged()).isTrue();
        assertThat(saved(form, file).isChanged()).isFalse();
    }

    private static PlanForm saved(PlanForm form, String file) {
        return new PlanForm(form.draft(), Optional.of(file), form.draft());
    }
}
