package stillturning;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The plan of the house: who may know whom. The table is read from DEVELOPERS.md. */
class ArchitectureTest {

    private static final JavaClasses SEEN =
            new ClassFileImporter()
                    .withImportOption(place -> !place.contains(placeOfTests()))
                    .importPackages("stillturning");

    /** Where the tests are compiled to, whatever builds them. */
    private static String placeOfTests() {
        return ArchitectureTest.class.getProtectionDomain().getCodeSource().getLocation().getPath();
    }

    /** A row of the plan: {@code | `room` | `other`, `other` | what comes out |}. */
    private static final Pattern ROW =
            Pattern.compile("^\\| `([a-z]+)` \\| ([^|]+) \\| [^|]+ \\|$", Pattern.MULTILINE);

    private static final Pattern NAME = Pattern.compile("`([a-z]+)`");

    /** Packages that hold plain numbers: nothing of the project but themselves. */
    private static final List<String> ALONE =
            List.of(
                    "quantity",
                    "network",
                    "parts.element",
                    "reliability.chance",
                    "reliability.cover",
                    "reliability.cutset",
                    "assess.front",
                    "assess.ranking",
                    "report.drawing");

    private static final Map<String, Set<String>> MAY_USE = plan();

    private static Map<String, Set<String>> plan() {
        Map<String, Set<String>> plan = new TreeMap<>();
        Matcher row = ROW.matcher(read(Path.of("DEVELOPERS.md")));
        while (row.find()) {
            Set<String> others = new TreeSet<>();
            NAME.matcher(row.group(2)).results().forEach(name -> others.add(name.group(1)));
            plan.put(row.group(1), others);
        }
        return plan;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Set<String> rooms() {
        return MAY_USE.keySet();
    }

    private static String roomOf(JavaClass seen) {
        return seen.getPackageName().substring("stillturning.".length()).split("\\.", 2)[0];
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomUsesJustTheRoomsThatThePlanGivesIt(String room) {
        Set<String> used = new TreeSet<>();
        for (JavaClass seen : SEEN.that(resideInAPackage(packageOf(room)))) {
            seen.getDirectDependenciesFromSelf().stream()
                    .map(Dependency::getTargetClass)
                    .filter(target -> target.getPackageName().startsWith("stillturning."))
                    .map(ArchitectureTest::roomOf)
                    .filter(other -> !other.equals(room))
                    .forEach(used::add);
        }
        assertEquals(MAY_USE.get(room), used, "what " + room + " uses, against DEVELOPERS.md");
    }

    @Test
    void plainNumbersKnowNothingOfTheProject() {
        for (String alone : ALONE) {
            noClasses()
                    .that()
                    .resideInAPackage(packageOf(alone))
                    .should()
                    .dependOnClassesThat(
                            resideInAPackage("stillturning..")
                                    .and(not(resideInAPackage(packageOf(alone)))))
                    .because("they can be held against any published example")
                    .check(SEEN);
        }
    }

    @Test
    void devicesKnowNoTimeLine() {
        noClasses()
                .that()
                .resideInAPackage(packageOf("story.device"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packageOf("story.timeline"))
                .check(SEEN);
    }

    @Test
    void textsUnderEditKnowNothingOfTheEngineAndNoView() {
        noClasses()
                .that()
                .resideInAPackage(packageOf("desktop.draft"))
                .should()
                .dependOnClassesThat(
                        resideInAPackage("stillturning..")
                                .and(
                                        not(
                                                resideInAnyPackage(
                                                        packagesOf(
                                                                "desktop.draft",
                                                                "model",
                                                                "files",
                                                                "yaml",
                                                                "quantity")))))
                .check(SEEN);
        noClasses()
                .that()
                .resideInAPackage(packageOf("desktop.viewmodel"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(packageOf("desktop.view"))
                .check(SEEN);
    }

    /** More than this in one folder, and nobody reads the list to its end. */
    private static final int MOST_FILES = 25;

    @Test
    void noPackageHoldsMoreFilesThanCanBeTakenInAtAGlance() throws IOException {
        Path main = Path.of("src/main/java");
        Map<Path, Long> files;
        try (Stream<Path> all = Files.walk(main)) {
            files =
                    all.filter(file -> file.toString().endsWith(".java"))
                            .collect(groupingBy(Path::getParent, TreeMap::new, counting()));
        }
        files.values().removeIf(count -> count <= MOST_FILES);
        assertEquals(Map.of(), files);
    }

    @Test
    void everyRoomIsOnThePlan() {
        Set<String> found = new TreeSet<>();
        SEEN.forEach(seen -> found.add(roomOf(seen)));
        assertEquals(rooms(), found);
    }

    @Test
    void whatTheDesktopShowsIsKnownWithoutAToolkit() {
        noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("desktop.view"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx.scene..", "javafx.stage..", "javafx.application..", "javafx.css..")
                .check(SEEN);
        noClasses()
                .that()
                .resideOutsideOfPackages(packageOf("desktop.view"), packageOf("desktop.viewmodel"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("javafx..")
                .check(SEEN);
    }

    @Test
    void theEngineKnowsNoScreenNoFileFormatAndNoCommandLine() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        packagesOf(
                                "network",
                                "parts",
                                "model",
                                "story",
                                "structure",
                                "reliability",
                                "sizing",
                                "assess"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx..",
                        "tools.jackson..",
                        "com.fasterxml..",
                        "org.snakeyaml..",
                        "picocli..",
                        "gg.jte..",
                        "org.eclipse.elk..",
                        "java.io..",
                        "java.nio.file..")
                .because("desktop and command line must get the same answer from it")
                .check(SEEN);
    }

    @Test
    void onlyTheStructureRoomUsesTheGraphLibrary() {
        noClasses()
                .that()
                .resideOutsideOfPackages(packageOf("structure"), packageOf("files"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.jgrapht..")
                .because("structure and timeline are two opinions that must not share their means")
                .check(SEEN);
    }

    @Test
    void onlyTheCommandLineTouchesTheStandardStreamsAndEndsTheProcess() {
        noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("cli"))
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .because("a room that prints cannot be used by a screen")
                .check(SEEN);
    }

    @Test
    void theEngineHasNoClockAndNoUnseededChance() {
        noClasses()
                .that()
                .resideOutsideOfPackages(packageOf("cli"), packageOf("files"), packageOf("yaml"))
                .should()
                .callMethod(System.class, "currentTimeMillis")
                .orShould()
                .callMethod(System.class, "nanoTime")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.Random")
                .orShould()
                .dependOnClassesThat()
                .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
                .because("the same input must give the same answer, byte for byte")
                .check(SEEN);
    }

    /** Rooms ask a part what it does; which kinds there are is said in the kinds' own files. */
    @Test
    void nobodyOutsideTheRoomOfPartsKnowsAKind() {
        noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("parts"))
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage(
                                "stillturning.parts.source",
                                "stillturning.parts.switching",
                                "stillturning.parts.protection",
                                "stillturning.parts.joining"))
                .because("a new kind must not have to be added anywhere else")
                .check(SEEN);
    }

    @Test
    void noTwoRoomsKnowEachOther() {
        slices().matching("stillturning.(*)..").should().beFreeOfCycles().check(SEEN);
    }

    @Test
    void noDrawerForLeftovers() {
        classes()
                .that()
                .resideInAPackage("stillturning..")
                .should()
                .haveSimpleNameNotContaining("Manager")
                .andShould()
                .haveSimpleNameNotContaining("Helper")
                .andShould()
                .haveSimpleNameNotContaining("Util")
                .andShould()
                .haveSimpleNameNotEndingWith("Impl")
                .because("a class is named after what it is in the trade")
                .check(SEEN);
    }

    @Test
    void theRulesSawTheHouse() {
        List<String> doors =
                List.of(
                        "stillturning.network.NodalSolver",
                        "stillturning.story.timeline.Timeline",
                        "stillturning.assess.Assess");
        doors.forEach(door -> assertTrue(SEEN.contain(door), door));
    }

    private static String packageOf(String room) {
        return "stillturning." + room + "..";
    }

    private static String[] packagesOf(String... rooms) {
        return List.of(rooms).stream().map(ArchitectureTest::packageOf).toArray(String[]::new);
    }
}
