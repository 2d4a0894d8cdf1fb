package org.nextpull.window.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.session.DayByPull;
import org.nextpull.window.SampleDays;

class MapStripTest {
    private static final DayByPull DAY = DayByPull.of(SampleDays.input("hillclimb-e10-map"));

    @Test
    void aMapIsARowOfItsCellsWithWhatChangesMarked() {
        MapStrip map = MapStrip.of(DAY.after(2)).orElseThrow();
        assertThat(map.cells())
                .extracting(MapStrip.Cell::rpm)
                .containsExactly("3500", "4000", "4500", "5000", "5500", "6000", "6500", "7000");
        assertThat(map.cells()).allSatisfy(cell -> assertThat(cell.deg()).matches("\\d+\\.\\d"));
        assertThat(map.cells())
                .as("a step from the last pull")
                .anySatisfy(cell -> assertThat(cell.change()).startsWith("+"));
    }

    @Test
    void itIsCopiedAsALineOfSpeedsAndALineOfDegrees() {
        MapStrip map =
                new MapStrip(List.of(new MapStrip.Cell("3500", "24.0", "+1.0"), new MapStrip.Cell("7000", "30.5", "")));
        assertThat(map.tabbed()).isEqualTo("3500\t7000\n24.0\t30.5\n");
        assertThat(map.spoken()).isEqualTo("3500 rpm 24.0 deg, change +1.0; 7000 rpm 30.5 deg");
    }

    @Test
    void aSettingOfOneNumberIsNoMap() {
        assertThat(MapStrip.of(
                        DayByPull.of(SampleDays.input("hillclimb-e10-timing")).after(3)))
                .isEmpty();
    }
}
