package stillturning.report.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.Tag;
import stillturning.parts.Tag.Burden;
import stillturning.parts.joining.Bus;
import stillturning.parts.source.Battery;
import stillturning.report.answer.FirstAnswer.AnswerTopic;

/** The first sentence names who is first once batteries, which are no layout, are equal. */
class EqualBatteriesHeadlineTest {

    private static final Study SMALL =
            StudyReader.read(Path.of("architectures/first-steps")).study().orElseThrow();

    private static FirstAnswer answer(Candidate... candidates) {
        Study study =
                new Study(
                        SMALL.id(),
                        SMALL.heading(),
                        SMALL.aircraft(),
                        SMALL.goals(),
                        List.of(candidates));
        Assessment assessment = Assess.of(study);
        return new FirstQuestion(
                        assessment,
                        EqualBatteries.of(assessment, done -> {}),
                        Optional.empty(),
                        Optional.empty(),
                        List.of())
                .answer();
    }

    private static Candidate candidate(String id) {
        return SMALL.candidate(id).orElseThrow();
    }

    private static Candidate named(String id, Candidate c) {
        return new Candidate(id, id, c.about(), c.parts(), c.joins(), c.cockpit());
    }

    private static Candidate heavier(Candidate candidate, double kilograms) {
        return candidate.with(
                part ->
                        part instanceof Battery b
                                ? new Battery(
                                        heavier(b.tag(), kilograms),
                                        b.openCircuit(),
                                        b.cells(),
                                        b.capacity(),
                                        b.ohms(),
                                        b.chargeAtStart(),
                                        b.management())
                                : part);
    }

    /** A layout that is heavier itself. */
    private static Candidate withHeavierBus(Candidate candidate) {
        return candidate.with(
                part ->
                        part instanceof Bus b
                                ? new Bus(heavier(b.tag(), 1), b.studs(), b.studOhms())
                                : part);
    }

    private static Tag heavier(Tag tag, double kilograms) {
        Burden other = new Burden(tag.burden().kilograms() + kilograms, tag.burden().price());
        return new Tag(tag.id(), tag.label(), tag.zone(), other);
    }

    @Test
    void oneThatIsLightByItsBatteryAloneIsLevelWithEqualOnes() {
        Candidate light = candidate("bus-and-battery");
        FirstAnswer answer = answer(light, named("heavy", heavier(light, 3)));
        String said = "; with equal batteries: level with \"heavy\".";
        assertTrue(answer.lead().startsWith("\"" + light.title() + "\" "), answer.lead());
        assertTrue(answer.lead().endsWith(said), answer.lead());
        assertTrue(
                answer.of(AnswerTopic.FIRST)
                        .get(0)
                        .contains(" before \"heavy\"; with equal batteries: level."),
                answer.toString());
    }

    @Test
    void aBetterLayoutWithAHeavyBatteryIsFirstWithEqualOnes() {
        Candidate better = candidate("bus-and-battery");
        Candidate worse = named("worse", withHeavierBus(better));
        FirstAnswer answer = answer(heavier(better, 3), worse);
        String said = "; with equal batteries: \"" + better.title() + "\" first.";
        assertTrue(answer.lead().startsWith("\"worse\" "), answer.lead());
        assertTrue(answer.lead().endsWith(said), answer.lead());
    }

    @Test
    void oneThatIsFirstByItsLayoutStaysFirst() {
        FirstAnswer answer = answer(candidate("bus-and-battery"), heavier(candidate("one-bus"), 1));
        assertTrue(answer.lead().endsWith("; with equal batteries: still first."), answer.lead());
    }

    @Test
    void whereAllHaveTheSameNothingIsSaidOfThem() {
        FirstAnswer answer = answer(candidate("bus-and-battery"), candidate("one-bus"));
        assertEquals(-1, answer.lead().indexOf("equal batteries"), answer.lead());
    }
}
