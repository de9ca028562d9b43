package stillturning.story.timeline;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Phase;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.OutputBySpeed.OutputPoint;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.joining.Diode;
import stillturning.parts.protection.Fuse;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.switching.Switch;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.UntoldStory;

/** A case of the stored stories: a small aircraft, and what the simulator found in it. */
final class TransientCase {
    private final String name;
    private final List<String[]> lines;

    private TransientCase(String name, List<String[]> lines) {
        this.name = name;
        this.lines = List.copyOf(lines);
    }

    static List<TransientCase> read(String resource) {
        List<TransientCase> all = new ArrayList<>();
        String name = "";
        List<String[]> lines = new ArrayList<>();
        for (String line : text(resource)) {
            if (line.startsWith("case ")) {
                if (!lines.isEmpty()) {
                    all.add(new TransientCase(name, lines));
                }
                name = line.substring("case ".length());
                lines.clear();
            } else if (!line.isBlank() && !line.startsWith("#")) {
                lines.add(line.split(" ", -1));
            }
        }
        all.add(new TransientCase(name, lines));
        return all;
    }

    private static List<String> text(String resource) {
        try (InputStream in = TransientCase.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("missing " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The words of the lines that begin with this one. */
    List<String[]> lines(String first) {
        return lines.stream().filter(words -> words[0].equals(first)).toList();
    }

    Timeline timeline() throws UntoldStory {
        Bench bench = bench();
        FlightSpan span = lines("flown").isEmpty() ? FlightSpan.HELD : FlightSpan.FLOWN;
        Moment moment = new Moment("cruise", span, Batteries.AS_STATED);
        return new Timeline(bench.study(), bench.candidate(), moment);
    }

    Failure failure() {
        Bench bench = bench();
        List<Hit> hits =
                lines("fails").stream()
                        .map(w -> w[1] + ": " + String.join(" ", List.of(w).subList(2, w.length)))
                        .flatMap(mode -> bench.failure(mode).hits().stream())
                        .toList();
        Map<String, String> levers = new LinkedHashMap<>();
        lines("moves").forEach(words -> levers.put(words[1], words[2]));
        return new Failure(name, hits, levers);
    }

    private Bench bench() {
        Bench bench =
                new Bench()
                        .engine(new EngineLogic.One("computer"), true)
                        .phases(new Phase("cruise", 12 * 3600, 60));
        lines("celsius").forEach(words -> bench.celsius(number(words, 1)));
        lines("bar").forEach(words -> bench.bus(words[1]));
        lines.forEach(words -> put(words, bench));
        lines("cue").forEach(cue -> procedure(cue, lines("pilot").get(0), bench));
        return bench;
    }

    private static void put(String[] words, Bench bench) {
        switch (words[0]) {
            case "battery" -> atOneNet(battery(words), "plus", "minus", words, bench);
            case "alternator" -> {
                atOneNet(alternator(words), "output", "case", words, bench);
                bench.join(words[1], "field", words[2], "bar");
            }
            case "load" -> {
                bench.load(load(words));
                bench.join(words[1], "plus", words[2], "bar");
            }
            case "wire" -> {
                Cable cable = Cable.awg(words[5]).orElseThrow();
                between(new Wire(Bench.tag(words[1]), cable, 1, number(words, 4)), words, bench);
            }
            case "fuse" -> between(fuse(words), words, bench);
            case "diode" -> between(diode(words), words, bench);
            case "switch" -> {
                between(
                        new Switch(Bench.tag(words[1]), 1, Switch.Throw.SINGLE, number(words, 4)),
                        words,
                        bench);
                bench.lever(words[1], words[5]);
            }
            default -> {} // no part
        }
    }

    private static void atOneNet(
            Part part, String terminal, String back, String[] words, Bench bench) {
        bench.part(part)
                .join(words[1], terminal, words[2], "bar")
                .join(words[1], back, "ground", "stud");
    }

    private static void between(Part part, String[] words, Bench bench) {
        bench.part(part)
                .join(words[1], part.entry(), words[2], "bar")
                .join(words[1], part.exit(), words[3], "bar");
    }

    private static Battery battery(String[] words) {
        boolean lead = words[3].equals("lead");
        RestVoltage curve = lead ? RestVoltage.LEAD_ACID : RestVoltage.LITHIUM_IRON_PHOSPHATE;
        return new Battery(
                Bench.tag(words[1]),
                new OpenCircuit(curve, 1),
                lead ? 6 : 4,
                new Capacity(number(words, 4) * 3600, number(words, 5), number(words, 6)),
                number(words, 7),
                number(words, 8),
                Optional.empty());
    }

    private static Alternator alternator(String[] words) {
        return new Alternator(
                Bench.tag(words[1]),
                new Regulation(number(words, 3), number(words, 4)),
                new OutputBySpeed(
                        List.of(new OutputPoint(20, 0), new OutputPoint(60, number(words, 5)))),
                number(words, 6),
                0,
                Shelf.STEADY);
    }

    private static Load load(String[] words) {
        double minimum = number(words, 5);
        Demand.DemandKind kind =
                switch (words[3]) {
                    case "power" -> Demand.DemandKind.CONSTANT_POWER;
                    case "current" -> Demand.DemandKind.CONSTANT_CURRENT;
                    case "resistance" -> Demand.DemandKind.CONSTANT_RESISTANCE;
                    default -> throw new IllegalArgumentException("load " + words[3]);
                };
        return new Load(
                Bench.tag(words[1]),
                new Demand(kind, number(words, 4), 12),
                new Tolerance(minimum, minimum + 0.5, number(words, 6), 1, 40, 1),
                List.of("plus"));
    }

    private static Fuse fuse(String[] words) {
        return new Fuse(
                Bench.tag(words[1]),
                number(words, 4),
                number(words, 5),
                ProtectorCurves.BLADE_FUSE);
    }

    private static Diode diode(String[] words) {
        return new Diode(Bench.tag(words[1]), number(words, 4), number(words, 5), number(words, 6));
    }

    /** The cue is called by its sign, the procedure {@code checklist}. */
    private static void procedure(String[] cue, String[] pilot, Bench bench) {
        Cue.Sign sign =
                switch (cue[1]) {
                    case "out" -> new Cue.AlternatorOut(cue[2]);
                    case "low" ->
                            new Cue.LowVolts(
                                    new Terminal(cue[2], "bar"), number(cue, 3), number(cue, 4));
                    default -> throw new IllegalArgumentException("cue " + cue[1]);
                };
        Map<String, String> moves = new LinkedHashMap<>();
        IntStream.range(1, pilot.length / 2)
                .forEach(n -> moves.put(pilot[2 * n], pilot[2 * n + 1]));
        bench.cue(cue[1], sign).procedure("checklist", cue[1], number(pilot, 1), moves);
    }

    private static double number(String[] words, int place) {
        return Double.parseDouble(words[place]);
    }

    @Override
    public String toString() {
        return name;
    }
}
