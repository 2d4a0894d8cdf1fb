package org.nextpull.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that no engine made, or that are no files: one clear line and status 1, soon, and never a fault of the program. */
@Timeout(value = 60, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HostileInputTest {
    @TempDir
    private Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private Path plan(String response) throws IOException {
        return file("plan.toml", """
                [timing]
                start_deg = 20
                least_deg = 16
                most_deg = 36
                [goal]
                response = "%s"
                """.formatted(response));
    }

    private static void refused(Run run, String says) {
        assertThat(run.out() + run.err())
                .contains(says)
                .doesNotContain("Exception")
                .doesNotContain("fault of the program");
        assertThat(run.status()).isEqualTo(ExitCodes.BAD_INPUT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "torque | power_kw  | 90, 95, 97, 96.5   | have no torque, which the plan fits",
                "power  | torque_nm | 190, 195, 197, 196 | have no power, which the plan fits",
                "torque | torque_nm | 0, 0, 0, 0         | is not above zero",
                "torque | torque_nm | -180, -184, -185, -180 | is not above zero",
                "power  | power_kw  | -90, 0, -95, -96   | is not above zero",
            })
    void aTableWithoutTheFigureThatIsFittedIsRefusedByEachCommand(
            String response, String header, String values, String says) throws IOException {
        StringBuilder table = new StringBuilder("order,advance_deg," + header + "\n");
        int order = 1;
        for (String value : values.split(",\\s*", -1)) {
            table.append(order)
                    .append(',')
                    .append(18 + 2 * order++)
                    .append(',')
                    .append(value)
                    .append('\n');
        }
        String log = file("table.csv", table.toString()).toString();
        String plan = plan(response).toString();
        for (String command : new String[] {"advise", "replay", "advise --json", "report --out -"}) {
            refused(Run.of((command + " --no-notebook --plan " + plan + " " + log).split(" ")), says);
        }
    }

    @Test
    void oneBadSignDoesNotSpoilTheOthers() throws IOException {
        Path log = file("table.csv", "order,advance_deg,torque_nm\n1,20,-190\n2,22,195\n3,24,197\n");
        Path plan = plan("torque");
        for (String command : new String[] {"advise", "replay"}) {
            Run run = Run.of(command, "--no-notebook", "--plan", plan.toString(), log.toString());
            assertThat(run.status()).as(run.err()).isZero();
            assertThat(run.out() + run.err()).contains("Pull 1 of").contains("is not above zero");
        }
    }

    /** What only has power may be compared by it, whatever the plan fits. */
    @Test
    void powerAloneIsCompared() throws IOException {
        Path log = file(
                "table.csv",
                "order,power_kw,label\n1,90,a\n2,91,b\n3,91.2,b\n4,90.1,a\n5,90,a\n6,91.1,b\n7,91,b\n8,90.1,a\n");
        Run run = Run.of("compare", "--plan", plan("torque").toString(), "--against", "a", log.toString());
        assertThat(run.status()).as(run.err()).isZero();
        assertThat(run.out()).contains("\"b\" vs \"a\": GAIN ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e308", "-1e308", "1e10", "5e-324", "1e-308"})
    void absurdNumbersAreWrongUsage(String number) {
        String[] lines = {
            "air --baro=%skPa --air=20C --humidity=40%%",
            "air --baro=99kPa --air=%sC --humidity=40%%",
            "air --baro=99kPa --air=20C --humidity=40%% --later=baro=%skPa",
            "air --baro=29inHg --air=70F --wet-bulb=%sF",
            "fuel convert petrol --afr=13 --to=9 --lambda=%s",
            "fuel compare e85 --against-lambda=%s",
            "fuel blend --elements=carbon=0.834,hydrogen=0.129,oxygen=0.037 --density=%skg/L",
            "fuel water e85 --water=1L --fuel=%sL",
            "fuel injector e85 --injectors=4 --flow=%skg/h --rated=400cc/min --rated-at=300kPa",
            "fuel injector e85 --injectors=4 --flow=40kg/h --rated=%scc/min --rated-at=300kPa",
            "fuel injector e85 --injectors=4 --power=100hp --bsfc=0.5lb/hph --rated=40lb/h --rated-at=%spsi",
            "plan-pulls --difference=1 --scatter=%s",
        };
        for (String line : lines) {
            Run run = Run.of(line.formatted(number));
            assertThat(run.status()).as(line + run.err()).isEqualTo(ExitCodes.WRONG_USAGE);
            assertThat(run.err()).containsAnyOf("too large a number", "too small a number");
        }
    }

    @Test
    void aScaleOrAShareThatIsAbsurdIsRefused() {
        refused(Run.of("fuel blend --of=ethanol=0.5,e10=0.5,petrol=1e9"), "over 1");
        refused(Run.of("fuel convert petrol --afr=13 --scale=1e308"), "is not a scale");
        refused(Run.of("fuel convert petrol --lambda=0.9 --to=1e308"), "is not a scale");
    }

    @Test
    void aPipeIsNoLogAndNoPlan() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe.csv");
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "skipped: no mkfifo here");
        assertThat(new ProcessBuilder("/usr/bin/mkfifo", pipe.toString())
                        .start()
                        .waitFor())
                .isZero();
        String says = "is a pipe or a device, not a file";
        String plan = plan("torque").toString();
        String log = file("log.csv", "order,advance_deg,torque_nm\n1,20,190\n").toString();
        refused(Run.of("inspect", pipe.toString()), says);
        refused(Run.of("advise", "--no-notebook", "--plan", plan, pipe.toString()), says);
        refused(Run.of("advise", "--no-notebook", "--plan", pipe.toString(), log), says);
        refused(Run.of("compare", "--plan", plan, "--against", "a", "a=" + pipe), says);
        refused(Run.of("notebook", "list", "--notebook", pipe.toString()), "it is no file");
        refused(Run.of("air", "--plan", pipe.toString()), says);
        file("plan.toml", Files.readString(Path.of(plan)) + "[log]\nsettings = \"pipe.csv\"\n");
        refused(Run.of("advise", "--no-notebook", "--plan", plan, log), says);
        String day = "sample-logs/hillclimb-manifold.csv";
        refused(
                Run.of("report", "--plan", "sweep-plans/hillclimb-manifold.toml", "--out", pipe.toString(), day),
                "it is a pipe or a device, not a file; name a place");
        assertThat(Run.of("inspect", folder.toString()).err())
                .as("a folder passes over it")
                .doesNotContain(says);
    }

    @Test
    void aDeviceIsNoLog() {
        assumeTrue(Files.exists(Path.of("/dev/zero")), "skipped: no /dev/zero here");
        refused(Run.of("inspect", "/dev/zero"), "is a pipe or a device, not a file");
        refused(Run.of("advise", "--plan", "/dev/zero", "/dev/zero"), "is a pipe or a device, not a file");
    }

    @Test
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aZipWithTenThousandLogsIsRefusedAtOnce() throws IOException {
        Path many = folder.resolve("many.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(many))) {
            for (int entry = 0; entry < 10_000; entry++) {
                zip.putNextEntry(new ZipEntry("pull" + entry + ".csv"));
                zip.write("time_s,rpm,torque_nm\n0,1,2\n".getBytes(StandardCharsets.US_ASCII));
            }
        }
        refused(Run.of("inspect", many.toString()), "more logs (10000 in all)");
    }

    /** A throttle that comes and goes with each second for half a day. */
    @Test
    void aLogOfPullsWithoutEndIsReadNoFurtherThanAnyLogGoes() throws IOException {
        StringBuilder text = new StringBuilder("Time [s],Engine speed [rpm],Torque [N.m],Throttle [%]\n");
        int most = 20_000;
        for (int row = 0; row < 14 * (most + 1000); row++) {
            int into = row % 14;
            text.append(row / 10)
                    .append('.')
                    .append(row % 10)
                    .append(into < 3 ? ",1500,5,10\n" : "," + (3000 + 200 * into) + ",180,100\n");
        }
        String log = file("flutter.csv", text.toString()).toString();
        String says = "than a log holds, so it is read no further";
        Run day = Run.of(
                "advise", "--json", "--no-notebook", "--plan", plan("torque").toString(), log);
        refused(day, says);
        assertThat(day.out()).as("no day is made of it").containsPattern("\"pulls\"\\s*:\\s*\\[\\s*]");
        Run run = Run.of("inspect", log);
        refused(run, says);
        assertThat(run.out()).contains("\n  " + most + " ").doesNotContain("\n  " + (most + 900) + " ");
    }

    /** Loggers of whole cars write hundreds of columns that no sweep needs. */
    @Test
    void columnsThatAreNotUsedAreGatheredWhereTheyAreMany() throws IOException {
        StringBuilder text = new StringBuilder("Time [s],Engine speed [rpm],Torque [N.m],Throttle [%]");
        for (int column = 0; column < 60; column++) {
            text.append(",Valve ").append((char) ('A' + column % 26)).append(column);
        }
        for (int row = 0; row < 40; row++) {
            text.append('\n').append(row / 10.0).append(",3000,180,50").append(",1".repeat(60));
        }
        String out = Run.of(
                        "inspect", file("car.csv", text.append('\n').toString()).toString())
                .out();
        assertThat(out)
                .contains("  not used: Valve A0, Valve B1, Valve C2, Valve D3, Valve E4 and 55 more\n")
                .doesNotContain("Valve F5");
    }

    @Test
    void aPlanOfManyMegabytesIsReadNoFurtherThanAPlanCanBe() throws IOException {
        Path huge = folder.resolve("huge.toml");
        try (OutputStream out = Files.newOutputStream(huge)) {
            byte[] line = "# nothing but remarks\n".repeat(1000).getBytes(StandardCharsets.US_ASCII);
            for (int part = 0; part < 2000; part++) {
                out.write(line);
            }
        }
        Run run = Run.of("advise", "--plan", huge.toString(), huge.toString());
        refused(run, "44000000 characters, more than 500000");
    }
}
