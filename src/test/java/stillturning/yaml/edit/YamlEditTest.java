package stillturning.yaml.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import stillturning.yaml.Splice;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.edit.YamlEdit.AddField;
import stillturning.yaml.edit.YamlEdit.AddItem;
import stillturning.yaml.edit.YamlEdit.Remove;
import stillturning.yaml.edit.YamlEdit.Rename;
import stillturning.yaml.edit.YamlEdit.Set;
import stillturning.yaml.shape.Sample;

class YamlEditTest {

    private static final String TEXT =
            """
            # invented
            title: 'Sandpiper'   # the name

            parts:   # all of them
              bat-1:
                is: battery
                capacity: 20 Ah (guess)  # look it up
                # about the chemistry
                chemistry: lead-acid
              # about the wire
              bus-feed: {is: wire, gauge: AWG 16, length: 3 ft} # short
            feeds:
            - main-bus, breaker 5 A # radio
            # about the second
            - from: main-bus # lights
              # sized by hand
              breaker: 10 A
            notes: |
              one
              two

            empty: # nothing yet
            few: [a, b]
            last: 1""";

    private static void becomes(YamlEdit edit, String... oldThenNew) throws EditRefused {
        String expected = TEXT;
        for (int i = 0; i < oldThenNew.length; i += 2) {
            assertEquals(2, (expected + "\0").split(Pattern.quote(oldThenNew[i])).length);
            expected = expected.replace(oldThenNew[i], oldThenNew[i + 1]);
        }
        YamlDocument document = Sample.document(TEXT);
        Edited edited = edit.on(document);
        assertEquals(expected, edited.document().text());
        assertEquals(TEXT, edited.document().with(edited.splice().inverse()).text());
    }

    @Test
    void aTextIsReplacedAndItsCommentStays() throws EditRefused {
        becomes(
                new Set("parts.bat-1.capacity", YamlValue.text("25 Ah (measured)")),
                "20 Ah (guess)",
                "25 Ah (measured)");
        becomes(new Set("title", YamlValue.text("Plover")), "'Sandpiper'", "Plover");
        becomes(new Set("title", YamlValue.text("a: b # c")), "'Sandpiper'", "\"a: b # c\"");
        becomes(new Set("title", YamlValue.text("")), "'Sandpiper'", "\"\"");
        becomes(new Set("title", YamlValue.text("null")), "'Sandpiper'", "\"null\"");
        becomes(
                new Set("title", YamlValue.text("\"a\\\n\t\u2028")),
                "'Sandpiper'",
                "\"\\\"a\\\\\\n\\u0009\\u2028\"");
        becomes(
                new Set("parts.bus-feed.gauge", YamlValue.text("4 mm2, tinned")),
                "AWG 16",
                "\"4 mm2, tinned\"");
        becomes(
                new Set("feeds[0]", YamlValue.text("main-bus, breaker 7.5 A")),
                "breaker 5 A",
                "breaker 7.5 A");
        becomes(new Set("few[1]", YamlValue.text("c")), "b]", "c]");
        becomes(new Set("notes", YamlValue.text("three")), "|\n  one\n  two", "three");
        becomes(new Set("empty", YamlValue.text("full")), "empty: #", "empty: full #");
        becomes(new Set("last", YamlValue.text("2")), "last: 1", "last: 2");
    }

    @Test
    void aTextGivesWayToAMappingAndTheOtherWayRound() throws EditRefused {
        YamlValue mapping =
                YamlValue.fields(
                        YamlValue.field("from", "aux-bus"), YamlValue.field("breaker", "2 A"));
        becomes(
                new Set("title", mapping),
                "title: 'Sandpiper'   # the name",
                "title:   # the name\n  from: aux-bus\n  breaker: 2 A");
        becomes(
                new Set("feeds[0]", mapping),
                "- main-bus, breaker 5 A # radio",
                "- # radio\n  from: aux-bus\n  breaker: 2 A");
        becomes(new Set("last", mapping), "last: 1", "last:\n  from: aux-bus\n  breaker: 2 A");
        becomes(new Set("few[0]", mapping), "[a", "[{from: aux-bus, breaker: 2 A}");
        becomes(new Set("few", mapping), "[a, b]", "{from: aux-bus, breaker: 2 A}");
        becomes(
                new Set("feeds[1]", YamlValue.text("main-bus")),
                "- from: main-bus # lights\n  # sized by hand\n  breaker: 10 A",
                "- main-bus");
        becomes(
                new Set("parts", YamlValue.text("none")),
                TEXT.substring(TEXT.indexOf("parts:"), TEXT.indexOf("feeds:")),
                "parts: none   # all of them\n");
        becomes(
                new Set("feeds", mapping),
                TEXT.substring(TEXT.indexOf("- main-bus"), TEXT.indexOf("notes:")),
                "  from: aux-bus\n  breaker: 2 A\n");
    }

    @Test
    void keysAndItemsAreAddedBehindTheOthers() throws EditRefused {
        YamlValue battery =
                YamlValue.fields(
                        YamlValue.field("is", "battery"), YamlValue.field("capacity", "7 Ah"));
        becomes(
                new AddField("parts", "bat-2", battery),
                "} # short\n",
                "} # short\n  bat-2:\n    is: battery\n    capacity: 7 Ah\n");
        becomes(
                new AddField("parts.bat-1", "health", YamlValue.text("90 %")),
                "lead-acid\n",
                "lead-acid\n    health: 90 %\n");
        becomes(
                new AddField("parts.bus-feed", "hot", YamlValue.texts("yes")),
                "3 ft}",
                "3 ft, hot: [yes]}");
        becomes(new AddField("", "more", YamlValue.text("2")), "last: 1", "last: 1\nmore: 2");
        becomes(
                new AddField("empty", "a", YamlValue.text("b")),
                "nothing yet",
                "nothing yet\n  a: b");
        becomes(
                new AddItem("feeds", YamlValue.text("aux")),
                "breaker: 10 A\n",
                "breaker: 10 A\n- aux\n");
        becomes(
                new AddItem("feeds", battery),
                "breaker: 10 A\n",
                "breaker: 10 A\n- is: battery\n  capacity: 7 Ah\n");
        becomes(new AddItem("few", YamlValue.text("c, d")), "b]", "b, \"c, d\"]");
        becomes(new AddItem("empty", YamlValue.text("x")), "nothing yet", "nothing yet\n  - x");
    }

    @Test
    void keysAndItemsAreTakenOutWithTheCommentsOnTheirOwnLines() throws EditRefused {
        becomes(
                new Remove("parts.bat-1.capacity"),
                "    capacity: 20 Ah (guess)  # look it up\n",
                "");
        becomes(
                new Remove("parts.bus-feed"),
                "  bus-feed: {is: wire, gauge: AWG 16, length: 3 ft} # short\n",
                "");
        becomes(new Remove("parts.bus-feed.is"), "is: wire, ", "");
        becomes(new Remove("parts.bus-feed.length"), ", length: 3 ft", "");
        becomes(new Remove("feeds[0]"), "- main-bus, breaker 5 A # radio\n", "");
        becomes(new Remove("feeds[1].from"), "from: main-bus # lights", "");
        becomes(new Remove("feeds[1].breaker"), "  breaker: 10 A\n", "");
        becomes(new Remove("notes"), "notes: |\n  one\n  two\n", "");
        becomes(new Remove("last"), "last: 1", "");
        becomes(new Remove("few[0]"), "a, ", "");
    }

    @Test
    void theLastMemberLeavesAnEmptyListOrMapping() throws EditRefused {
        YamlDocument document = Sample.document("a:\n  b: 1 # one\nc:\n- d\ne: [f]\n");
        document = new Remove("a.b").on(document).document();
        document = new Remove("c[0]").on(document).document();
        document = new Remove("e[0]").on(document).document();
        assertEquals("a: {}\nc: []\ne: []\n", document.text());
        document = new AddField("a", "x", YamlValue.text("1")).on(document).document();
        document =
                new AddItem("c", YamlValue.fields(YamlValue.field("y", "2")))
                        .on(document)
                        .document();
        assertEquals("a:\n  x: 1\nc:\n  - y: 2\ne: []\n", document.text());
    }

    @Test
    void aKeyIsRenamed() throws EditRefused {
        becomes(new Rename("parts.bat-1", "battery"), "bat-1:", "battery:");
        becomes(new Rename("parts.bus-feed.gauge", "a: b"), "gauge:", "\"a: b\":");
    }

    @Test
    void membersOfAListOverSeveralLinesKeepTheirComments() throws EditRefused {
        String text = "a: [\n  one, # first\n  # about two\n  two,\n  three # third\n]\n";
        YamlDocument document = Sample.document(text);
        assertEquals(
                "a: [\n  # about two\n  two,\n  three # third\n]\n",
                new Remove("a[0]").on(document).document().text());
        assertEquals(
                "a: [\n  one, # first\n  # about two\n  two,\n]\n",
                new Remove("a[2]").on(document).document().text());
        assertEquals(
                "a: [\n  one, # first\n  # about two\n  two,\n  three, four # third\n]\n",
                new AddItem("a", YamlValue.text("four")).on(document).document().text());
    }

    @Test
    void aMemberTakesTheCommentOnItsLineWithIt() throws EditRefused {
        String text = "few: [\n  a, # first\n  b, # second\n  c,\n  d # last\n]";
        assertEquals(
                text.replace("  b, # second\n", ""),
                new Remove("few[1]").on(Sample.document(text)).document().text());
        assertEquals(
                text.replace("  c,\n", ""),
                new Remove("few[2]").on(Sample.document(text)).document().text());
        String oneLine = "few: [a, b, c] # all";
        assertEquals(
                "few: [a, c] # all",
                new Remove("few[1]").on(Sample.document(oneLine)).document().text());
    }

    @Test
    void linesEndAsTheyDidBefore() throws EditRefused {
        YamlDocument document = Sample.document("\ufeffa:\r\n  b: 1\r\nc: 2\r\n");
        Edited edited = new AddField("a", "d", YamlValue.texts("e", "f")).on(document);
        assertEquals(
                "a:\r\n  b: 1\r\n  d:\r\n    - e\r\n    - f\r\nc: 2\r\n", edited.document().text());
        assertEquals("a:\r\n  b: 1\r\n", new Remove("c").on(document).document().text());
    }

    @Test
    void whatCannotBeDoneIsRefused() {
        List<YamlEdit> impossible =
                List.of(
                        new Set("nowhere", YamlValue.text("x")),
                        new AddField("parts", "bat-1", YamlValue.text("x")),
                        new AddField("feeds", "a", YamlValue.text("x")),
                        new AddItem("parts", YamlValue.text("x")),
                        new Remove(""),
                        new Remove("few[7]"),
                        new Rename("few[0]", "x"),
                        new Rename("parts.bat-1", "bus-feed"));
        for (YamlEdit edit : impossible) {
            EditRefused refused =
                    assertThrows(
                            EditRefused.class,
                            () -> edit.on(Sample.document(TEXT)),
                            edit::toString);
            assertTrue(
                    String.valueOf(refused.getMessage()).endsWith(": " + refused.because())
                            && !refused.because().isBlank(),
                    refused::getMessage);
        }
        assertThrows(
                EditRefused.class,
                () -> new Set("a", YamlValue.text("x")).on(Sample.document("a: &b 1")));
        assertThrows(
                IllegalArgumentException.class,
                () -> Sample.document("a: 1").with(new Splice(0, "b", "c")));
    }
}
