package stillturning.cli.check;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Thorough;
import stillturning.cli.Session;

/**
 * Mistakes that people make when they draw or wire an aircraft (common practice, no published
 * source), each put into a sound candidate: what {@code check} says of it, and does not say without
 * it.
 */
@Thorough
class TypicalMistakesTest {

    private static final Path SANDPIPER = Session.ARCHITECTURES.resolve("sandpiper");
    private static final String SOUND = "split-batteries.yaml";

    @TempDir private Path here;

    /** One mistake: what is written instead of what, and what is said of it. */
    record Mistake(String name, List<String> instead, String said) {
        static Mistake of(String name, String said, String... instead) {
            return new Mistake(name, List.of(instead), said);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Mistake> mistakes() {
        return Stream.of(
                Mistake.of(
                        "a contactor's coil behind its own contacts",
                        "master-contactor does not pull in from dead",
                        "master-contactor.in to master-contactor.coil-plus",
                        "master-contactor.out to master-contactor.coil-plus"),
                Mistake.of(
                        "a charging diode the wrong way round",
                        "no alternator charges it: give it a way to be charged",
                        "from main-bus to engine-bus-b, fuse 20 A, via charge-diode, wire AWG 12"
                                + " 1.5 m (measured)",
                        "from engine-bus-b to main-bus, wire AWG 12 1.5 m (measured), via"
                                + " charge-diode, fuse 20 A"),
                Mistake.of(
                        "a regulator set for what no battery is charged with",
                        "alternators hold it at 15.60 V",
                        "set-point: 14.4 V (measured)",
                        "set-point: 15.6 V (measured)"),
                Mistake.of(
                        "a guard set below what the regulator holds",
                        "acts at 14.20 V, and alternators hold 14.40 V",
                        "trip: 16 V",
                        "trip: 14.2 V"),
                Mistake.of(
                        "a fuse for the load and not for the wire",
                        "These wires burn before their protector opens",
                        "main-battery to engine-bus-a, fuse 20 A",
                        "main-battery to engine-bus-a, fuse 80 A"),
                Mistake.of(
                        "a wire too thin for what is behind it",
                        "engine-a-feed-wire-2 passes its insulation's 150 °C",
                        "wire AWG 12 1.1 m (measured), via engine-a, wire AWG 12 1.5 m",
                        "wire AWG 20 1.1 m (measured), via engine-a, wire AWG 20 1.5 m"),
                Mistake.of(
                        "a breaker too small for its pump",
                        "pump-1-breaker opens at",
                        "engine-bus-a, breaker 10 A",
                        "engine-bus-a, breaker 5 A"),
                Mistake.of(
                        "a battery joined backwards",
                        "the battery is joined backwards",
                        "engine-battery-minus: from engine-battery.minus",
                        "engine-battery-minus: from engine-battery.plus",
                        "engine-b-feed:   from engine-battery to",
                        "engine-b-feed:   from engine-battery.minus to"),
                Mistake.of(
                        "an alternator without its case on ground",
                        "nothing is joined to alternator.case",
                        "  alternator-case: from alternator.case to engine-ground, wire AWG 6 0.3 m"
                                + " (guess)\n",
                        ""),
                Mistake.of(
                        "a regulator set too low to charge",
                        "could give more, batteries the rest",
                        "set-point: 14.4 V",
                        "set-point: 13.2 V"),
                Mistake.of(
                        "a starter behind an engine bus",
                        "keep what the starter draws out of",
                        "starter:        from master-contactor",
                        "starter:        from engine-bus-b"),
                Mistake.of(
                        "a master switch that nothing is joined to",
                        "parts.master: nothing is joined to this part",
                        "to control-ground, wire AWG 22, via master, wire AWG 22",
                        "to control-ground, wire AWG 22"));
    }

    private String checked(String candidate) throws IOException {
        return told(candidate, "check");
    }

    private String told(String candidate, String... words) throws IOException {
        Path study = Files.createDirectory(here.resolve("study"));
        Files.copy(SANDPIPER.resolve("study.yaml"), study.resolve("study.yaml"));
        Files.copy(
                SANDPIPER.resolve("one-battery-main-bus.yaml"),
                study.resolve("one-battery-main-bus.yaml"));
        Files.writeString(study.resolve(SOUND), candidate);
        List<String> all = new ArrayList<>(List.of(words));
        all.add(1, "study");
        Session.Ran ran = Session.in(here).run(all.toArray(String[]::new));
        return (ran.out() + ran.err()).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void itIsSaid(Mistake mistake) throws IOException {
        String text = Files.readString(SANDPIPER.resolve(SOUND));
        for (int i = 0; i < mistake.instead.size(); i += 2) {
            assertTrue(text.contains(mistake.instead.get(i)), mistake.instead.get(i));
            text = text.replace(mistake.instead.get(i), mistake.instead.get(i + 1));
        }
        String told = checked(text);
        assertTrue(told.contains(mistake.said), told);
    }

    /** The engine runs on with such a master off, and so does what smokes. */
    @Test
    void aMasterThatPartsNothingIsToldWhereTheRequirementIsMet() throws IOException {
        String text = Files.readString(SANDPIPER.resolve(SOUND));
        String parted = ", wire AWG 22, via master, wire AWG 22";
        assertTrue(text.contains(parted));
        String said = "takes power from no load";
        assertFalse(told(text, "decide", "--json").contains(said));
        Files.delete(here.resolve("study").resolve(SOUND));
        Files.writeString(
                here.resolve("study").resolve(SOUND), text.replace(parted, ", wire AWG 22"));
        Session.Ran ran = Session.in(here).run("decide", "study", "--json");
        assertTrue(ran.out().replaceAll("\\s+", " ").contains(said), ran.out());
    }

    @Test
    void noneIsSaidOfTheSoundOne() throws IOException {
        String told = checked(Files.readString(SANDPIPER.resolve(SOUND)));
        mistakes().forEach(m -> assertFalse(told.contains(m.said), m + "\n" + told));
    }
}
