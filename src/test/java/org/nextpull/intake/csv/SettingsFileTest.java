package org.nextpull.intake.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.nextpull.channel.AskedSetting;
import org.nextpull.channel.KnockMark;
import org.nextpull.finding.Finding;
import org.nextpull.finding.FindingCode;
import org.nextpull.finding.Outcome;
import org.nextpull.intake.ByteSource;
import org.nextpull.unit.Advance;
import org.nextpull.unit.Lambda;

class SettingsFileTest {
    private static Outcome<List<AskedSetting>> read(String text) {
        return SettingsFile.read(new ByteSource() {
            @Override
            public String name() {
                return "settings.csv";
            }

            @Override
            public InputStream open() {
                return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
            }
        });
    }

    /** Rows that nobody reads would look as if nothing had been asked. */
    @Test
    void aFileThatIsNotReadWholeIsNotReadAtAll() {
        Outcome<List<AskedSetting>> outcome =
                read("file,pull,advance_deg\n" + "a.csv,1,24.5\n".repeat(FirstPart.MOST_CHARS / 13 + 1));
        assertThat(outcome.value()).isEmpty();
        assertThat(outcome.findings()).extracting(Finding::code).containsExactly(FindingCode.SETTINGS_TOO_LONG);
    }

    @Test
    void everyColumnIsRead() {
        Outcome<List<AskedSetting>> outcome = read("""
                file,pull,order,advance_deg,offset_deg,lambda,fuel,label,knock,note
                a.csv,1,3,24.5,,0.87,e10,long pipe,no,"cold, first"
                a.csv,2,4,,-2,,,,yes,
                a.csv,3,5,20,,,,,,
                """);
        assertThat(outcome.findings()).isEmpty();
        List<AskedSetting> settings = outcome.value().orElseThrow();
        AskedSetting first = settings.get(0);
        assertThat(first.file()).contains("a.csv");
        assertThat(first.pull()).hasValue(1);
        assertThat(first.order()).hasValue(3);
        assertThat(first.setting().advance()).contains(Advance.ofDeg(24.5));
        assertThat(first.setting().lambda()).contains(Lambda.of(0.87));
        assertThat(first.setting().label()).contains("long pipe");
        assertThat(first.setting().note()).contains("cold, first");
        assertThat(settings)
                .extracting(AskedSetting::knock)
                .containsExactly(KnockMark.NONE, KnockMark.HEARD, KnockMark.NOT_MEASURED);
        assertThat(settings.get(1).setting().offset()).contains(Advance.ofDeg(-2));
        assertThat(settings.get(1).setting().advance()).isEmpty();
    }

    @Test
    void semicolonsAndDecimalCommasAreRead() {
        assertThat(read("pull;advance_deg;lambda\n1;24,5;0,87\n")
                        .value()
                        .orElseThrow()
                        .get(0)
                        .setting()
                        .advance())
                .contains(Advance.ofDeg(24.5));
    }

    @Test
    void aBadRowIsNamedByLineAndColumnAndTheOthersStand() {
        Outcome<List<AskedSetting>> outcome = read("""
                pull,advance_deg,lambda,knock
                1,24,0.87,no
                2,2x,0.87,no
                3,26,-1,no
                1,28,0.87,no
                4,28,0.87,maybe
                5,30,0.87,no
                """);
        assertThat(outcome.value().orElseThrow())
                .extracting(setting -> setting.pull().orElse(0))
                .containsExactly(1, 5);
        assertThat(outcome.findings()).extracting(Finding::code).containsOnly(FindingCode.SETTINGS_ROW_BROKEN);
        assertThat(outcome.findings())
                .extracting(finding -> finding.place().line().orElse(0))
                .containsExactly(3L, 4L, 5L, 6L);
        assertThat(outcome.findings())
                .extracting(finding -> finding.place().key().orElse(""))
                .containsExactly("advance_deg", "lambda", "pull", "knock");
        assertThat(outcome.findings())
                .extracting(finding -> finding.text("value").orElse(""))
                .containsExactly("2x", "-1", "1", "maybe");
    }

    @Test
    void anUnknownColumnNamesTheNearestKnownOne() {
        Outcome<List<AskedSetting>> outcome = read("pull,advnce_deg\n1,24\n");
        assertThat(outcome.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo(FindingCode.SETTINGS_COLUMN_UNKNOWN);
            assertThat(finding.text("nearest")).contains("advance_deg");
        });
    }

    @Test
    void aFileIsReadByItsNameAndAMissingOneIsNamed() {
        assertThat(SettingsFile.read("src/test/resources/intake/cases/settings.csv")
                        .value()
                        .orElseThrow())
                .hasSize(1);
        assertThat(SettingsFile.read("no-such-settings.csv").findings())
                .extracting(Finding::code)
                .containsExactly(FindingCode.FILE_NOT_FOUND);
    }

    @Test
    void aFileWithoutItsColumnsIsRefused() {
        assertThat(read("a,b\n1,2\n").isFailed()).isTrue();
        assertThat(read("").findings()).extracting(Finding::code).containsExactly(FindingCode.FILE_EMPTY);
    }
}
