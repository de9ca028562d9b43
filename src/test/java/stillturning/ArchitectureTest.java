package stillturning;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The plan of the house: who may know whom. The same table stands in DEVELOPERS.md. */
class ArchitectureTest {

    private static final JavaClasses SEEN =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .importPackages("stillturning");

    private static final Map<String, Set<String>> MAY_USE =
            new TreeMap<>(
                    Map.ofEntries(
                            Map.entry("quantity", Set.of()),
                            Map.entry("network", Set.of()),
                            Map.entry("element", Set.of()),
                            Map.entry("ranking", Set.of()),
                            Map.entry("chance", Set.of()),
                            Map.entry("cover", Set.of()),
                            Map.entry("cutset", Set.of()),
                            Map.entry("drawing", Set.of()),
                            Map.entry("yaml", Set.of("quantity")),
                            Map.entry("parts", Set.of("element")),
                            Map.entry("model", Set.of("element", "parts")),
                            Map.entry("failure", Set.of("parts", "model")),
                            Map.entry("story", Set.of("element", "failure")),
                            Map.entry(
                                    "device",
                                    Set.of("element", "parts", "model", "network", "story")),
                            Map.entry(
                                    "timeline",
                                    Set.of(
                                            "element", "parts", "model", "failure", "network",
                                            "story", "device")),
                            Map.entry("structure", Set.of("element", "parts", "model", "failure")),
                            Map.entry(
                                    "sizing",
                                    Set.of(
                                            "element",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline")),
                            Map.entry(
                                    "assess",
                                    Set.of(
                                            "element",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "structure",
                                            "ranking",
                                            "quantity")),
                            Map.entry(
                                    "together",
                                    Set.of(
                                            "element",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "cutset")),
                            Map.entry(
                                    "runup",
                                    Set.of(
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "together",
                                            "cutset",
                                            "cover")),
                            Map.entry(
                                    "likelihood",
                                    Set.of(
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "together",
                                            "cutset",
                                            "runup",
                                            "chance")),
                            Map.entry("ranges", Set.of("model", "failure", "story", "assess")),
                            Map.entry(
                                    "files",
                                    Set.of("element", "parts", "model", "quantity", "yaml")),
                            Map.entry(
                                    "report",
                                    Set.of(
                                            "element",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "structure",
                                            "ranking",
                                            "assess",
                                            "ranges",
                                            "sizing",
                                            "together",
                                            "cutset",
                                            "runup",
                                            "chance",
                                            "likelihood",
                                            "drawing",
                                            "quantity")),
                            Map.entry(
                                    "proposal",
                                    Set.of(
                                            "parts",
                                            "model",
                                            "story",
                                            "sizing",
                                            "files",
                                            "yaml",
                                            "quantity")),
                            Map.entry(
                                    "dossier",
                                    Set.of(
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "structure",
                                            "sizing",
                                            "assess",
                                            "together",
                                            "cutset",
                                            "runup",
                                            "likelihood",
                                            "files",
                                            "yaml",
                                            "report")),
                            Map.entry("draft", Set.of("model", "quantity", "files", "yaml")),
                            Map.entry(
                                    "desk",
                                    Set.of(
                                            "element",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "structure",
                                            "ranking",
                                            "assess",
                                            "sizing",
                                            "together",
                                            "cutset",
                                            "likelihood",
                                            "files",
                                            "yaml",
                                            "proposal",
                                            "dossier",
                                            "draft",
                                            "drawing",
                                            "report",
                                            "quantity")),
                            Map.entry(
                                    "screen",
                                    Set.of(
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "ranking",
                                            "assess",
                                            "sizing",
                                            "files",
                                            "yaml",
                                            "proposal",
                                            "dossier",
                                            "draft",
                                            "drawing",
                                            "report",
                                            "quantity",
                                            "desk")),
                            Map.entry(
                                    "cli",
                                    Set.of(
                                            "screen",
                                            "dossier",
                                            "proposal",
                                            "parts",
                                            "model",
                                            "failure",
                                            "story",
                                            "timeline",
                                            "structure",
                                            "together",
                                            "cutset",
                                            "runup",
                                            "likelihood",
                                            "assess",
                                            "ranges",
                                            "files",
                                            "yaml",
                                            "ranking",
                                            "sizing",
                                            "report",
                                            "quantity"))));

    static Set<String> rooms() {
        return MAY_USE.keySet();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomKnowsOnlyTheRoomsBelowIt(String room) {
        String[] allowed =
                MAY_USE.get(room).stream().map(ArchitectureTest::packageOf).toArray(String[]::new);
        DescribedPredicate<JavaClass> others =
                resideInAPackage("stillturning..")
                        .and(DescribedPredicate.not(resideInAnyPackage(allowed)))
                        .and(DescribedPredicate.not(resideInAPackage(packageOf(room))));
        noClasses()
                .that()
                .resideInAPackage(packageOf(room))
                .should()
                .dependOnClassesThat(others)
                .because("arrows run one way, from the faces down to numbers")
                .check(SEEN);
    }

    @Test
    void everyRoomIsOnThePlan() {
        Set<String> found = new TreeSet<>();
        for (JavaClass seen : SEEN) {
            String name = seen.getPackageName().substring("stillturning".length());
            if (!name.isEmpty()) {
                found.add(name.substring(1).split("\\.", 2)[0]);
            }
        }
        assertEquals(rooms(), found);
    }

    @Test
    void whatTheDesktopShowsIsKnownWithoutAToolkit() {
        noClasses()
                .that()
                .resideOutsideOfPackage(packageOf("screen"))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "javafx.scene..", "javafx.stage..", "javafx.application..", "javafx.css..")
                .check(SEEN);
        noClasses()
                .that()
                .resideOutsideOfPackages(packageOf("screen"), packageOf("desk"))
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
                                "element",
                                "parts",
                                "model",
                                "failure",
                                "story",
                                "device",
                                "timeline",
                                "structure",
                                "ranking",
                                "chance",
                                "cover",
                                "cutset",
                                "together",
                                "runup",
                                "likelihood",
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
