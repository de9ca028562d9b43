package stillturning.report.paper;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.report.PrintedNames;

/** What the card says of a trouble that no procedure answers. */
class UnansweredTest {

    private static final String SHORT = "spare-wire: chafed to ground";

    /** A short behind a breaker on a weak battery: the computer goes out until that has opened. */
    private static String engineStops() {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.05, 1))
                        .join("battery", "minus", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .breaker("spare-breaker", 10)
                        .wire("spare-wire", 1, 0.01)
                        .join("bus", "bar", "spare-breaker", "in")
                        .join("spare-breaker", "out", "spare-wire", "a")
                        .engine(new EngineLogic.One("computer"), false);
        Study study = weighed(bench.study());
        Appraisal all = Assess.of(study).appraisals().get(0);
        Appraisal one =
                new Appraisal(
                        all.candidate(),
                        all.flight(),
                        all.singles().stream()
                                .filter(v -> v.failure().name().equals(SHORT))
                                .toList(),
                        all.cases(),
                        all.structure(),
                        all.measures(),
                        all.met());
        return new Unanswered(study, one, new PrintedNames(all.candidate())).blocks().toString();
    }

    private static Study weighed(Study study) {
        Study.Goals goals =
                new Study.Goals(
                        study.goals().failurePhase(),
                        study.goals().enoughSeconds(),
                        List.of(),
                        List.of(new Study.Weight(CriterionName.WEIGHT, 1)),
                        Optional.empty(),
                        List.of());
        return new Study(study.id(), study.heading(), study.aircraft(), goals, study.candidates());
    }

    @Test
    void whatGoesOutUntilAProtectorOpensIsNotSaidToStayOn() {
        String card = engineStops();
        assertTrue(card.contains("Engine stops: no checklist"), card);
        assertTrue(card.contains("What goes out at once works again by itself."), card);
    }
}
