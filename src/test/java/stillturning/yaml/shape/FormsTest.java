package stillturning.yaml.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.yaml.notation.Checked;

/** What a form asks at each place of a document, and what it says to an answer. */
class FormsTest {

    private static final Forms FORMS = new Forms(Sample.BINDER, Sample.Drawing.class);

    private static Optional<Form> at(String text, String... keys) {
        return FORMS.at(Sample.document(text), List.of(keys));
    }

    private static Form form(String... keys) {
        return at(Sample.TEXT, keys).orElseThrow();
    }

    private static List<String> keys(Form form) {
        return form.fields().stream().map(FormField::key).toList();
    }

    private static FormField field(Form form, String key) {
        return form.field(key).orElseThrow();
    }

    @Test
    void theDocumentItselfAsksForItsFields() {
        Form form = form();
        assertEquals("", form.path());
        assertEquals("An aircraft's electrics, as drawn.", form.words());
        assertEquals(
                List.of("title", "flown", "seats", "weighting", "parts", "feeds", "remark"),
                keys(form));
        assertEquals(Optional.of("Sandpiper"), field(form, "title").text());
        assertTrue(field(form, "title").isRequired());
        assertFalse(field(form, "remark").isRequired());
        assertEquals(Optional.of("no"), field(form, "flown").otherwise());
        assertEquals(Optional.of("1"), field(form, "weighting").otherwise());
        assertEquals(Optional.empty(), field(form, "parts").otherwise());
        assertEquals(Optional.empty(), field(form, "feeds").otherwise());
        assertEquals(3, field(form, "parts").size());
        assertEquals(2, field(form, "feeds").size());
        assertEquals(0, field(form, "title").size());
    }

    @Test
    void onePartOfManyAsksByItsKind() {
        Form form = form("parts", "bat-1");
        assertEquals("parts.bat-1", form.path());
        Form.KindChoice kind = form.kind().orElseThrow();
        assertEquals("is", kind.key());
        assertEquals("battery", kind.word());
        assertEquals(List.of("battery", "wire", "alternator"), kind.choices());
        assertEquals(List.of("capacity", "health", "chemistry"), keys(form));
        assertEquals(Optional.of("Charge when new."), field(form, "capacity").words());
        assertEquals("parts.bat-1.capacity", field(form, "capacity").path());
        assertEquals(Optional.of("20 Ah (data sheet, curve 3)"), field(form, "capacity").text());
        assertEquals(Optional.empty(), field(form, "health").text());
    }

    /** Without its kind nothing but that can be asked. */
    @Test
    void aPartWithoutItsKindAsksForThat() {
        Form form = at("parts:\n  new: {}\n", "parts", "new").orElseThrow();
        assertEquals("", form.kind().orElseThrow().word());
        assertEquals(List.of(), form.fields());
    }

    @Test
    void namesAndItemsAreAskedOneByOne() {
        Form parts = form("parts");
        assertEquals(List.of("bat-1", "bus-feed", "alt"), keys(parts));
        assertEquals(Optional.of("is"), field(parts, "alt").kindKey());
        assertEquals(List.of("battery", "wire", "alternator"), field(parts, "alt").kinds());
        assertFalse(field(parts, "alt").isItem());
        assertEquals(Optional.empty(), field(form(), "title").kindKey());
        assertEquals(List.of(), field(form(), "title").kinds());
        Form feeds = form("feeds");
        assertEquals(2, feeds.fields().size());
        assertTrue(feeds.fields().get(0).isItem());
        assertEquals("feeds[0]", feeds.fields().get(0).path());
        assertTrue(feeds.further().isPresent());
    }

    @Test
    void placesDeepInsideAreFoundByKeysAndNumbers() {
        Form feed = form("feeds", "1");
        assertEquals("feeds[1]", feed.path());
        assertEquals(List.of("from", "breaker", "then"), keys(feed));
        assertEquals(Optional.of("10 A"), field(feed, "breaker").text());
        assertEquals(1, field(feed, "then").size());
        Form none = form("feeds", "7");
        assertEquals(Optional.empty(), field(none, "breaker").text());
        assertEquals(Optional.empty(), at(Sample.TEXT, "title"));
        assertEquals(Optional.empty(), at(Sample.TEXT, "nothing", "such"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "capacity | 20 | has no unit",
                "capacity | 0 Ah | more than 0 Ah",
                "capacity | 1001 Ah | 1000 Ah",
                "health | 101 % | 100 %",
                "chemistry | zinc | lead-acid",
            })
    void anAnswerThatIsWrongIsTold(String key, String answer, String said) {
        Checked checked = field(form("parts", "bat-1"), key).check(answer);
        assertEquals(Optional.empty(), checked.value());
        String fault = checked.fault().orElseThrow().toString();
        assertTrue(fault.contains(said), fault);
    }

    @Test
    void anAnswerThatIsRightIsTaken() {
        FormField capacity = field(form("parts", "bat-1"), "capacity");
        assertTrue(capacity.check(" 1000 Ah (measured) ").value().isPresent());
        assertTrue(capacity.check(capacity.example()).value().isPresent(), capacity.example());
        assertEquals(Checked.leftOut(), field(form(), "remark").check("  "));
        String missing = field(form(), "title").check(" ").fault().orElseThrow().toString();
        assertTrue(missing.startsWith("\"title\" is missing; write for example "), missing);
    }

    /** Faults are told where they stand, blanks before them counted. */
    @Test
    void aFaultPointsToItsPlace() {
        FormField capacity = field(form("parts", "bat-1"), "capacity");
        int bare = capacity.check("20 Ax").fault().orElseThrow().offset();
        assertEquals(bare + 2, capacity.check("  20 Ax").fault().orElseThrow().offset());
    }

    @Test
    void whatMustBeAKnownNameIsHeldAgainstThem() {
        FormField from =
                field(form("feeds", "1"), "from").naming("bus", List.of("main-bus", "aux-bus"));
        assertTrue(from.check("aux-bus").value().isPresent());
        Checked.TextFault fault = from.check(" main-bux").fault().orElseThrow();
        assertEquals(1, fault.offset());
        assertEquals("there is no bus \"main-bux\"", fault.wrong());
        assertTrue(fault.right().contains("main-bus"), fault.right());
        assertEquals(Optional.of("as drawn"), from.otherwise("as drawn").otherwise());
        assertTrue(from.otherwise("as drawn").check("nowhere").fault().isPresent());
    }
}
