package org.nextpull.plan.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.nextpull.plan.SweepPlan;

class PlanWriterTest {
    private static void assertRoundTrip(SweepPlan plan) {
        String written = PlanText.write(plan);
        var again = PlanText.read(written, "written.toml");
        assertThat(again.value()).as(written).contains(plan);
        assertThat(PlanText.write(again.value().orElseThrow())).isEqualTo(written);
    }

    @Test
    void aPlanReadsBackEqual() {
        assertRoundTrip(PlanTextTest.read(FullPlan.TEXT));
        assertRoundTrip(SweepPlan.defaults());
    }

    @Test
    void numbersAreWrittenAsAPersonWroteThem() {
        String written = PlanText.write(PlanTextTest.read(FullPlan.TEXT));
        assertThat(written)
                .contains("displacement_l = 1.998\n")
                .contains("humidity_percent = 45\n")
                .contains("air_c = 24.5\n")
                .contains("coolant_c = [80, 95]\n")
                .contains("injector_duty_percent = 85\n")
                .contains("exhaust_temperature = \"EGT \\\"1\\\"\"");
    }

    @Test
    void everyKeyOfAFullPlanIsWritten() {
        String written = PlanText.write(PlanTextTest.read(FullPlan.TEXT));
        FullPlan.TEXT.lines().filter(line -> line.contains(" = ")).forEach(line -> {
            String key = line.substring(0, line.indexOf(" = "));
            assertThat(written).contains(key + " = ");
        });
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void anyDecimalsReadBackEqual(long seed) {
        Random random = new Random(seed);
        for (int trial = 0; trial < 40; trial++) {
            String text = String.format(
                    Locale.ROOT,
                    """
                    [engine]
                    displacement_l = %.4f
                    [air]
                    baro_kpa = %.3f
                    air_c = %.2f
                    humidity_percent = %.2f
                    [limits]
                    exhaust_c = %.3f
                    injector_duty_percent = %.3f
                    boost_kpa = %.5f
                    """,
                    0.05 + 8 * random.nextDouble(),
                    80 + 30 * random.nextDouble(),
                    -20 + 60 * random.nextDouble(),
                    100 * random.nextDouble(),
                    600 + 400 * random.nextDouble(),
                    10 + 80 * random.nextDouble(),
                    5 + 200 * random.nextDouble());
            assertRoundTrip(PlanTextTest.read(text));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tab\there",
                "back\\slash",
                "quote\"",
                "line\nbreak",
                "\u00e9\u4e16\ud83d\ude80",
                "a=b # [c]",
                "\u007f"
            })
    void namesOfAnyCharactersReadBackEqual(String name) {
        String own = "own." + name;
        SweepPlan plan = PlanTextTest.read("[engine]\nname = " + PlanValueText.text(name) + "\n[[blend]]\nname = "
                + PlanValueText.text(own) + "\ncarbon = 0.86\nhydrogen = 0.14\n[[blend]]\nname = 'x'\nof = { "
                + PlanValueText.key(own) + " = 1 }\nby = 'mass'");
        assertThat(plan.engine().name()).contains(name);
        assertRoundTrip(plan);
    }
}
