package stillturning.reliability.combined;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate;
import stillturning.model.EngineLogic;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.switching.KeySwitch;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.story.UntoldStory;

/**
 * One omission leaves all that one line of a checklist moves. That an aircraft is parked with its
 * master off, and that a forgotten line leaves all that it names, is common practice.
 */
class LeftTogetherTest {

    private static Map<String, String> moves(String... pairs) {
        Map<String, String> moves = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            moves.put(pairs[i], pairs[i + 1]);
        }
        return moves;
    }

    /** Two batteries, either of which feeds the computer by a switch of its own. */
    private static Bench twoFeeds() {
        Bench bench = new Bench().bus("bus");
        for (String id : List.of("one", "two")) {
            bench.part(Shelf.lead("battery-" + id, 20, 0.02, 1))
                    .join("battery-" + id, "minus", "ground", "stud")
                    .closedSwitch("switch-" + id, "on")
                    .join("battery-" + id, "plus", "switch-" + id, "in")
                    .join("switch-" + id, "out", "bus", "bar");
        }
        return bench.load("computer", DemandKind.CONSTANT_POWER, 5, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static List<Event> left(Candidate candidate) {
        return CombinedFailures.events(candidate, List.of()).stream()
                .filter(event -> event.kind() == Event.EventKind.LEFT_SWITCH)
                .toList();
    }

    @Test
    void whatOneLineMovesIsLeftByOneOmission() {
        Bench bench = twoFeeds().masterOff(moves("switch-two", "off", "switch-one", "off"));
        List<Event> left = left(bench.candidate());
        assertEquals(
                List.of(
                        "switch-one left off before flight",
                        "switch-two left off before flight",
                        "all left as in master-off before flight"),
                left.stream().map(Event::name).toList());
        assertEquals(
                List.of("switch-two", "switch-one"),
                List.copyOf(left.get(2).failure().levers().keySet()));
    }

    @Test
    void aLineThatMovesOneSwitchOrNoneIsNoMoreThanThatSwitch() {
        Bench bench = twoFeeds().masterOff(moves("switch-two", "off", "switch-one", "on"));
        assertEquals(2, left(bench.candidate()).size());
    }

    @Test
    void twoLinesThatLeaveTheSameAreOneOmission() {
        Map<String, String> both = moves("switch-two", "off", "switch-one", "off");
        Bench bench = twoFeeds().masterOff(both).starting(both);
        assertEquals(1, FailureCatalogue.leftTogetherOf(bench.candidate()).size());
    }

    /** Neither switch alone ends the engine; the line left alone does, and is the smallest set. */
    @Test
    void itEndsAnEngineThatNoSwitchAloneEnds() throws UntoldStory {
        Bench bench = twoFeeds().masterOff(moves("switch-two", "off", "switch-one", "off"));
        Candidate candidate = bench.candidate();
        List<Event> left = left(candidate);
        CombinedResult result =
                CombinedFailures.of(bench.study(), candidate, left, 2, SetSearchWatch.NOBODY);
        assertEquals(List.of(List.of(2), List.of(0, 1)), result.sets().minimal());
    }

    @Test
    void aPositionThatSpringsBackIsNotLeft() {
        Bench bench =
                twoFeeds()
                        .part(new KeySwitch(Bench.tag("key"), 0.005))
                        .lever("key", "on")
                        .starting(moves("key", "start", "switch-one", "off"));
        assertEquals(List.of(), FailureCatalogue.leftTogetherOf(bench.candidate()));
    }
}
