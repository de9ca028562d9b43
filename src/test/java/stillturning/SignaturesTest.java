package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Signatures stay short, and a simple name means one thing. */
class SignaturesTest {

    private static final String TABLE = "each call is one row of a table, column by column";
    private static final String DEVICE = "made in one place, from what an element is joined to";
    private static final String INSTANT = "made by one recorder, of all that holds at an instant";
    private static final String ONE_PLACE = "private to its file, called in one or two places";
    private static final String FILE = "one component a key that stands on one level of the file";
    private static final String PAGE = "one component a part of the printed page, in its order";
    private static final String TABLES =
            "two estimates and the tables that explain them, each read alone";
    private static final String READING = "all that comes of reading files, each asked for alone";
    private static final String CELL = "what one electrochemical cell is, in the terms of its law";

    /** Longer parameter lists, with why. */
    private static final Map<String, String> PARAMETERS =
            Map.ofEntries(
                    Map.entry("Cable size", TABLE),
                    Map.entry("CandidateReader new", ONE_PLACE),
                    Map.entry("Dimension new", TABLE),
                    Map.entry("GeneratorDevice new", DEVICE),
                    Map.entry("GuardDevice new", DEVICE),
                    Map.entry("Retelling.ToldBefore new", ONE_PLACE),
                    Map.entry("Situation new", DEVICE),
                    Map.entry("Snapshot new", INSTANT));

    /** Longer records, with why. */
    private static final Map<String, String> COMPONENTS =
            Map.ofEntries(
                    Map.entry("Alternator.Values", FILE),
                    Map.entry("Battery.Values", FILE),
                    Map.entry("CandidateEntry", FILE),
                    Map.entry("Cell", CELL),
                    Map.entry("ChancesEntry", FILE),
                    Map.entry("LikelihoodResult", TABLES),
                    Map.entry("LoadEntry", FILE),
                    Map.entry("ManagementValues", FILE),
                    Map.entry("Page", PAGE),
                    Map.entry("Page.CandidateSheet", PAGE),
                    Map.entry("ReadStudy", READING),
                    Map.entry("StudyEntry", FILE),
                    Map.entry("StudyEntry.EngineEntry", FILE),
                    Map.entry("StudyEntry.RequirementsEntry", FILE));

    private static Signatures program;

    @BeforeAll
    static void parses() throws IOException {
        program = new Signatures(sources());
    }

    @Test
    void theWholeProgramWasSeen() {
        assertTrue(program.methods() > 5000, "too few methods seen: " + program.methods());
    }

    @Test
    void noParameterListIsLongWithoutReason() {
        assertEquals(
                new TreeSet<>(PARAMETERS.keySet()),
                program.longParameterLists().keySet(),
                "put into one value what belongs together; no reason is kept for what is short");
    }

    @Test
    void noRecordIsLongWithoutReason() {
        assertEquals(
                new TreeSet<>(COMPONENTS.keySet()),
                program.longRecords().keySet(),
                "put into one value what belongs together; no reason is kept for what is short");
    }

    @Test
    void noTwoTopLevelTypesShareAName() {
        assertEquals(Map.of(), program.sharedNames());
    }

    @Test
    void whatIsTooLongOrSharedIsFound() throws IOException {
        Signatures found =
                new Signatures(
                        List.of(
                                source(
                                        "bus/Feed",
                                        """
                                        package bus;
                                        record Feed(int a, int b, int c, int d, int e, int f) {
                                            Feed(int a, int b, int c, int d, int e, int f) {}
                                            Feed(int a, int b, int c, int d, int e, int f,
                                                    int g, int h, int i) {}
                                            Feed(int a, int b, int c, int d, int e, int f, int g) {}
                                            record Long(int a, int b, int c, int d, int e, int f,
                                                    int g, int h, int i) {
                                                static final int NO_COMPONENT = 1;
                                            }
                                            void join(int a, int b, int c, int d, int e) {}
                                            void split(int a, int b, int c, int d, int e, int f) {}
                                        }
                                        """),
                                source("load/Feed", "package load; interface Feed {}"),
                                source("load/Fed", "package load; enum Fed { YES }")));
        assertEquals(Map.of("Feed new", 9, "Feed split", 6), found.longParameterLists());
        assertEquals(Map.of("Feed.Long", 9), found.longRecords());
        assertEquals(Map.of("Feed", new TreeSet<>(Set.of("bus", "load"))), found.sharedNames());
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

    private static List<JavaFileObject> sources() throws IOException {
        try (StandardJavaFileManager files =
                        ToolProvider.getSystemJavaCompiler()
                                .getStandardFileManager(null, null, null);
                Stream<Path> all = Files.walk(Path.of("src", "main", "java"))) {
            List<Path> java = all.filter(p -> p.toString().endsWith(".java")).sorted().toList();
            List<JavaFileObject> found = new ArrayList<>();
            files.getJavaFileObjectsFromPaths(java).forEach(found::add);
            return found;
        }
    }
}
