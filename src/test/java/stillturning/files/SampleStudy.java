package stillturning.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import stillturning.files.finding.FileRemark;
import stillturning.model.Candidate;
import stillturning.yaml.Problem;

/** A small complete study; all values invented. */
public final class SampleStudy {

    public static final String STUDY =
            """
            study: Bench
            nominal: 14 V
            zones:
              panel: {across: 0.4 m, reach: seat}
              engine: {side: hot, across: 0.6 m}
              tail: {across: 0.3 m}
              attic: {}
            distances:
              - {from: panel, to: engine, length: 1 m}
              - {from: panel, to: tail, length: 3 m (measured)}
            loads:
              computer: {zone: panel, draws: 2 A (measured), inputs: [a, b]}
              pump: {zone: tail, draws: 5 A, minimum: 8 V, restart: 9 V}
              radio: {zone: panel, draws: 1.5 A (guess), shed: 1}
            engine:
              needs: computer and pump
              tolerates: 500 ms
              restarts-in: 2 s
              windmills: yes
            phases:
              - {name: cruise, lasts: 60 min, alternator: 6000 rpm}
            failures-in: cruise
            time-to-land: 30 min
            weights: {endurance: 2}
            baseline: one
            requirements: {endurance-without-charging: 1 min}
            """;

    public static final String ONE =
            """
            candidate: One bus
            parts:
              battery: {is: battery, zone: tail}
              alternator: {is: alternator, zone: engine, rating: 40 A}
              contactor: {is: contactor, zone: tail}
              master: {is: switch, zone: panel}
              selector: {is: switch, class: toggle-double, zone: panel}
              j1: {is: connector, zone: panel, pins: 3}
              main-bus: {is: bus, zone: panel}
              panel-ground: {is: ground, zone: panel}
              engine-ground: {is: ground, zone: engine, on-structure: yes}
            returns: {panel: panel-ground, tail: engine-ground}
            links:
              battery-minus: from battery.minus to engine-ground, wire AWG 4
              strap: from panel-ground to engine-ground, wire AWG 6
              battery-lead: from battery to contactor, wire AWG 4 0.5 m
              main-lead: from contactor to main-bus, fuse 60 A class high-current
              coil: from contactor.in to contactor.coil-plus, direct
              coil-ground: from contactor.coil-minus to panel-ground, via master, wire AWG 22
              case: from alternator.case to engine-ground, direct
              alternator-lead: from alternator to main-bus
              field: from main-bus to alternator, breaker 5 A
            feeds:
              computer.a: from main-bus, breaker 5 A
              computer.b: from battery, fuse 5 A, via selector.up
              pump: from main-bus, breaker 10 A, via j1 pin 2, wire AWG 16
              radio: from main-bus, breaker 5 A, return engine-ground
            positions:
              flight: {master: on, selector: up}
              master-off: {master: off}
            sees:
              lamp: {watches: low-voltage, at: main-bus, below: 13 V, shown-by: radio}
            procedures:
              shed: {when: [lamp], after: 30 s, sheds: [radio], moves: {pump-breaker: pulled}}
            """;

    /**
     * The same in wood, with the radio on a battery of its own, whose returns nothing joins to the
     * others.
     */
    public static final String APART =
            ONE.replace("on-structure: yes", "on-structure: no")
                    .replace(
                            "  panel-ground:",
                            "  second: {is: battery, zone: panel}\n  panel-ground:")
                    .replace(
                            "  panel-ground:",
                            "  radio-bus: {is: bus, zone: panel}\n  panel-ground:")
                    .replace(
                            "  panel-ground:",
                            "  radio-ground: {is: ground, zone: panel}\n  panel-ground:")
                    .replace(
                            "  case: from",
                            "  second-minus: from second.minus to radio-ground, direct\n  case: from")
                    .replace(
                            "  case: from",
                            "  second-lead: from second to radio-bus, fuse 30 A\n  case: from")
                    .replace(
                            "radio: from main-bus, breaker 5 A, return engine-ground",
                            "radio: from radio-bus, breaker 5 A, return radio-ground")
                    .replace(", shown-by: radio", "")
                    .replace(
                            "procedures:",
                            "  low: {watches: low-voltage, at: radio-bus, below: 12 V}\nprocedures:");

    private SampleStudy() {}

    public static ReadStudy read(Path folder, String study, String one) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), study);
        Files.writeString(folder.resolve("one.yaml"), one);
        return StudyReader.read(folder);
    }

    static Candidate one(ReadStudy read) {
        return read.study()
                .orElseThrow(() -> new AssertionError(told(read)))
                .candidate("one")
                .orElseThrow();
    }

    /** The problems, one a line, as the user sees them. */
    public static String told(ReadStudy read) {
        return read.problems().stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }

    static String remarked(ReadStudy read) {
        return read.remarks().stream().map(FileRemark::toString).collect(Collectors.joining("\n"));
    }
}
