package stillturning.yaml.shape;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.BindResult;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.GivenGauge;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.TextForm;
import stillturning.yaml.shape.Sample.Alternator;
import stillturning.yaml.shape.Sample.Battery;
import stillturning.yaml.shape.Sample.Chemistry;
import stillturning.yaml.shape.Sample.Drawing;
import stillturning.yaml.shape.Sample.Wire;

class BinderTest {

    @Test
    void aWholeDocumentBecomesRecords() throws Exception {
        BindResult<Drawing> bound = Sample.bind(Sample.TEXT);
        assertEquals(List.of(), bound.problems());
        Drawing drawing = bound.value().orElseThrow();
        assertEquals("Sandpiper", drawing.title());
        assertFalse(drawing.flown());
        assertEquals(2, drawing.seats());
        assertEquals(1.0, drawing.weighting());
        assertEquals(Optional.of("on"), drawing.remark());
        assertEquals(List.of("bat-1", "bus-feed", "alt"), List.copyOf(drawing.parts().keySet()));
        Given capacity = new Given(Quantity.parse("20 Ah"), Origin.DATA_SHEET, "curve 3");
        assertEquals(
                new Battery(capacity, Quantity.parse("100 %"), Chemistry.LITHIUM_IRON),
                drawing.parts().get("bat-1"));
        assertEquals(
                new Wire(
                        new GivenGauge(WireGauge.awg(16), Origin.STATED, ""),
                        Quantity.parse("3 ft")),
                drawing.parts().get("bus-feed"));
        Alternator alternator = (Alternator) requireNonNull(drawing.parts().get("alt"));
        assertEquals(new Given(Quantity.parse("45 A"), Origin.GUESSED, ""), alternator.limit());
        assertEquals(Origin.AUTOMATIC, alternator.setPoint().origin());
        assertEquals(Origin.STATED, alternator.ratedAt().get(0).origin());
        assertEquals(80, alternator.ratedAt().get(1).quantity().si());
        assertEquals("main-bus", drawing.feeds().get(0).from());
        assertEquals("aux-bus", drawing.feeds().get(1).then().get(0).from());
    }

    @Test
    void allMistakesComeAtOnceEachWithPlaceAndRemedy() {
        String text =
                """
                titel: Sandpiper
                seats: 5
                flown: maybe
                weighting: "1"
                parts:
                  Bus Feed:
                    is: wire
                    gauge: AWG 99
                    length: 0 m
                  bat:
                    is: batery
                  bat-2:
                    is: battery
                    capacity: 20
                    chemistry: lead acid
                    gauge: AWG 16
                  alt: {is: alternator, limit: 600 A (rumour), rated-at: 25 °C}
                  alt-2: {is: alternator, limit: 600 A}
                  none:
                  list: []
                feeds:
                  - main-bus, breaker 5 V
                  - 'it''s, breaker 5 V'
                  - "\\u0041\\t, breaker 5 V"
                  - main-bus
                  - from: main-bus
                remark: ''
                """;
        assertEquals(
                """
                two-battery.yaml:1:1: titel: "titel" is not known here; did you mean "title"? known here: title, flown, seats, weighting, parts, feeds, remark
                two-battery.yaml:1:1: title: "title" is missing; add it, for example title: a few words
                two-battery.yaml:2:8: seats: 5 is out of range; write a number from 1 to 4
                two-battery.yaml:3:8: flown: "maybe" is neither yes nor no; write yes or no
                two-battery.yaml:4:12: weighting: the number stands in quotes; write 1 without quotes
                two-battery.yaml:6:3: parts.Bus Feed: "Bus Feed" cannot be a name; did you mean "bus-feed"? use lower case letters, digits and hyphens
                two-battery.yaml:8:12: parts.Bus Feed.gauge: "AWG 99" is no wire gauge; write AWG 22, 20, 18 ... 2, 1, 1/0 ... 4/0 or an area such as 4 mm2
                two-battery.yaml:9:13: parts.Bus Feed.length: 0 m is out of range; write more than 0 m
                two-battery.yaml:11:9: parts.bat.is: "batery" is no known kind; did you mean "battery"? write one of battery, wire, alternator
                two-battery.yaml:14:17: parts.bat-2.capacity: "20" has no unit; add a unit: 20 Ah
                two-battery.yaml:15:16: parts.bat-2.chemistry: "lead acid" is none of the choices; did you mean "lead-acid"? write one of lead-acid, LiFePO4
                two-battery.yaml:16:5: parts.bat-2.gauge: "gauge" is not known here; known here: is, capacity, health, chemistry
                two-battery.yaml:17:39: parts.alt.limit: "rumour" is no origin of a value; write one of measured, data sheet, catalogue, guess, automatic, then a comma and a note if you like
                two-battery.yaml:17:58: parts.alt.rated-at: a single text stands where a list belongs; write for example [25 °C]
                two-battery.yaml:18:10: parts.alt-2: no alternator gives 600 A; check the limit
                two-battery.yaml:19:8: parts.none: no value is written; write for example {is: battery, ...}
                two-battery.yaml:20:9: parts.list: a list stands where a mapping belongs; write for example {is: battery, ...}
                two-battery.yaml:22:25: feeds[0]: "5 V" is a voltage; a current is written in A, mA, uA, kA
                two-battery.yaml:23:23: feeds[1]: "5 V" is a voltage; a current is written in A, mA, uA, kA
                two-battery.yaml:24:26: feeds[2]: "5 V" is a voltage; a current is written in A, mA, uA, kA
                two-battery.yaml:25:5: feeds[3]: no breaker is named; write main-bus, breaker 5 A
                two-battery.yaml:26:5: feeds[4].breaker: "breaker" is missing; add it, for example breaker: 5 A
                two-battery.yaml:27:9: remark: no value is written; write for example a few words
                """,
                Sample.problems(text));
        assertEquals(Optional.empty(), Sample.bind(text).value());
    }

    @Test
    void whatAValueSaysOfItsOriginReadsBack() {
        TextForm.FaultReceiver none = (offset, wrong, right) -> fail(wrong);
        for (String text :
                List.of(
                        "20 Ah",
                        "1.2 Ah (measured)",
                        "2 Ah (guess, by eye)",
                        "3 Ah (data sheet, curve 3 (rev. B))")) {
            assertEquals(text, Given.read(text, Dimension.CHARGE, none).orElseThrow().written());
        }
        assertEquals(
                "AWG 2/0 (catalogue)",
                GivenGauge.read("AWG 00(catalogue)", none).orElseThrow().written());
        assertEquals(
                "7 Ah (guess, a: b)",
                Given.read("7 Ah ( guessed :  a: b )", Dimension.CHARGE, none)
                        .orElseThrow()
                        .written());
    }

    @Test
    void aCommaThatCutsANoteOffInsideBracesIsExplained() {
        String text =
                "title: x\n"
                        + "seats: 2\n"
                        + "parts: {b: {is: battery, chemistry: lead-acid, capacity: 2 Ah (guess,"
                        + " mine)}}";
        assertEquals(
                """
                two-battery.yaml:3:63: parts.b.capacity: the bracket is not closed at the end; close it; inside { } or [ ] put a text with a comma in quotes
                two-battery.yaml:3:71: parts.b."mine)": "mine)" is not known here; known here: is, capacity, health, chemistry
                """,
                Sample.problems(text));
    }
}
