package stillturning.desktop.viewmodel.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleDoubleProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.verdict.Outcome;
import stillturning.desktop.viewmodel.breaking.PilotStep.StepState;
import stillturning.report.EventLines;
import stillturning.report.drawing.Picture;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.StoryEvent.Kind;

@Timeout(120)
class BreakingTest {

    private static final String SHORT = "main-bus: short to ground";

    @TempDir private Path folder;
    private OpenDesk open;
    private Breaking breaking;
    private final SimpleDoubleProperty paper = new SimpleDoubleProperty();

    @BeforeEach
    void open() throws IOException {
        open = new OpenDesk(OpenDesk.SMALL, folder.resolve("study"));
        open.desk.open("one-bus");
        breaking = new Breaking(open.desk, paper);
        open.settle();
    }

    @AfterEach
    void close() {
        open.close();
    }

    private PlayedFailure played() {
        return breaking.played().get().orElseThrow();
    }

    private void pick(String name) {
        assertTrue(breaking.pick(name), name);
        open.settle();
    }

    @Test
    void withNothingPickedTheCandidateIsShownWithNothingWrong() {
        assertEquals(Outcome.NO_EFFECT, played().verdict().outcome());
        assertTrue(breaking.picture().isPresent());
        assertEquals("", breaking.refusal().get());
    }

    @Test
    void theDiagramIsFoldedForThePaperOnceThereIsOne() {
        double unknown = shapeOf(breaking.picture().orElseThrow());
        paper.set(1);
        open.settle();
        double square = shapeOf(breaking.picture().orElseThrow());
        assertTrue(square < unknown, unknown + " over " + square);
        assertFalse(breaking.stale());
        paper.set(4);
        open.settle();
        assertEquals(square, shapeOf(breaking.picture().orElseThrow()), "it moved under the eye");
    }

    private static double shapeOf(Picture picture) {
        return picture.width() / picture.height();
    }

    @Test
    void whatIsPickedIsPlayedWithEveryPilot() {
        pick(SHORT);
        assertEquals(SHORT, played().failure().name());
        assertEquals(Outcome.ENGINE_LOST, played().verdict().outcome());
        for (Pilot pilot : Pilot.values()) {
            breaking.pilot().set(pilot);
            assertEquals(pilot, breaking.story().orElseThrow().story().pilot());
            assertEquals(played().verdict().with(pilot).engine(), story().engine());
        }
        assertFalse(breaking.stale());
    }

    private stillturning.story.Story story() {
        return breaking.story().orElseThrow().story();
    }

    @Test
    void whatIsPickedLastWins() {
        breaking.pick(SHORT);
        breaking.pick("alternator: no output");
        assertTrue(breaking.stale());
        assertTrue(breaking.coming().get());
        open.settle();
        assertFalse(breaking.coming().get());
        assertEquals("alternator: no output", played().failure().name());
    }

    @Test
    void twoFailAtOnce() {
        pick("alternator: no output");
        double alone = story().engine().endurance().seconds();
        breaking.alsoPick(choice("battery: disconnects itself"));
        open.settle();
        assertEquals(
                "alternator: no output + battery: disconnects itself", played().failure().name());
        assertTrue(story().engine().endurance().seconds() < alone);
        breaking.alsoPick(choice("battery: disconnects itself"));
        open.settle();
        assertEquals("alternator: no output", played().failure().name());
    }

    private FailureChoice choice(String name) {
        return breaking.offered().stream()
                .filter(c -> c.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void anotherMomentIsAnotherStory() {
        pick("alternator: no output");
        Moment flown =
                breaking.moments().stream()
                        .map(MomentChoice::moment)
                        .filter(m -> m.span() == Moment.FlightSpan.FLOWN)
                        .findFirst()
                        .orElseThrow();
        breaking.moment().set(Optional.of(flown));
        open.settle();
        assertEquals(flown, story().moment());
    }

    @Test
    void theSearchFindsByAFewWordsAndOffersAllAgain() {
        int all = breaking.offered().size();
        breaking.search().set("main bus sho");
        assertEquals(SHORT, breaking.offered().get(0).name());
        assertTrue(breaking.offered().size() < all / 4, breaking.offered().size() + " of " + all);
        breaking.search().set("");
        assertEquals(all, breaking.offered().size());
    }

    @Test
    void aPartHasItsFailureModes() {
        List<String> modes = breaking.of("main-bus").stream().map(FailureChoice::mode).toList();
        assertTrue(modes.contains("short to ground"), modes.toString());
        assertEquals(List.of(), breaking.of("nothing"));
    }

    @Test
    void thePictureChangesWhereTheStoryDoes() {
        pick(SHORT);
        Picture first = breaking.picture().orElseThrow();
        assertSame(first, breaking.picture().orElseThrow());
        breaking.scrubber().to(story().of(Kind.PROTECTOR_OPENS).get(0).seconds());
        assertNotSame(first, breaking.picture().orElseThrow());
        assertNotEquals(first.marks(), breaking.picture().orElseThrow().marks());
    }

    @Test
    void stepsFallDueAsThePilotKeepsToThem() {
        pick("alternator: no output");
        PilotStep shed = breaking.steps().get(0);
        double called = shed.calledSeconds().orElseThrow();
        double done = shed.doneSeconds().orElseThrow();
        assertEquals(StepState.NOT_CALLED_FOR, shed.at(called / 2));
        assertEquals(StepState.DUE, shed.at((called + done) / 2));
        assertEquals(StepState.DONE, shed.at(done));

        breaking.pilot().set(Pilot.LATE);
        PilotStep late = breaking.steps().get(0);
        double planned = done - called;
        assertEquals(
                3 * planned,
                late.dueSeconds().orElseThrow() - late.calledSeconds().orElseThrow(),
                1e-9);

        breaking.pilot().set(Pilot.NEVER);
        assertEquals(StepState.LEFT_UNDONE, breaking.steps().get(0).at(story().endSeconds()));
    }

    @Test
    void linesAreThoseOfTheStoryInOrder() {
        pick(SHORT);
        List<EventLines.EventLine> lines = breaking.lines();
        assertEquals("main bus: short to ground", lines.get(0).event());
        assertEquals(
                lines.stream().map(EventLines.EventLine::seconds).sorted().toList(),
                lines.stream().map(EventLines.EventLine::seconds).toList());
    }

    @Test
    void anotherCandidateKeepsWhatItHasToo() {
        pick(SHORT);
        open.desk.open("bus-and-battery");
        open.settle();
        assertEquals("bus-and-battery", played().candidate().id());
        assertEquals(SHORT, played().failure().name());
    }

    private LoadsNow.LoadNow computer(double seconds) {
        return breaking.loadsNow().orElseThrow().at(seconds).stream()
                .filter(l -> l.name().equals("computer"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void inTheFirstMomentEachLoadIsToldByWhatItHasThen() {
        assertEquals(LoadsNow.LoadSupply.ENOUGH, computer(0).supply());
        assertEquals("works", computer(0).does());
        pick(SHORT);
        assertEquals(LoadsNow.LoadSupply.LOW, computer(0).supply());
        assertTrue(computer(0).has().matches("\\d\\.\\d V, needs 7\\.0 V"), computer(0).has());
        assertTrue(
                computer(0).does().matches("rides through, stops in \\d+ ms"), computer(0).does());
        double end = breaking.scrubber().axis().orElseThrow().endSeconds();
        assertEquals(LoadsNow.LoadSupply.STOPPED, computer(end).supply());
        assertEquals("has stopped", computer(end).does());
    }
}
