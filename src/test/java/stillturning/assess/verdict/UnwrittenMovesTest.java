package stillturning.assess.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.bench.Bench;
import stillturning.model.EngineLogic;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.story.UntoldStory;

/** A second feed that no procedure names, and a main feed that opens. */
class UnwrittenMovesTest {

    private static final String OPENS = "feed: opens for no reason";

    private static Bench bench() {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .breaker("feed", 30)
                .closedSwitch("second", "off")
                .bus("bus", "in", "other", "out")
                .load("pump", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("battery", "plus", "feed", "in")
                .join("feed", "out", "bus", "in")
                .join("battery", "plus", "second", "in")
                .join("second", "out", "bus", "other")
                .join("bus", "out", "pump", "plus")
                .engine(EngineLogic.allOf(List.of(new EngineLogic.One("pump"))), true);
    }

    private static Optional<UnwrittenMove> saving(Bench bench) throws UntoldStory {
        Study study = bench.study();
        Verdict verdict = Assess.one(study, bench.candidate(), bench.failure(OPENS));
        return UnwrittenMoves.saving(study, bench.candidate(), verdict);
    }

    @Test
    void theSwitchThatFeedsTheEngineOtherwiseIsProposedAndWasPlayed() throws UntoldStory {
        Bench bench = bench();
        Verdict verdict = Assess.one(bench.study(), bench.candidate(), bench.failure(OPENS));
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        UnwrittenMove move = saving(bench).orElseThrow();
        assertEquals(Map.of("second", "on"), move.moves());
        assertFalse(move.story().engine().misses(bench.study().landing()));
        assertTrue(move.story().engine().endurance().seconds() > 3600);
        assertFalse(move.needless().engine().misses(bench.study().landing()));
    }

    @Test
    void whatIsOutOfReachIsNotProposed() throws UntoldStory {
        assertEquals(Optional.empty(), saving(bench().reach("second", Reach.NONE)));
    }

    @Test
    void whereNoMoveHelpsNoneIsProposed() throws UntoldStory {
        Bench bench = bench();
        Verdict verdict =
                Assess.one(bench.study(), bench.candidate(), bench.failure("pump: stops working"));
        assertEquals(
                Optional.empty(), UnwrittenMoves.saving(bench.study(), bench.candidate(), verdict));
    }
}
