package stillturning.reliability.likelihood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Thorough;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.CommonCauses;
import stillturning.reliability.chance.ChanceRange;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.RunUp;
import stillturning.story.UntoldStory;

/** One candidate of the demonstration study from its files to its chances. */
class SandpiperLikelihoodTest {

    private static final ReadStudy READ = StudyReader.read(Path.of("architectures/sandpiper"));
    private static final Study STUDY = READ.study().orElseThrow();
    private static final Candidate CANDIDATE =
            STUDY.candidate("one-battery-main-bus").orElseThrow();

    @Thorough
    @Test
    void oneBatteryOnOneBusHasSetsOfOneAmongItsLikeliest() throws UntoldStory {
        List<Event> events =
                CombinedFailures.events(
                        CANDIDATE, CommonCauses.of(STUDY.aircraft(), CANDIDATE, READ.chances()));
        CombinedResult joint =
                CombinedFailures.of(STUDY, CANDIDATE, events, 2, SetSearchWatch.NOBODY);
        Card card = RunUp.of(STUDY, joint);
        LikelihoodResult likely = Likelihood.of(STUDY, joint, card, READ.chances());

        Set<List<Integer>> left = new HashSet<>(joint.sets().minimal());
        likely.sets().forEach(left::remove);
        likely.engineOwn().forEach(left::remove);
        assertEquals(
                List.of("master left off before flight", "all left as in master-off before flight"),
                left.stream().flatMap(List::stream).map(e -> events.get(e).name()).toList());
        assertFalse(likely.engineOwn().isEmpty());
        assertEquals(new HashSet<>(likely.sets()), setsOf(likely.worst()));
        assertEquals(1, likely.worst().stream().mapToDouble(SetShare::share).sum(), 1e-9);
        Share bus = share(likely.parts(), "main-bus");
        assertEquals(1, bus.importance().always(), 1e-12);
        assertTrue(bus.importance().criticality() > 0);
        // whatever cuts the one way from the battery to the bus needs no partner
        assertTrue(
                likely.worst().stream().limit(10).filter(w -> w.events().size() == 1).count() > 5);

        double checked = likely.checked().point().average().value();
        assertTrue(checked <= likely.unchecked().point().average().value());
        for (ChanceEstimate estimated : List.of(likely.checked(), likely.unchecked())) {
            ChanceRange range = estimated.ranges().average();
            double mean = estimated.point().average().value();
            assertTrue(0 < range.low5() && range.low5() < range.high95(), range.toString());
            // a mean of lognormal factors lies in the upper half of their range
            assertTrue(range.median() < mean && mean < range.high95(), range + " and " + mean);
        }
        assertEquals(
                new HashSet<>(card.hidden()).size() + card.unconfirmed().size(),
                likely.inspections().size());
    }

    private static Share share(List<Share> shares, String name) {
        return shares.stream().filter(s -> s.name().equals(name)).findFirst().orElseThrow();
    }

    private static Set<List<Integer>> setsOf(List<SetShare> worst) {
        return new HashSet<>(worst.stream().map(SetShare::events).toList());
    }
}
