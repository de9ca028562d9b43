package stillturning.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a study with one large candidate: two batteries, two alternators, a tie, many buses and
 * many loads. All values are invented; the same size, the same text.
 */
public final class LargeStudy {

    private static final String[] ZONES = {"nose", "panel", "cabin", "tail"};
    private static final int FEEDS_A_BUS = 9;

    /** Ranks in which loads are shed go so far; of more loads several share one. */
    private static final int SHED_RANKS = 99;

    private final int feeds;
    private final List<String> loads = new ArrayList<>();
    private final List<String> parts = new ArrayList<>();
    private final List<String> links = new ArrayList<>();
    private final List<String> lines = new ArrayList<>();
    private final List<String> flight = new ArrayList<>();

    private LargeStudy(int feeds) {
        this.feeds = feeds;
        for (int i = 0; i < feeds; i++) {
            if (i % FEEDS_A_BUS == 0) {
                addBus(i / FEEDS_A_BUS);
            }
            addLoad(i);
        }
    }

    /** A candidate of about 300 parts, which is about three for each load. */
    public static void write(Path folder) throws IOException {
        write(folder, 55);
    }

    /**
     * A candidate of any size.
     *
     * @param feeds loads beside those of the engine
     */
    public static void write(Path folder, int feeds) throws IOException {
        LargeStudy study = new LargeStudy(feeds);
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("study.yaml"), study.studyText());
        Files.writeString(folder.resolve("large.yaml"), study.candidateText());
    }

    /** Every second bus hangs on main bus B; a breaker and a switch feed each. */
    private void addBus(int number) {
        String zone = ZONES[number % ZONES.length];
        String from = number % 2 == 0 ? "main-bus-a" : "main-bus-b";
        parts.add("bus-%d: {is: bus, zone: %s}".formatted(number + 1, zone));
        parts.add("bus-%d-switch: {is: switch, zone: panel}".formatted(number + 1));
        links.add(
                "bus-%1$d-lead: from %2$s to bus-%1$d, breaker 30 A, via bus-%1$d-switch"
                        .formatted(number + 1, from));
        flight.add("bus-%d-switch: on".formatted(number + 1));
    }

    private void addLoad(int number) {
        String name = "load-" + (number + 1);
        String zone = ZONES[(number / FEEDS_A_BUS) % ZONES.length];
        loads.add(
                "%s: {label: load %d, zone: %s, draws: 0.%d A (guess), shed: %d}"
                        .formatted(
                                name, number + 1, zone, 2 + number % 4, 1 + number % SHED_RANKS));
        String by = "from bus-%d, breaker 2 A".formatted(number / FEEDS_A_BUS + 1);
        if (number % 6 == 5) {
            parts.add("%s-switch: {is: switch, zone: panel}".formatted(name));
            flight.add(name + "-switch: on");
            by += ", via " + name + "-switch";
        }
        lines.add(name + ": " + by);
    }

    private static String indented(List<String> entries) {
        return "  " + String.join("\n  ", entries);
    }

    private String studyText() {
        return """
                study: Large
                about: Generated, to be drawn and measured. All values are invented.
                invented: yes
                nominal: 14 V
                zones:
                  nose: {across: 0.4 m (guess)}
                  panel: {across: 0.4 m (guess), reach: seat}
                  cabin: {across: 0.5 m (guess), reach: ground}
                  tail: {across: 0.5 m (guess)}
                  engine: {side: hot, hazards: [heat], across: 0.7 m (guess)}
                distances:
                  - {from: nose, to: panel, length: 1 m (guess)}
                  - {from: panel, to: cabin, length: 1.4 m (guess)}
                  - {from: cabin, to: engine, length: 1.8 m (guess)}
                  - {from: cabin, to: tail, length: 3.2 m (guess)}
                loads:
                  computer: {zone: cabin, draws: 4 A (guess), minimum: 7 V (guess), inputs: [a, b]}
                  pump: {zone: engine, draws: 5 A (guess), minimum: 8 V (guess), inputs: [a, b]}
                %s
                engine:
                  needs: computer and pump
                  tolerates: 1 s (guess)
                  restarts-in: 3 s (guess)
                  windmills: yes
                  windmilling: 1500 rpm (guess)
                phases:
                  - {name: cruise, lasts: 60 min, alternator: 6000 rpm}
                failures-in: cruise
                time-to-land: 20 min
                requirements: {endurance-without-charging: 20 min}
                baseline: large
                """
                .formatted(indented(loads));
    }

    private String candidateText() {
        return """
                candidate: Two of everything, %d loads
                about: Generated, to be drawn and measured.
                parts:
                  battery-a: {is: battery, class: agm, zone: nose, capacity: 20 Ah (guess)}
                  battery-b: {is: battery, class: agm, zone: cabin, capacity: 20 Ah (guess)}
                  contactor-a: {is: contactor, class: continuous, zone: nose}
                  contactor-b: {is: contactor, class: continuous, zone: cabin}
                  alternator-a: {is: alternator, class: automotive, zone: engine, rating: 45 A (guess)}
                  alternator-b: {is: alternator, class: automotive, zone: engine, rating: 45 A (guess)}
                  master-a: {is: switch, zone: panel}
                  master-b: {is: switch, zone: panel}
                  tie-switch: {is: switch, zone: panel}
                  main-bus-a: {is: bus, zone: panel}
                  main-bus-b: {is: bus, zone: panel}
                  nose-ground: {is: ground, zone: nose, on-structure: yes}
                  panel-ground: {is: ground, zone: panel, on-structure: yes}
                  cabin-ground: {is: ground, zone: cabin, on-structure: yes}
                  tail-ground: {is: ground, zone: tail, on-structure: yes}
                  engine-ground: {is: ground, zone: engine, on-structure: yes}
                %s
                returns: {nose: nose-ground, panel: panel-ground, cabin: cabin-ground, tail: tail-ground, engine: engine-ground}
                links:
                  battery-a-minus: from battery-a.minus to nose-ground, wire AWG 4
                  battery-b-minus: from battery-b.minus to cabin-ground, wire AWG 4
                  battery-a-lead: from battery-a to contactor-a, wire AWG 4
                  battery-b-lead: from battery-b to contactor-b, wire AWG 4
                  main-a-lead: from contactor-a to main-bus-a, fuse 80 A class high-current, wire AWG 4
                  main-b-lead: from contactor-b to main-bus-b, fuse 80 A class high-current, wire AWG 4
                  coil-a: from contactor-a.in to contactor-a.coil-plus, direct
                  coil-a-ground: from contactor-a.coil-minus to panel-ground, via master-a, wire AWG 22
                  coil-b: from contactor-b.in to contactor-b.coil-plus, direct
                  coil-b-ground: from contactor-b.coil-minus to panel-ground, via master-b, wire AWG 22
                  alternator-a-lead: from alternator-a to main-bus-a, wire AWG 6, fuse 60 A class high-current
                  alternator-b-lead: from alternator-b to main-bus-b, wire AWG 6, fuse 60 A class high-current
                  alternator-a-case: from alternator-a.case to engine-ground, wire AWG 6
                  alternator-b-case: from alternator-b.case to engine-ground, wire AWG 6
                  field-a: from main-bus-a to alternator-a, breaker 5 A
                  field-b: from main-bus-b to alternator-b, breaker 5 A
                  tie: from main-bus-a to main-bus-b, fuse 30 A, via tie-switch
                %s
                feeds:
                  computer.a: from main-bus-a, breaker 7.5 A
                  computer.b: from main-bus-b, breaker 7.5 A
                  pump.a: from main-bus-a, breaker 10 A
                  pump.b: from main-bus-b, breaker 10 A
                %s
                positions:
                  flight: {master-a: on, master-b: on, tie-switch: off, %s}
                sees: {low-voltage: {watches: low-voltage, at: main-bus-a.bar, below: 13 V}}
                procedures: {shed: {when: [low-voltage], after: 60 s, sheds: [load-1, load-2]}}
                """
                .formatted(
                        feeds,
                        indented(parts),
                        indented(links),
                        indented(lines),
                        String.join(", ", flight));
    }
}
