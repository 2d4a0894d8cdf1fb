package org.nextpull;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of rooms: which package may import which, and which library belongs to which room. */
class RoomsTest {
    private static final String ROOT = "org.nextpull.";
    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.nextpull");

    private static final String RESULT_ROOMS =
            "unit finding channel air fuel plan pull curve alarm response scatter fit compare advice";

    /**
     * Room, and the rooms that it may import, a floor at a time. What is fitted comes from pulls alone: {@code fit} hears of no plan but
     * what it is handed, while a comparison asks the plan which response decides.
     */
    private static final Map<String, String> TABLE = Map.ofEntries(
            Map.entry("unit", ""),
            Map.entry("finding", ""),
            Map.entry("math", ""),
            Map.entry("channel", "unit finding"),
            Map.entry("air", "unit finding"),
            Map.entry("fuel", "unit finding"),
            Map.entry("plan", "unit finding channel air fuel"),
            Map.entry("intake", "unit finding channel fuel plan"),
            Map.entry("pull", "unit finding math channel plan"),
            Map.entry("engine", "unit finding math channel air fuel"),
            Map.entry("curve", "unit finding math channel air plan pull"),
            Map.entry("alarm", "unit finding channel plan pull"),
            Map.entry("response", "unit finding math channel air fuel plan pull curve alarm"),
            Map.entry("scatter", "unit finding math channel response"),
            Map.entry("fit", "unit finding math channel response scatter"),
            Map.entry("compare", "unit finding math channel air plan curve response scatter"),
            Map.entry("advice", "unit finding channel plan response fit"),
            Map.entry("session", RESULT_ROOMS),
            Map.entry("notebook", RESULT_ROOMS + " session"),
            Map.entry("api", RESULT_ROOMS + " math intake session"),
            Map.entry("chart", RESULT_ROOMS + " session"),
            Map.entry("simulator", "engine intake session alarm plan channel unit finding fit advice"),
            Map.entry("live", RESULT_ROOMS + " intake notebook session"),
            Map.entry("report", RESULT_ROOMS + " chart notebook session"),
            Map.entry("app", RESULT_ROOMS + " intake session notebook chart simulator live report"),
            Map.entry("window", RESULT_ROOMS + " intake session notebook chart simulator live report app"),
            Map.entry("cli", RESULT_ROOMS + " intake session notebook chart simulator live report app window"));

    /** Library, and the only packages that may see it. */
    private static final Map<String, List<String>> LIBRARIES = Map.ofEntries(
            Map.entry("org.apache.commons..", List.of("math")),
            Map.entry("de.siegmar.fastcsv..", List.of("intake.csv")),
            Map.entry("com.fazecast..", List.of("intake.serial")),
            Map.entry("org.tomlj..", List.of("plan")),
            Map.entry("org.sqlite..", List.of("notebook")),
            Map.entry("java.sql..", List.of("notebook")),
            Map.entry("org.knowm..", List.of("chart")),
            Map.entry("com.fasterxml..", List.of("report")),
            Map.entry("com.samskivert..", List.of("report")),
            Map.entry("com.formdev..", List.of("window")),
            Map.entry("javax.swing..", List.of("window", "chart")),
            Map.entry("picocli..", List.of("cli")),
            Map.entry(
                    "org.tinylog..",
                    List.of("intake", "notebook", "chart", "simulator", "live", "report", "window", "cli")));

    static Stream<String> rooms() {
        return TABLE.keySet().stream().sorted();
    }

    static Stream<String> libraries() {
        return LIBRARIES.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomImportsOnlyWhatItsLineNames(String room) {
        List<String> allowed = new ArrayList<>();
        allowed.add(ROOT + room + "..");
        Stream.of(TABLE.getOrDefault(room, "").split(" "))
                .filter(name -> !name.isEmpty())
                .forEach(name -> allowed.add(ROOT + name + ".."));
        classes()
                .that()
                .resideInAPackage(ROOT + room + "..")
                .should()
                .onlyDependOnClassesThat(outsideOrIn(allowed))
                .allowEmptyShould(true)
                .because("the table of rooms says so")
                .check(MAIN);
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void aLibraryBelongsToItsRoom(String library) {
        String[] homes = LIBRARIES.getOrDefault(library, List.of()).stream()
                .map(room -> ROOT + room + "..")
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideOutsideOfPackages(homes)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because("one third-party library belongs to one room")
                .check(MAIN);
    }

    @Test
    void everyClassIsInARoom() {
        String[] packages = rooms().map(room -> ROOT + room + "..").toArray(String[]::new);
        classes()
                .that()
                .doNotHaveSimpleName("package-info")
                .should()
                .resideInAnyPackage(packages)
                .check(MAIN);
    }

    @Test
    void packagesHaveNoCycles() {
        slices().matching("org.nextpull.(**)").should().beFreeOfCycles().check(MAIN);
    }

    @Test
    void lowerFloorsHaveNoClockNoRandomSourceNoFileAndNoThread() {
        String[] pure = Stream.concat(Stream.of("math", "engine", "session"), Stream.of(RESULT_ROOMS.split(" ")))
                .map(room -> ROOT + room + "..")
                .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAnyPackage(pure)
                .should()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.time.Clock")
                .orShould()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(Math.class, "random")
                .orShould()
                .callMethod(java.time.LocalDateTime.class, "now")
                .orShould()
                .callMethod(java.time.ZonedDateTime.class, "now")
                .orShould()
                .callConstructor(java.util.SplittableRandom.class)
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching("java\\.util\\.(Random|concurrent\\.ThreadLocalRandom|Timer)"
                        + "|java\\.lang\\.(Thread|Process|ProcessBuilder|Runtime)"
                        + "|java\\.util\\.concurrent\\.(Execut|Future|CompletableFuture|ForkJoin).*"
                        + "|java\\.io\\.(File|RandomAccessFile).*"
                        + "|java\\.nio\\.(file|channels)\\..*")
                .because("times and seeds are arguments")
                .check(MAIN);
    }

    @Test
    void onlyTheCommandLinePrintsAndEndsTheProcess() {
        noClasses()
                .that()
                .resideOutsideOfPackage(ROOT + "cli..")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Runtime.class, "halt", int.class)
                .because("data goes to standard output and the status to the caller at one place")
                .check(MAIN);
    }

    private static DescribedPredicate<JavaClass> outsideOrIn(List<String> packages) {
        DescribedPredicate<JavaClass> outside = DescribedPredicate.describe(
                "outside the project", type -> !type.getPackageName().startsWith("org.nextpull"));
        return outside.or(JavaClass.Predicates.resideInAnyPackage(packages.toArray(String[]::new)))
                .as("outside the project or in " + packages);
    }
}
