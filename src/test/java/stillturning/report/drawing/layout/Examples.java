package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Diagrams as a builder would have them; all names and values are invented. */
final class Examples {
    private final List<DiagramSymbol> symbols = new ArrayList<>();
    private final List<DiagramLine> lines = new ArrayList<>();

    private Examples() {}

    private static final Port IN = new Port("in", Side.WEST);
    private static final Port OUT = new Port("out", Side.EAST);

    private void inline(String id, Glyph glyph, String label, String detail) {
        symbols.add(new DiagramSymbol(id, glyph, label, detail, List.of(IN, OUT)));
    }

    private void load(String id, String label, String detail) {
        symbols.add(new DiagramSymbol(id, Glyph.LOAD, label, detail, List.of(IN)));
    }

    private void wire(String from, String to, String label) {
        lines.add(new DiagramLine(from, "out", to, "in", label));
    }

    private void grounded(String id, Glyph glyph, String label, String detail, Side side) {
        symbols.add(
                new DiagramSymbol(id, glyph, label, detail, List.of(OUT, new Port("minus", side))));
        symbols.add(
                new DiagramSymbol(
                        id + "-g", Glyph.EARTH, "", "", List.of(new Port("in", Side.NORTH))));
        lines.add(new DiagramLine(id, "minus", id + "-g", "in", ""));
    }

    /** One row: bus, breaker, switch if wanted, load. */
    private void row(String bus, String id, String label, String amps, String rating, boolean sw) {
        inline(id + "-b", Glyph.BREAKER_CLOSED, "", rating);
        wire(bus, id + "-b", "");
        String last = id + "-b";
        if (sw) {
            inline(id + "-s", Glyph.SWITCH_CLOSED, "", "");
            wire(last, id + "-s", "");
            last = id + "-s";
        }
        load(id, label, amps);
        wire(last, id, "AWG 18 · 1.2 m");
    }

    private void contactor(String id, Glyph glyph, String label) {
        symbols.add(
                new DiagramSymbol(
                        id, glyph, label, "", List.of(IN, OUT, new Port("coil", Side.SOUTH))));
        symbols.add(
                new DiagramSymbol(
                        id + "-g", Glyph.FRAME, "", "", List.of(new Port("in", Side.NORTH))));
        lines.add(new DiagramLine(id, "coil", id + "-g", "in", ""));
    }

    static Diagram oneBattery() {
        Examples e = new Examples();
        e.grounded("battery", Glyph.BATTERY, "Battery", "18 Ah", Side.SOUTH);
        e.grounded("alternator", Glyph.ALTERNATOR, "Alternator", "45 A", Side.SOUTH);
        e.contactor("master", Glyph.CONTACTOR_CLOSED, "Master contactor");
        e.inline("alt-fuse", Glyph.FUSE, "", "60 A");
        e.symbols.add(new DiagramSymbol("main", Glyph.BUS, "Main bus", "", List.of(IN, OUT)));
        e.wire("battery", "master", "AWG 4 · 0.6 m");
        e.wire("master", "main", "AWG 4 · 1.1 m");
        e.wire("alternator", "alt-fuse", "AWG 8 · 1.5 m");
        e.wire("alt-fuse", "main", "");
        e.contactor("starter-relay", Glyph.CONTACTOR_OPEN, "Starter contactor");
        e.symbols.add(new DiagramSymbol("starter", Glyph.STARTER, "Starter", "160 A", List.of(IN)));
        e.wire("master", "starter-relay", "AWG 4 · 0.3 m");
        e.wire("starter-relay", "starter", "AWG 4 · 1.4 m");
        e.row("main", "computer", "Engine computer", "1.2 A", "5 A", true);
        e.row("main", "injectors", "Injectors", "2.5 A", "5 A", false);
        e.row("main", "coils", "Coils", "3.5 A", "7.5 A", false);
        e.row("main", "pump1", "Fuel pump 1", "5.5 A", "10 A", true);
        e.row("main", "pump2", "Fuel pump 2", "5.5 A", "10 A", true);
        e.row("main", "radio", "Radio", "3 A", "5 A", false);
        e.row("main", "transponder", "Transponder", "2 A", "3 A", false);
        e.row("main", "display", "Flight display", "2.4 A", "5 A", false);
        e.row("main", "monitor", "Engine monitor", "0.6 A", "2 A", false);
        e.row("main", "lights", "Lights", "4 A", "7.5 A", true);
        e.row("main", "bilge", "Bilge pump", "4 A", "7.5 A", true);
        e.row("main", "gear", "Gear pump", "25 A", "30 A", true);
        return new Diagram("one", "One battery, breakers", e.symbols, e.lines);
    }

    private void computer(String id, String label) {
        symbols.add(
                new DiagramSymbol(
                        id,
                        Glyph.LOAD,
                        label,
                        "1.2 A",
                        List.of(
                                new Port("a", Side.WEST, "A"),
                                new Port("b", Side.WEST, "B"),
                                new Port("minus", Side.EAST))));
        symbols.add(
                new DiagramSymbol(
                        id + "-g", Glyph.FRAME, "G2", "", List.of(new Port("in", Side.WEST))));
        lines.add(new DiagramLine(id, "minus", id + "-g", "in", ""));
    }

    private void feed(String bus, String id, String rating, String computer, String port) {
        inline(id, Glyph.BREAKER_CLOSED, "", rating);
        wire(bus, id, "");
        lines.add(new DiagramLine(id, "out", computer, port, "AWG 20 · 0.9 m"));
    }

    static Diagram twoBatteries() {
        Examples e = new Examples();
        e.grounded("battery1", Glyph.BATTERY, "Battery 1", "12 Ah", Side.SOUTH);
        e.grounded("battery2", Glyph.BATTERY, "Battery 2", "9 Ah", Side.SOUTH);
        e.grounded("alternator", Glyph.ALTERNATOR, "Alternator", "45 A", Side.SOUTH);
        e.contactor("master", Glyph.CONTACTOR_CLOSED, "Master");
        e.inline("alt-fuse", Glyph.FUSE, "", "60 A");
        e.symbols.add(new DiagramSymbol("main", Glyph.BUS, "Main bus", "", List.of(IN, OUT)));
        e.symbols.add(new DiagramSymbol("engine", Glyph.BUS, "Engine bus", "", List.of(IN, OUT)));
        e.inline("d1", Glyph.DIODE, "D1", "");
        e.inline("d2", Glyph.DIODE, "D2", "");
        e.inline("eng-sw", Glyph.SWITCH_CLOSED, "Engine battery", "");
        e.wire("battery1", "master", "AWG 4");
        e.wire("master", "main", "");
        e.wire("alternator", "alt-fuse", "AWG 8");
        e.wire("alt-fuse", "main", "");
        e.wire("main", "d1", "AWG 10 · 0.4 m");
        e.wire("d1", "engine", "");
        e.wire("battery2", "eng-sw", "AWG 10 · 0.8 m");
        e.wire("eng-sw", "d2", "");
        e.wire("d2", "engine", "");
        e.computer("computer1", "Computer 1");
        e.computer("computer2", "Computer 2");
        e.feed("engine", "c1a", "3 A", "computer1", "a");
        e.feed("main", "c1b", "3 A", "computer1", "b");
        e.feed("engine", "c2a", "3 A", "computer2", "a");
        e.feed("main", "c2b", "3 A", "computer2", "b");
        e.row("engine", "inj", "Injectors", "2.5 A", "5 A", false);
        e.row("engine", "coil", "Coils", "3.5 A", "7.5 A", false);
        e.row("engine", "pump1", "Fuel pump 1", "5.5 A", "10 A", true);
        e.row("engine", "pump2", "Fuel pump 2", "5.5 A", "10 A", true);
        String[] others = {
            "Radio 1", "Radio 2", "Transponder", "Flight display", "Engine monitor", "Nav lights",
            "Landing light", "Bilge pump", "Gear pump", "Pitot heat", "Intercom", "USB outlet",
            "Trim", "Flaps"
        };
        for (int i = 0; i < others.length; i++) {
            e.row("main", "o" + i, others[i], (1 + i % 5) + " A", "5 A", i % 3 == 0);
        }
        return new Diagram("two", "Two batteries, diode-fed engine bus", e.symbols, e.lines);
    }

    static Diagram controller() {
        Examples e = new Examples();
        e.grounded("battery", Glyph.BATTERY, "Battery", "18 Ah", Side.SOUTH);
        e.grounded("alternator", Glyph.ALTERNATOR, "Alternator", "45 A", Side.SOUTH);
        e.contactor("master", Glyph.CONTACTOR_CLOSED, "Master contactor");
        e.inline("alt-fuse", Glyph.FUSE, "", "60 A");
        e.inline("logic-fuse", Glyph.FUSE, "", "2 A");
        List<Port> ports = new ArrayList<>();
        ports.add(new Port("supply", Side.WEST, "supply"));
        ports.add(new Port("logic", Side.WEST, "logic"));
        for (int i = 1; i <= 16; i++) {
            ports.add(new Port("ch" + i, Side.EAST, i + " · " + (i % 4 + 1) * 3 + " A"));
        }
        e.symbols.add(
                new DiagramSymbol(
                        "controller",
                        Glyph.CONTROLLER,
                        "Solid-state controller",
                        "16 channels",
                        ports,
                        Optional.empty(),
                        MarkState.PLAIN));
        e.symbols.add(new DiagramSymbol("main", Glyph.BUS, "Power stud", "", List.of(IN, OUT)));
        e.wire("battery", "master", "AWG 4 · 0.6 m");
        e.wire("master", "main", "");
        e.wire("alternator", "alt-fuse", "AWG 8 · 1.5 m");
        e.wire("alt-fuse", "main", "");
        e.lines.add(new DiagramLine("main", "out", "controller", "supply", "AWG 6"));
        e.wire("main", "logic-fuse", "");
        e.lines.add(new DiagramLine("logic-fuse", "out", "controller", "logic", ""));
        String[] names = {
            "Engine computer 1",
            "Engine computer 2",
            "Injectors",
            "Coils",
            "Fuel pump 1",
            "Fuel pump 2",
            "Radio",
            "Transponder",
            "Flight display",
            "Engine monitor",
            "Nav lights",
            "Landing light",
            "Bilge pump",
            "Gear pump",
            "Pitot heat",
            "Trim"
        };
        for (int i = 0; i < 16; i++) {
            Glyph glyph =
                    names[i].contains("pump")
                            ? Glyph.MOTOR
                            : names[i].contains("light") ? Glyph.LAMP : Glyph.LOAD;
            e.symbols.add(
                    new DiagramSymbol("l" + i, glyph, names[i], (1 + i % 5) + " A", List.of(IN)));
            e.lines.add(
                    new DiagramLine("controller", "ch" + (i + 1), "l" + i, "in", "AWG 18 · 1.2 m"));
        }
        return new Diagram("solid", "One solid-state controller", e.symbols, e.lines);
    }

    /** The two-battery diagram after the alternator failed, one look for each thing. */
    static Diagram afterAFailure() {
        Diagram plain = twoBatteries();
        List<DiagramSymbol> symbols = new ArrayList<>();
        List<DiagramLine> lines = new ArrayList<>();
        MarkState[] looks = MarkState.values();
        plain.symbols().forEach(s -> symbols.add(s.looking(looks[symbols.size() % looks.length])));
        plain.lines().forEach(l -> lines.add(l.looking(looks[lines.size() % looks.length])));
        return new Diagram("failed", plain.title(), symbols, lines);
    }

    /** The two-battery diagram with its engine side in a frame of its own. */
    static Diagram grouped() {
        Diagram plain = twoBatteries();
        List<String> engine =
                List.of(
                        "engine", "d1", "d2", "inj-b", "coil-b", "c1a", "c2a", "pump1-b",
                        "pump2-b");
        List<DiagramSymbol> symbols =
                plain.symbols().stream()
                        .map(
                                s ->
                                        engine.contains(s.id())
                                                ? new DiagramSymbol(
                                                        s.id(),
                                                        s.glyph(),
                                                        s.label(),
                                                        s.detail(),
                                                        s.ports(),
                                                        Optional.of("Engine panel"),
                                                        s.look())
                                                : s)
                        .toList();
        return new Diagram("grouped", plain.title(), symbols, plain.lines());
    }

    /** Every glyph between two short wires. */
    static Diagram glyphs() {
        Examples e = new Examples();
        for (Glyph glyph : Glyph.values()) {
            if (glyph.form == Glyph.GlyphForm.INLINE) {
                String id = glyph.name();
                e.inline(id + "-l", Glyph.CONNECTOR, "", "");
                String words = glyph.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' ');
                e.inline(id, glyph, words, "");
                e.inline(id + "-r", Glyph.CONNECTOR, "", "");
                e.wire(id + "-l", id, "");
                e.wire(id, id + "-r", "");
            }
        }
        return new Diagram("glyphs", "Glyphs", e.symbols, e.lines);
    }
}
