package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;

/**
 * How a part, or one way through it, is drawn in a one-line diagram.
 *
 * @param name within the part; empty for one that stands for the whole part
 * @param label what stands at it
 * @param detail a rating; may be empty
 * @param contact element whose being closed or open in flight it shows
 */
public record Symbol(
        String name,
        Figure figure,
        String label,
        String detail,
        List<Pin> pins,
        Optional<String> contact,
        When when) {

    /** What it looks like. */
    public enum Figure {
        BATTERY,
        ALTERNATOR,
        CONVERTER,
        BUS,
        CONTACTOR,
        SWITCH,
        DIODE,
        FUSE,
        BREAKER,
        CONNECTOR,
        /** A row among the loads. */
        CONSUMER,
        /** A plain box with its pins around it. */
        BOX;

        /** Whether its rating says enough once it is in a feed. */
        public boolean knownByItsFeed() {
            return this == FUSE || this == BREAKER;
        }
    }

    /** When something of a part is drawn. */
    public enum When {
        ALWAYS,
        /** Where another part is joined to it, and it is not joined to the part's own pins. */
        JOINED,
        /** Where other parts are joined to both ends of the way. */
        LEADS_THROUGH,
        /** Where only wires lie between the part's contacts and their coil. */
        FEEDS_OWN_COIL,
        /** Where the coil of the part's contacts is fed from elsewhere. */
        COIL_FED_ELSEWHERE
    }

    /** Where a pin lies. */
    public enum PinEdge {
        LEFT,
        RIGHT,
        BELOW,
        /** To the right where it is a ground, else to the left. */
        RETURN,
        /** As the current goes: from left to right. */
        BY_CURRENT
    }

    /**
     * A terminal of the part at the symbol.
     *
     * @param port what the symbol calls it
     * @param words text inside a box; may be empty
     */
    public record Pin(String port, String terminal, PinEdge edge, String words, When when) {

        public static Pin at(PinEdge edge, String terminal) {
            return new Pin(terminal, terminal, edge, "", When.ALWAYS);
        }

        /** The same pin under another name. */
        public Pin as(String other) {
            return new Pin(other, terminal, edge, words, when);
        }

        /** The same pin with words inside the box. */
        public Pin saying(String inside) {
            return new Pin(port, terminal, edge, inside, when);
        }

        /** The same pin, which is not always drawn. */
        public Pin only(When condition) {
            return new Pin(port, terminal, edge, words, condition);
        }
    }

    public Symbol {
        pins = List.copyOf(pins);
    }

    /** One that stands for the whole part. */
    public static Symbol of(Part part, Figure figure, String detail, List<Pin> pins) {
        String label = part.tag().label();
        return new Symbol("", figure, label, detail, pins, Optional.empty(), When.ALWAYS);
    }

    /** A box or figure with its entry to the left, its exit to the right and the rest below. */
    public static Symbol around(Part part, Figure figure, String detail) {
        List<Pin> pins = new ArrayList<>();
        for (String terminal : part.terminals()) {
            PinEdge edge = terminal.equals(part.exit()) ? PinEdge.RIGHT : PinEdge.BELOW;
            pins.add(Pin.at(terminal.equals(part.entry()) ? PinEdge.LEFT : edge, terminal));
        }
        return of(part, figure, detail, pins);
    }

    /** What a part consumes itself, in a row of its own among the loads. */
    public static Symbol consumer(Part part, String name, List<Pin> pins, When when) {
        String label = name + " of " + part.tag().label();
        return new Symbol(name, Figure.CONSUMER, label, "", pins, Optional.empty(), when);
    }

    /** One for each way that leads through a part. */
    public static List<Symbol> ways(Part part, Figure figure, String detail) {
        List<Element> ways =
                part.elements().stream().filter(e -> e.passage() != Passage.NONE).toList();
        return ways.stream().map(w -> way(part, figure, detail, w, ways.size() == 1)).toList();
    }

    private static Symbol way(Part part, Figure figure, String detail, Element way, boolean only) {
        boolean oneWay = way.passage() == Passage.ONE_WAY;
        String label = part.tag().label();
        return new Symbol(
                only ? "" : way.name().replace(' ', '-'),
                figure,
                only ? label : label + " " + way.name(),
                detail,
                List.of(
                        Pin.at(oneWay ? PinEdge.LEFT : PinEdge.BY_CURRENT, way.from()).as("in"),
                        Pin.at(oneWay ? PinEdge.RIGHT : PinEdge.BY_CURRENT, way.to()).as("out")),
                Optional.of(way.name()),
                When.LEADS_THROUGH);
    }

    /** The same symbol, which shows whether a contact is closed. */
    public Symbol showing(String element) {
        return new Symbol(name, figure, label, detail, pins, Optional.of(element), when);
    }
}
