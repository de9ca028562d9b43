package stillturning.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.yaml.shape.Sample;

class ProblemTest {

    private static Problem at(String file, int line, int column) {
        return new Problem(Path.of(file), line, column, "a.b", "wrong", "right");
    }

    @Test
    void problemsAreSortedByFileLineAndColumn() {
        List<Problem> sorted =
                List.of(at("a", 1, 9), at("a", 2, 1), at("a", 10, 1), at("b", 1, 1), at("b", 1, 2));
        assertEquals(sorted, Stream.of(4, 2, 0, 3, 1).map(sorted::get).sorted().toList());
    }

    @Test
    void theCaretStandsUnderThePlace() {
        assertEquals(
                "f.yaml:2:3: a.b: wrong; right\n      b: \u00b5\n      ^",
                at("dir/f.yaml", 2, 3).shownIn("a:\r\n  b: \u00b5\r\nc: 1"));
        assertEquals(
                "f:1:4: a.b: wrong; right\n    \ud83d\udd0b: x\n       ^",
                at("f", 1, 4).shownIn("\ud83d\udd0b: x"));
        assertEquals("f:9:4: a.b: wrong; right\n    \n    ^", at("f", 9, 4).shownIn("a: 1"));
        String far = at("f", 1, 500).shownIn("x".repeat(1000));
        assertEquals(
                "    " + "x".repeat(100) + "\n    " + " ".repeat(50) + "^",
                far.substring(far.indexOf('\n') + 1));
    }

    @Test
    void controlCharactersDoNotReachTheTerminal() {
        assertEquals(
                "f:1:1: a\\u001b[31m: \\u202e is wrong; x\\u0007",
                new Problem(Path.of("f"), 1, 1, "a\u001b[31m", "\u202e is wrong", "x\u0007")
                        .toString());
    }

    @Test
    void aLaterRoomFindsThePlaceOfEachValueAndKey() {
        DocumentPlaces places = Sample.bind(Sample.TEXT).places();
        assertEquals(Optional.of(new Place(8, 15)), places.value("parts.bat-1.capacity"));
        assertEquals(Optional.of(new Place(8, 5)), places.key("parts.bat-1.capacity"));
        assertEquals(
                Optional.of(new Place(17, 11)),
                places.value(DocumentPlaces.under(DocumentPlaces.item("feeds", 1), "from")));
        assertEquals(Optional.empty(), places.value("parts.none"));
        assertEquals(
                "two-battery.yaml:8:15: parts.bat-1.capacity: no; yes",
                places.problem("parts.bat-1.capacity", "no", "yes").toString());
        assertEquals(
                "two-battery.yaml:8:18: parts.bat-1.capacity: no; yes",
                places.problemInside("parts.bat-1.capacity", 3, "no", "yes").toString());
        assertEquals(
                "two-battery.yaml:6:3: parts.bat-1: no; yes",
                places.problemAtKey("parts.bat-1", "no", "yes").toString());
        assertEquals(
                "two-battery.yaml:7:5: parts.bat-1.health: no; yes",
                places.problem("parts.bat-1.health", "no", "yes").toString());
        assertEquals(
                "two-battery.yaml:7:5: parts.bat-1.health: no; yes",
                places.problemAtKey("parts.bat-1.health", "no", "yes").toString());
        assertEquals("parts.\"a.b\"", DocumentPlaces.under("parts", "a.b"));
    }

    @Test
    void aColumnInsideTextIsExactForEachWayOfQuoting() {
        for (String text :
                List.of(
                        "a: xyz!",
                        "a: 'xyz!'",
                        "a: \"xyz!\"",
                        "a: 'x''z!'",
                        "a: \"\\x41\\u0042\\U0001F600!\"",
                        "{a: xyz!}")) {
            int offset = text.contains("U0001") ? 4 : 3;
            int column = text.indexOf('!') + 1;
            Problem problem =
                    Sample.document(text).places().problemInside("a", offset, "no", "yes");
            assertEquals(column, problem.column(), text);
        }
        assertEquals(
                4,
                Sample.document("a: |\n  xyz!\n")
                        .places()
                        .problemInside("a", 3, "no", "yes")
                        .column());
    }

    @Test
    void aSlipOfThePenIsRecognisedAndAnotherWordIsNot() {
        List<String> words = List.of("gauge", "length", "ride-through", "from");
        assertEquals(Optional.of("gauge"), Spelling.nearest("guage", words));
        assertEquals(Optional.of("ride-through"), Spelling.nearest("Ride_Thruogh", words));
        assertEquals(Optional.of("from"), Spelling.nearest("form", words));
        assertEquals(Optional.empty(), Spelling.nearest("colour", words));
        assertEquals(Optional.empty(), Spelling.nearest("x".repeat(100_000), words));
        assertEquals("did you mean \"length\"? ", Spelling.didYouMean("lenght", words));
    }
}
