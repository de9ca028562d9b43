package stillturning.story.timeline;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.KeptLines;
import stillturning.bench.Lines;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Lever;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Setting.Race;
import stillturning.story.Spell;
import stillturning.story.Spell.HeldCondition;
import stillturning.story.SteadyState;
import stillturning.story.UntoldStory;

/** What is held, rehearsed and followed on the ground and for sizes is what was last read. */
class KeptSpellsTest {

    /** One failure of so many, so that the kept text stays small. */
    private static final int EACH = 6;

    private static final double HELD_SECONDS = 60;

    @ParameterizedTest
    @CsvSource({
        "architectures/sandpiper, two-alternators",
        "architectures/sandpiper, solid-state",
        "architectures/first-steps, bus-and-battery"
    })
    void ofACandidateAreWhatIsToldToday(Path folder, String name) throws IOException, UntoldStory {
        Study study = StudyReader.read(folder).study().orElseThrow();
        Candidate candidate = study.candidate(name).orElseThrow();
        Timeline timeline = Timeline.quick(study, candidate);
        List<Failure> some = some(candidate);
        List<String> told = new ArrayList<>();
        for (Spell spell : timeline.hold(conditions(candidate, some))) {
            told.add("== " + spell.condition().words());
            told.addAll(Lines.of("events", spell.events()));
            told.addAll(Lines.of("view", spell.view()));
            told.add(spell.state().working().stream().sorted().toList() + "");
            told.add(inAll(spell.flow()));
        }
        for (Failure failure : some) {
            told.add("== rehearsed, " + failure.name());
            told.addAll(
                    Lines.of(
                            "rehearsal",
                            timeline.rehearse(failure, steps(candidate), new MovePace(2, 5))));
        }
        KeptLines.assertKept("story", folder.getFileName() + "-" + name + "-held.lines", told);
    }

    @Test
    void whatFailuresLeadToWhileAPhaseLastsIsWhatIsToldToday() throws IOException, UntoldStory {
        Study study = StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();
        Candidate candidate = study.candidate("one-battery-engine-bus").orElseThrow();
        List<String> told = new ArrayList<>();
        for (Phase phase : study.aircraft().phases()) {
            SteadyStates steady = new SteadyStates(study, candidate, phase);
            told.add("== " + phase.name() + ": " + inAll(steady.rest()));
            for (Failure failure : some(candidate)) {
                told.add("= " + failure.name());
                SteadyStates.Course course = steady.course(failure, Race.TYPICAL);
                told.add(inAll(course.first()));
                course.steady().forEach(state -> told.add(inAll(state)));
                told.addAll(Lines.of("events", course.happenings()));
                told.addAll(Lines.of("contests", course.contests()));
            }
        }
        KeptLines.assertKept("story", "courses.lines", told);
    }

    private static List<Failure> some(Candidate candidate) {
        List<Failure> all = FailureCatalogue.singlesOf(candidate);
        List<Failure> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i += EACH * EACH) {
            some.add(all.get(i));
        }
        return some;
    }

    /** As in flight, each lever otherwise, each failure, and with a load switched off. */
    private static List<HeldCondition> conditions(Candidate candidate, List<Failure> failures) {
        List<HeldCondition> held = new ArrayList<>();
        held.add(new HeldCondition("as in flight", List.of(), Map.of(), Set.of(), HELD_SECONDS));
        steps(candidate)
                .forEach(
                        step ->
                                held.add(
                                        new HeldCondition(
                                                "moved " + step,
                                                List.of(),
                                                step,
                                                Set.of(),
                                                HELD_SECONDS)));
        for (Failure failure : failures) {
            held.add(
                    new HeldCondition(
                            failure.name(), failure.hits(), Map.of(), Set.of(), HELD_SECONDS));
        }
        String load = candidate.loads().findFirst().orElseThrow().id();
        held.add(new HeldCondition("without " + load, List.of(), Map.of(), Set.of(load), 1));
        return held;
    }

    /** Two levers at a time to where they do not stand in flight. */
    private static List<Map<String, String>> steps(Candidate candidate) {
        List<Map<String, String>> steps = new ArrayList<>();
        Map<String, String> flight = candidate.cockpit().flight();
        Map<String, String> step = new LinkedHashMap<>();
        for (Lever lever : candidate.parts().stream().flatMap(p -> p.levers().stream()).toList()) {
            String stands = flight.getOrDefault(lever.name(), lever.usual());
            lever.positions().stream()
                    .filter(position -> !position.equals(stands))
                    .findFirst()
                    .ifPresent(position -> step.put(lever.name(), position));
            if (step.size() == 2) {
                steps.add(new LinkedHashMap<>(step));
                step.clear();
            }
        }
        return steps;
    }

    /** All currents and charges in two numbers, which hardly any change leaves as they are. */
    private static String inAll(SteadyState state) {
        return String.format(
                Locale.ROOT,
                "%.5g A through all, charges %.5g",
                state.amps().values().stream().mapToDouble(Math::abs).sorted().sum(),
                state.charges().values().stream().mapToDouble(c -> c).sorted().sum());
    }
}
