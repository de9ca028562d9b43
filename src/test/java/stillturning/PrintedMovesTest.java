package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Procedure;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Lever;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.Event;
import stillturning.report.Spoken;
import stillturning.story.AdverseEffect;
import stillturning.story.Moment;
import stillturning.story.MoveOrders;
import stillturning.story.Pilot;
import stillturning.story.Rehearsal;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Every set of moves that the program prints for the demo is taken as it is printed and played move
 * by move, at a person's pace and three times as slowly. That the battery is not taken off a
 * charging alternator, and that nothing is switched off before what replaces it is on, is common
 * practice.
 */
class PrintedMovesTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    private static final double HELD_SECONDS = 30;
    private static final double MOVE_SECONDS = STUDY.aircraft().moveSeconds();
    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    /** What no order of any moves has a reason to bring about. */
    private static final Set<Kind> NEVER =
            EnumSet.of(
                    Kind.LOAD_DESTROYED,
                    Kind.LOAD_DUMP,
                    Kind.SOURCE_UNSTEADY,
                    Kind.GUARD_SHORTS,
                    Kind.WIRE_MELTS,
                    Kind.CHATTER,
                    Kind.UNTOLD);

    /** One candidate's card: what is off, then each step in its order. */
    private record PrintedCard(
            Candidate candidate, Set<String> off, List<Map<String, String>> steps) {}

    private static List<PrintedCard> cards() throws IOException {
        String text = Files.readString(Path.of("reports/sandpiper-run-up.txt"));
        List<PrintedCard> cards = new ArrayList<>();
        for (String card : text.split("(?m)^Run-up card: ", -1)) {
            for (Candidate candidate : STUDY.candidates()) {
                if (card.startsWith("Sandpiper, " + candidate.title() + "\n")) {
                    cards.add(card(candidate, card.replaceAll("\n {3,4}(?=\\S)", " ")));
                }
            }
        }
        return cards;
    }

    private static PrintedCard card(Candidate candidate, String text) {
        Matcher off = Pattern.compile("; off: ([^.]*)\\.").matcher(text.replaceAll("\n +", " "));
        Set<String> loads = new HashSet<>();
        if (off.find()) {
            Spoken spoken = new Spoken(candidate);
            for (LoadNeed load : STUDY.aircraft().loads()) {
                if (List.of(off.group(1).split(", ", -1)).contains(spoken.of(load.id()))) {
                    loads.add(load.id());
                }
            }
        }
        Map<String, Map.Entry<String, String>> words = words(candidate);
        List<Map<String, String>> steps = new ArrayList<>();
        Matcher line = Pattern.compile("(?m)^  (?:\\d+  |- back: )([^;\n]*)").matcher(text);
        while (line.find()) {
            Map<String, String> step = new LinkedHashMap<>();
            for (String move : line.group(1).split(", ", -1)) {
                Map.Entry<String, String> meant = words.get(move.toLowerCase(Locale.ROOT).strip());
                assertTrue(meant != null, () -> "no lever is meant by " + move);
                step.put(meant.getKey(), meant.getValue());
            }
            steps.add(step);
        }
        return new PrintedCard(candidate, loads, steps);
    }

    /** Every move as it is printed. */
    private static Map<String, Map.Entry<String, String>> words(Candidate candidate) {
        Spoken spoken = new Spoken(candidate);
        Map<String, Map.Entry<String, String>> words = new LinkedHashMap<>();
        candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .forEach(
                        lever ->
                                lever.positions()
                                        .forEach(
                                                to ->
                                                        words.put(
                                                                said(spoken, lever, to),
                                                                Map.entry(lever.name(), to))));
        return words;
    }

    private static String said(Spoken spoken, Lever lever, String position) {
        return spoken.move(lever.name(), position).toLowerCase(Locale.ROOT);
    }

    private static LoadNeed off(LoadNeed load, Set<String> off) {
        Set<String> phases = new HashSet<>(load.use().phases());
        phases.remove(STUDY.goals().runUp().name());
        LoadNeed.Use use = load.use();
        return off.contains(load.id())
                ? load.with(new LoadNeed.Use(phases, use.duty(), load.noticed(), use.inrush()))
                : load;
    }

    @Test
    void everyCardIsPlayedAsItIsPrintedAndNothingOnTheWayHarms() throws Exception {
        List<PrintedCard> cards = cards();
        assertFalse(cards.isEmpty(), "no card was found");
        int checks = 0;
        for (PrintedCard card : cards) {
            checks += card.steps.size() / 2;
            Timeline timeline =
                    new Timeline(
                            STUDY.withLoads(load -> off(load, card.off)),
                            card.candidate,
                            Moment.heldIn(STUDY.goals().runUp().name()));
            for (double seconds : List.of(MOVE_SECONDS, Pilot.LATE.responseSeconds(MOVE_SECONDS))) {
                Rehearsal played =
                        timeline.rehearse(NOTHING, card.steps, new MovePace(seconds, HELD_SECONDS));
                assertEquals(Optional.empty(), played.harm(), card.candidate.id());
            }
            card.steps.forEach(step -> inReach(card.candidate, step, Reach::onGround));
        }
        assertTrue(checks >= cards.size(), checks + " checks");
    }

    private interface From {
        boolean enough(Reach reach);
    }

    private static void inReach(Candidate candidate, Map<String, String> moves, From from) {
        for (String lever : moves.keySet()) {
            Optional<Reach> reach = candidate.cockpit().reachOf(lever);
            assertTrue(
                    reach.filter(from::enough).isPresent(),
                    () -> candidate.id() + ": " + lever + " is out of reach");
        }
    }

    /** Where the engine stops in whatever order, that is what the drill is for. */
    @Test
    void everyDrillIsPlayedThoughNothingCallsForIt() throws UntoldStory {
        int drills = 0;
        for (Candidate candidate : STUDY.candidates()) {
            Timeline timeline = Timeline.quick(STUDY, candidate);
            List<Event> needless =
                    CombinedFailures.events(candidate, List.of()).stream()
                            .filter(event -> event.kind() == Event.EventKind.NEEDLESS_DRILL)
                            .toList();
            for (Event event : needless) {
                drills++;
                Map<String, String> moves = event.failure().levers();
                inReach(candidate, moves, reach -> reach == Reach.SEAT);
                for (Pilot pilot : List.of(Pilot.PLANNED, Pilot.LATE)) {
                    Set<Kind> harm =
                            harm(timeline.tell(event.failure(), pilot), AdverseEffect.COCKPIT);
                    for (Map<String, String> order : MoveOrders.all(moves)) {
                        Failure other = Failure.drill(event.name(), order);
                        Set<Kind> then = harm(timeline.tell(other, pilot), AdverseEffect.COCKPIT);
                        assertTrue(
                                then.containsAll(harm) || !harm.containsAll(then),
                                () -> candidate.id() + ", " + event.name() + ": " + harm);
                    }
                    harm.retainAll(NEVER);
                    assertEquals(Set.of(), harm, candidate.id() + ", " + event.name());
                }
            }
        }
        assertTrue(drills >= STUDY.candidates().size(), drills + " drills");
    }

    private static Set<Kind> harm(Story story, String who) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        AdverseEffect.of(story, who).forEach(event -> kinds.add(event.kind()));
        return kinds;
    }

    /**
     * Every procedure after every single failure that calls for it. What the failure does by itself
     * is not the procedure's.
     */
    @Thorough
    @Test
    void everyProcedureIsPlayedAfterEveryFailureThatCallsForIt() throws UntoldStory {
        int played = 0;
        for (Candidate candidate : STUDY.candidates()) {
            Timeline timeline = Timeline.quick(STUDY, candidate);
            for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
                for (Pilot pilot : List.of(Pilot.PLANNED, Pilot.LATE)) {
                    played += procedures(timeline, failure, pilot);
                }
            }
        }
        assertTrue(played > 100, played + " procedures");
    }

    private static int procedures(Timeline timeline, Failure failure, Pilot pilot)
            throws UntoldStory {
        Story story = timeline.tell(failure, pilot);
        int played = 0;
        for (Procedure procedure : timeline.candidate().cockpit().procedures()) {
            if (procedure.execution().automatic().isPresent()) {
                continue;
            }
            inReach(timeline.candidate(), procedure.moves(), reach -> reach == Reach.SEAT);
            boolean called =
                    story.of(Kind.PILOT).stream().anyMatch(e -> e.part().equals(procedure.name()));
            played += called ? 1 : 0;
            List<StoryEvent> harm =
                    AdverseEffect.of(story, procedure.name()).stream()
                            .filter(event -> NEVER.contains(event.kind()))
                            .toList();
            if (!harm.isEmpty()) {
                Set<String> alone = new HashSet<>();
                Stream.of(timeline.tell(failure, Pilot.NEVER))
                        .flatMap(unaided -> unaided.happenings().stream())
                        .forEach(event -> alone.add(event.kind() + " " + event.part()));
                harm.forEach(
                        event ->
                                assertTrue(
                                        alone.contains(event.kind() + " " + event.part()),
                                        () ->
                                                timeline.candidate().id()
                                                        + ", "
                                                        + failure.name()
                                                        + ", "
                                                        + procedure.name()
                                                        + ": "
                                                        + event));
            }
        }
        return played;
    }
}
