package stillturning;

import static java.util.stream.Collectors.groupingBy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing in the source serves members of a closed family that it does not name. */
class SealedFamiliesTest {

    private static final String FAMILY =
            """
            package stillturning.shape;
            sealed interface Shape {
                record Disc(double radius) implements Shape {}
                record Bar(double length) implements Shape {}
                record Ring(double radius) implements Shape {}
                enum Colour { RED, GREEN, BLUE }
            """;

    @Test
    void noBranchServesMembersThatItDoesNotName() throws IOException {
        FallThroughs program = new FallThroughs(sources());
        assertTrue(program.questions() > 60, "too few questions seen: " + program.questions());
        assertTrue(program.switches() > 40, "too few switches seen: " + program.switches());
        Map<String, List<FallThroughs.Found>> byFile =
                program.found().stream().collect(groupingBy(FallThroughs.Found::file));
        assertEquals(Map.of(), byFile);
    }

    private static List<JavaFileObject> sources() throws IOException {
        try (StandardJavaFileManager files =
                        ToolProvider.getSystemJavaCompiler()
                                .getStandardFileManager(null, null, null);
                Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            List<Path> java = all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
            return List.copyOf(iterated(files.getJavaFileObjectsFromPaths(java)));
        }
    }

    private static List<JavaFileObject> iterated(Iterable<? extends JavaFileObject> objects) {
        List<JavaFileObject> all = new ArrayList<>();
        objects.forEach(all::add);
        return all;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "static double area(Shape s) { if (s instanceof Disc d) { return d.radius(); }"
                        + " else if (s instanceof Bar b) { return b.length(); } return 0; }",
                "static double area(Shape s) { if (s instanceof Disc d) { return d.radius(); }"
                        + " if (s instanceof Shape.Bar b) { return b.length(); }"
                        + " return ((Ring) s).radius(); }",
                "static boolean round(Shape s) { return s instanceof Disc || s instanceof Ring; }",
                "static double area(Shape s) { return s instanceof Disc d ? d.radius() : 7; }",
                "static double area(Shape s) { if (s instanceof Disc d) { return d.radius(); }"
                        + " return s.hashCode(); }",
                "static void say(Shape s) { if (s instanceof Disc) { System.out.print(1); }"
                        + " else { System.out.print(2); } }",
                "static void say(Shape s) { if (!(s instanceof Disc)) { System.out.print(1); } }",
                "static boolean thin(Shape s) { return !(s instanceof Disc); }",
                "static int number(Colour c) { return switch (c) { case RED -> 1; default -> 0; }; }",
                "static void say(Colour c) { switch (c) { case RED: return; default: break; } }"
            })
    void whatServesOthersUnnamedIsFound(String method) {
        assertEquals(
                1, foundIn(method).stream().map(FallThroughs.Found::family).distinct().count());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "static double area(Shape s) { if (s instanceof Disc d) { return d.radius(); }"
                        + " else if (s instanceof Bar b) { return b.length(); }"
                        + " else if (s instanceof Ring r) { return r.radius(); }"
                        + " throw new IllegalStateException(); }",
                "static double radius(Shape s) { return s instanceof Disc d ? d.radius() : 0; }",
                "static boolean isDisc(Shape s) { return s instanceof Disc d && d.radius() > 1; }",
                "static void say(Shape s) { if (s instanceof Disc) { System.out.print(1); } }",
                "static void add(Shape s) { if (!(s instanceof Disc)) { return; }"
                        + " System.out.print(1); }",
                "static void refuse(Shape s) { if (s instanceof Disc d && d.radius() < 0) {"
                        + " throw new IllegalArgumentException(); } System.out.print(s); }",
                "static boolean isText(Object o) { return !(o instanceof String); }",
                "static int number(Colour c) {"
                        + " return switch (c) { case RED -> 1; case GREEN, BLUE -> 0; }; }",
                "static int number(String s) { return switch (s) { case \"a\" -> 1; default -> 0; }; }"
            })
    void whatNamesEveryMemberOrAsksForOneIsLeftAlone(String method) {
        assertEquals(List.of(), foundIn(method));
    }

    @Test
    void aNewMemberOfAFamilyIsMissedWhereAllOthersAreNamed() {
        String all =
                "static double area(Shape s) { if (s instanceof Disc d) { return d.radius(); }"
                        + " if (s instanceof Bar b) { return b.length(); }"
                        + " return s instanceof Ring r ? r.radius() : 0; }";
        assertEquals(List.of(), foundIn(all));
        List<FallThroughs.Found> found = foundIn(all + " record Arc() implements Shape {}");
        assertEquals(1, found.size());
        assertTrue(found.get(0).why().contains("forgets [stillturning.shape.Shape.Arc]"));
    }

    @Test
    void namesAreFollowedThroughImports() {
        String asking =
                """
                package stillturning.other;
                import stillturning.shape.Shape.Disc;
                class Asking { boolean thin(Object s) { return !(s instanceof Disc); } }
                """;
        FallThroughs program =
                new FallThroughs(List.of(source("Shape", FAMILY + "}"), source("Asking", asking)));
        assertEquals("thin asks s", program.found().get(0).where());
    }

    private static List<FallThroughs.Found> foundIn(String method) {
        return new FallThroughs(List.of(source("Shape", FAMILY + method + "}"))).found();
    }

    private static JavaFileObject source(String name, String text) {
        return new SimpleJavaFileObject(
                URI.create("string:///" + name + ".java"), JavaFileObject.Kind.SOURCE) {
            @Override
            public CharSequence getCharContent(boolean ignoreEncodingErrors) {
                return text;
            }
        };
    }
}
