package stillturning.files.entry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.files.entry.RunText.Direct;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.NewProtector;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.entry.RunText.Through;
import stillturning.parts.RatedChannel;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Source;
import stillturning.yaml.notation.TextForm;
import stillturning.yaml.notation.Written;

class FileNotationsTest {

    private static <T> List<String> faults(TextForm<T> form, String text) {
        List<String> told = new ArrayList<>();
        Optional<T> value =
                form.read(text, (at, wrong, right) -> told.add(at + ": " + wrong + "; " + right));
        assertEquals(told.isEmpty(), value.isPresent(), text);
        return told;
    }

    private static <T> T read(TextForm<T> form, String text) {
        return form.read(
                        text,
                        (at, wrong, right) -> {
                            throw new AssertionError(at + ": " + wrong + "; " + right);
                        })
                .orElseThrow();
    }

    private static Given given(String text, Dimension dimension) throws Exception {
        return new Given(Quantity.parse(text, dimension), Origin.STATED, "");
    }

    @Test
    void aRunKeepsItsItemsAndTheirPlaces() throws Exception {
        RunText run =
                read(
                        RunForm::read,
                        "from unit channel 3 to j1.2b, fuse 60 A class high-current, via j1 pin 3,"
                                + " wire AWG 2/0 0.9 m (measured, with tape, twice), wire 4 mm2,"
                                + " wire 3 ft, wire, return tail-ground");
        assertEquals(new NamedTerminal("unit", Optional.of("out-3"), 5), run.from());
        assertEquals(Optional.of(new NamedTerminal("j1", Optional.of("2b"), 23)), run.to());
        Given measured =
                new Given(
                        Quantity.parse("0.9 m", Dimension.LENGTH),
                        Origin.MEASURED,
                        "with tape, twice");
        assertEquals(
                List.of(
                        new NewProtector(
                                false,
                                given("60 A", Dimension.CURRENT),
                                Optional.of("high-current"),
                                30),
                        new Through(new NamedTerminal("j1", Optional.of("3a"), 64), 60),
                        new NewWire(Optional.of(WireGauge.awg(-1)), Optional.of(measured), 74),
                        new NewWire(Optional.of(WireGauge.parse("4 mm2")), Optional.empty(), 123),
                        new NewWire(
                                Optional.empty(),
                                Optional.of(given("3 ft", Dimension.LENGTH)),
                                135),
                        new NewWire(Optional.empty(), Optional.empty(), 146)),
                run.items());
        assertEquals("tail-ground", run.back().orElseThrow().part());
    }

    @Test
    void aDirectRunHasNoWire() {
        RunText run = read(RunForm::read, "from a to b, direct");
        assertEquals(List.of(new Direct(13)), run.items());
    }

    @Test
    void everyFaultOfARunIsToldAtItsPlace() {
        assertEquals(
                List.of("4: no part is named after \"from\"; write a part, such as main-bus"),
                faults(RunForm::read, "from"));
        assertEquals(
                List.of(
                        "5: \"Main\" cannot be a name; write a part or part.terminal, in lower case"
                                + " letters, digits and hyphens",
                        "10: \"Bus\" does not belong here; write main-bus, j1.3b, controller"
                                + " channel 3 or, after via, j1 pin 3; names have no blanks, and a"
                                + " comma stands between items"),
                faults(RunForm::read, "from Main Bus"));
        assertEquals(
                List.of(
                        "16: -5 A is out of range; write more than 0 A",
                        "36: one word must follow \"class\"; write for example class high-current",
                        "48: a second return stands here; keep one of the two"),
                faults(RunForm::read, "from a, breaker -5 A, fuse 3 A class, return b, return c"));
    }

    @Test
    void aRunOfManyItemsIsRefused() {
        List<String> told = faults(RunForm::read, "from a" + ", via b".repeat(60));
        assertEquals(1, told.size());
        assertEquals("358: the run has more than 50 items; make two runs of it", told.get(0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "breaker 7,5 A | 17: the number has a comma; write 7.5 A",
                "fuse 7,5 A class blade | 14: the number has a comma; write 7.5 A",
                "wire 1,5 m | 14: the number has a comma; write 1.5 m",
                "wire 2,5 mm2 1,5 m | 14: the number has a comma; write 2.5 mm2 1.5 m",
                "wire AWG 16 1,5 m ± 0,1 m | 21: the number has a comma; write 1.5 m",
                "wire 1.5 m ± 0,1 m | 22: the number has a comma; write 0.1 m",
                "wire 5 mm | 13: 5 mm of wire is a length, and reads like a cross-section; write"
                        + " wire 5 mm2 for the cross-section, wire 1.5 m for a length",
                "wire 35 mm | 13: 35 mm of wire is a length, and reads like a cross-section; write"
                        + " wire 35 mm2 for the cross-section, wire 0.035 m for the length",
                "wire AWG 8 5 mm | 19: 5 mm is shorter than the terminals at a wire's ends; write"
                        + " at least 0.02 m, or \"direct\" in place of the wire",
                "wire 1 cm | 13: 1 cm is shorter than the terminals at a wire's ends; write at"
                        + " least 0.02 m, or \"direct\" in place of the wire",
                "wire 1.5 m AWG 8 | 19: the gauge stands behind the length; write wire AWG 8 1.5 m",
                "wire 1 ft 4 mm2 | 18: the gauge stands behind the length; write wire 4 mm2 1 ft"
            })
    void whatNobodyMeansByAWireIsToldWithWhatIsMeant(String item, String told) {
        assertEquals(List.of(told), faults(RunForm::read, "from a, " + item));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "wire 40 mm",
                "wire 4 mm2 35 mm",
                "wire 20 mm",
                "wire 3 in",
                "wire AWG 8 2 cm"
            })
    void aShortWireThatCanBeMadeIsTaken(String item) {
        assertEquals(1, read(RunForm::read, "from a, " + item).items().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pump | pump",
                "a and b | a and b",
                "(a or b) and c and (d or e) | (a or b) and c and (d or e)",
                "2 of (a, b, c) and d | (2 of (a, b, c)) and d",
                "((a)) | a",
                "1 of (a, b) | a or b",
                "2 of (a and b, c, d or e) | 2 of ((a and b), c, (d or e))"
            })
    void engineLogicReadsAsItIsWritten(String text, String words) {
        assertEquals(words, read(NeedsForm::read, text).logic().inWords());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "a or b and c | 7: \"and\" and \"or\" stand beside each other; put brackets around"
                        + " what belongs together",
                "a and | 5: the text ends too early; write a load, such as (computer-a or"
                        + " computer-b) and coils and 1 of (pump-1, pump-2)",
                "a b | 2: \"b\" does not belong here; write \"and\" or \"or\" between loads",
                "(a or b | 7: the text ends too early; write \")\" here",
                "3 of (a, b) | 0: 3 of 2 is not possible; write a number from 1 to 2",
                "0 of (a, b) | 0: 0 of 2 is not possible; write a number from 1 to 2",
                "2 of a | 5: \"a\" does not belong here; write \"(\" here",
                "a and a | 2: \"a\" is asked for twice; keep one",
                "a && b | 2: \"&&\" does not belong here; write \"and\" or \"or\" between loads",
                "a and Pump | 6: \"Pump\" does not belong here; write a load, such as (computer-a"
                        + " or computer-b) and coils and 1 of (pump-1, pump-2)"
            })
    void aFaultOfEngineLogicIsToldAtItsPlace(String text, String told) {
        assertEquals(List.of(told), faults(NeedsForm::read, text));
    }

    @Test
    void deepBracketsAreRefused() {
        assertEquals(
                List.of("21: brackets are nested more than 20 deep; nest less"),
                faults(NeedsForm::read, "(".repeat(100_000)));
    }

    private static Written channel(Given rating, boolean on) {
        return new Written(RatedChannel.class, Map.of("rating", rating, "on-by-default", on));
    }

    @Test
    void channelsSayWhatHappensWithoutTheirLogic() throws Exception {
        Given ten = given("10 A", Dimension.CURRENT);
        assertEquals(channel(ten, false), read(ChannelText::read, "10 A"));
        assertEquals(channel(ten, true), read(ChannelText::read, "10 A, default on"));
        assertEquals(channel(ten, false), read(ChannelText::read, "10 A, default off"));
        assertEquals(
                List.of(
                        "6: \"defualt on\" does not belong here; did you mean \"default on\"? write"
                                + " 10 A, default on"),
                faults(ChannelText::read, "10 A, defualt on"));
        assertEquals(
                List.of("0: 0 A is out of range; write more than 0 A"),
                faults(ChannelText::read, "0 A"));
    }

    @Test
    void pricesHaveAnAmountACurrencyAndASource() {
        assertEquals(
                new Price(120.5, "EUR", new Source(Origin.GUESSED, "round")),
                read(Price::read, "120.5 EUR (guess, round)"));
        assertEquals(
                "120.5 EUR (guess, round)",
                read(Price::read, "120.5 EUR (guess, round)").written());
        assertEquals(
                List.of(
                        "0: \"120\" is no price; write an amount, with a decimal point, and the"
                                + " currency's three-letter code, such as 120 EUR"),
                faults(Price::read, "120"));
    }
}
