package stillturning.report.export;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.ReportSamples;
import stillturning.story.Trace;

class NetlistTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();
    private static final Study STUDY = ASSESSMENT.study();

    /** A reader and solver of its own: modified nodal equations, Newton, dense. */
    private static final class Simulator {
        private static final double THERMAL_VOLTS = 0.025864926;
        private final Map<String, Integer> nodes = new HashMap<>();
        private final List<String[]> lines = new ArrayList<>();
        private final Map<String, Map<String, Double>> models = new HashMap<>();
        private int sources;

        Simulator(String netlist) {
            for (String line : netlist.lines().toList()) {
                if (line.startsWith(".model")) {
                    Map<String, Double> values = new HashMap<>();
                    Matcher m = Pattern.compile("(IS|N|RS)=([-+.0-9e]+)").matcher(line);
                    while (m.find()) {
                        values.put(m.group(1), Double.valueOf(m.group(2)));
                    }
                    models.put(line.split("[ (]", -1)[1], values);
                } else if (!line.startsWith("*") && !line.startsWith(".")) {
                    String[] words = line.split(" ", -1);
                    lines.add(words);
                    node(words[1]);
                    node(words[2]);
                    sources += words[0].startsWith("V") ? 1 : 0;
                }
            }
        }

        private int node(String name) {
            return name.equals("0") ? -1 : nodes.computeIfAbsent(name, n -> nodes.size());
        }

        Map<String, Double> volts() {
            int size = nodes.size() + sources;
            double[] x = new double[size];
            Arrays.fill(x, 0, nodes.size(), 12);
            for (int step = 0; step < 400; step++) {
                double[] next = solved(size, x);
                double change = 0;
                for (int i = 0; i < nodes.size(); i++) {
                    double move = Math.max(-0.3, Math.min(0.3, next[i] - x[i]));
                    change = Math.max(change, Math.abs(next[i] - x[i]));
                    x[i] += move;
                }
                if (change < 1e-9) {
                    break;
                }
            }
            Map<String, Double> volts = new HashMap<>();
            nodes.forEach((name, at) -> volts.put(name, x[at]));
            return volts;
        }

        private double[] solved(int size, double[] x) {
            Array2DRowRealMatrix a = new Array2DRowRealMatrix(size, size);
            RealVector b = new ArrayRealVector(size);
            int source = nodes.size();
            for (int i = 0; i < nodes.size(); i++) {
                a.addToEntry(i, i, 1e-12);
            }
            for (String[] line : lines) {
                int from = node(line[1]);
                int to = node(line[2]);
                double across = (from < 0 ? 0 : x[from]) - (to < 0 ? 0 : x[to]);
                switch (line[0].charAt(0)) {
                    case 'R' -> conduct(a, from, to, 1 / Double.parseDouble(line[3]));
                    case 'I' -> draw(b, from, to, Double.parseDouble(line[3]));
                    case 'B' -> {
                        String[] law = line[3].split("[>?/:*]", -1);
                        double watts = Double.parseDouble(law[2]);
                        boolean works = across > Double.parseDouble(law[1]);
                        double slope =
                                works ? -watts / (across * across) : Double.parseDouble(law[4]);
                        conduct(a, from, to, slope);
                        draw(b, from, to, works ? 2 * watts / across : 0);
                    }
                    case 'D' -> diode(a, b, from, to, across, at(models, line[3]));
                    case 'V' -> {
                        stamp(a, from, source, 1);
                        stamp(a, to, source, -1);
                        b.setEntry(source, Double.parseDouble(line[3]));
                        source++;
                    }
                    default -> throw new IllegalArgumentException(String.join(" ", line));
                }
            }
            return new LUDecomposition(a).getSolver().solve(b).toArray();
        }

        private static void diode(
                Array2DRowRealMatrix a,
                RealVector b,
                int from,
                int to,
                double across,
                Map<String, Double> model) {
            double emission = at(model, "N") * THERMAL_VOLTS;
            double saturation = at(model, "IS");
            double inner = Math.min(across, 2);
            for (int i = 0; i < 60; i++) {
                double f =
                        inner
                                + at(model, "RS") * saturation * Math.expm1(inner / emission)
                                - across;
                double slope =
                        1 + at(model, "RS") * saturation / emission * Math.exp(inner / emission);
                inner -= Math.max(-0.05, Math.min(0.05, f / slope));
            }
            double own = saturation / emission * Math.exp(inner / emission);
            double slope = own / (1 + own * at(model, "RS")) + 1e-12;
            double amps = saturation * Math.expm1(inner / emission);
            conduct(a, from, to, slope);
            draw(b, from, to, amps - slope * across);
        }

        private static void conduct(Array2DRowRealMatrix a, int from, int to, double siemens) {
            if (from >= 0) {
                a.addToEntry(from, from, siemens);
            }
            if (to >= 0) {
                a.addToEntry(to, to, siemens);
            }
            if (from >= 0 && to >= 0) {
                a.addToEntry(from, to, -siemens);
                a.addToEntry(to, from, -siemens);
            }
        }

        private static void draw(RealVector b, int from, int to, double amps) {
            if (from >= 0) {
                b.addToEntry(from, -amps);
            }
            if (to >= 0) {
                b.addToEntry(to, amps);
            }
        }

        private static void stamp(Array2DRowRealMatrix a, int node, int source, double sign) {
            if (node >= 0) {
                a.addToEntry(node, source, sign);
                a.addToEntry(source, node, sign);
            }
        }
    }

    @TempDir private Path here = Path.of("");

    private static String stored(String file) throws IOException {
        try (InputStream in = requireNonNull(NetlistTest.class.getResourceAsStream(file), file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Volts by a circuit simulator, see reference.py beside them; CI solves them anew. */
    @ParameterizedTest
    @ValueSource(strings = {"one-bus", "bus-and-battery"})
    void aCircuitSimulatorFindsTheSameVolts(String candidate) throws IOException {
        String study = Session.ARCHITECTURES.resolve("first-steps").toString();
        Ran ran = Session.in(here).run("check", study, "--export", "circuits");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        String netlist = Files.readString(here.resolve("circuits/" + candidate + ".cir"));
        assertEquals(stored(candidate + ".cir"), netlist);
        Map<String, Double> volts = new Simulator(netlist).volts();
        stored(candidate + ".volts")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split(" ", -1))
                .forEach(
                        row ->
                                assertEquals(
                                        Double.parseDouble(row[1]),
                                        at(volts, row[0]),
                                        1e-6,
                                        "net " + row[0]));
        assertTrue(Files.exists(here.resolve("circuits/" + candidate + ".graphml")));
    }

    /** The story of lost charging, told by the engine, shows the same volts at its beginning. */
    @Test
    void anotherSolverFindsTheVoltsOfTheStory() {
        int compared = 0;
        for (Appraisal appraisal : ASSESSMENT.appraisals()) {
            Candidate candidate = appraisal.candidate();
            Map<String, Double> volts = new Simulator(Netlist.of(candidate, STUDY)).volts();
            for (Trace trace : appraisal.chargingLost().planned().traces()) {
                if (trace.unit().equals("V")) {
                    int net = candidate.circuit().net(trace.name(), "bar");
                    double told = early(trace);
                    assertEquals(told, at(volts, String.valueOf(net)), 0.05, trace.name());
                    compared++;
                }
            }
        }
        assertTrue(compared > 0, "no bus was compared");
    }

    /** A tenth of a second after it: the field has died, and no battery has run down. */
    private static double early(Trace trace) {
        return trace.points().stream()
                .filter(p -> p.seconds() >= 0.1)
                .findFirst()
                .orElseThrow()
                .value();
    }

    @Test
    void everyElementStandsThereAndNoNameIsACommand() {
        Candidate candidate = STUDY.candidates().get(0);
        String netlist = Netlist.of(candidate, STUDY);
        for (var placed : candidate.circuit().placed()) {
            assertTrue(netlist.contains(": " + placed.name()), placed.name());
        }
        assertTrue(netlist.endsWith(".op\n.end\n"), netlist);
        String hostile =
                Netlist.of(
                        new Candidate(
                                candidate.id(),
                                "title\n.end\u2028.end",
                                "",
                                candidate.parts(),
                                candidate.joins(),
                                candidate.cockpit()),
                        STUDY);
        assertEquals(1, hostile.lines().filter(line -> line.equals(".end")).count());
        assertFalse(hostile.contains("\u2028"));
    }

    private static <V> V at(Map<String, V> map, String key) {
        return requireNonNull(map.get(key), key);
    }
}
