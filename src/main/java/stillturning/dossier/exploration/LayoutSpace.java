package stillturning.dossier.exploration;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.Scrutiny;
import stillturning.assess.front.Space;
import stillturning.assess.front.TrialResult;
import stillturning.assess.requirement.Survey;
import stillturning.dossier.RequirementSurvey;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.dossier.redrawn.Service;
import stillturning.files.move.Drawn;
import stillturning.files.move.MoveKind;
import stillturning.report.explored.Yardstick;
import stillturning.story.UntoldStory;
import stillturning.structure.shape.CandidateForm;

/**
 * Layouts, and the changes that lead from one to others.
 *
 * @param starts where one stands
 * @param by what they are compared by
 * @param service what each has to do, nothing failing
 */
record LayoutSpace(List<Drawn> starts, Yardstick by, Service service) implements Space<Drawn> {

    /**
     * What does not do its service is as far from what is asked for as what loses the engine by so
     * many failures: seldom the next change makes up for it.
     */
    private static final double UNSERVED = 8;

    private static final String COMPUTED = "the engine runs with nothing wrong";

    LayoutSpace {
        starts = List.copyOf(starts);
    }

    /** No warnings: what the pilot sees is no layout, and each would double the space. */
    @Override
    public List<Step<Drawn>> steps(Drawn from) {
        return DrawnStep.all(from).stream()
                .filter(step -> step.move().kind() != MoveKind.WARNING_ADDED)
                .<Step<Drawn>>map(step -> step)
                .toList();
    }

    @Override
    public Object form(Drawn layout) {
        return CandidateForm.of(layout.candidate());
    }

    @Override
    public FirstLook look(Drawn layout, List<String> evidence) {
        Survey survey = new RequirementSurvey(layout.study(), layout.installation());
        try {
            Scrutiny scrutiny = Scrutiny.of(layout.study(), layout.candidate(), survey);
            return service.isDoneBy(layout.candidate(), scrutiny)
                    ? new Looked(layout, scrutiny, this, evidence)
                    : new Out(by.atLeast(), missed(Service.WORDS, evidence));
        } catch (UntoldStory e) {
            return new Out(by.atLeast(), missed(COMPUTED, evidence));
        }
    }

    /** Whether a layout can be computed and does what each has to do. */
    boolean serves(Drawn layout) {
        try {
            Scrutiny look = Scrutiny.of(layout.study(), layout.candidate(), Survey.NONE);
            return service.isDoneBy(layout.candidate(), look)
                    && service.isQuiet(look)
                    && service.isOffWhenParked(layout.study(), layout.candidate());
        } catch (UntoldStory e) {
            return false;
        }
    }

    private static TrialResult missed(String by, List<String> evidence) {
        return new TrialResult.Missed(by, Double.MAX_VALUE, evidence);
    }

    private record Looked(Drawn layout, Scrutiny scrutiny, LayoutSpace in, List<String> evidence)
            implements FirstLook {
        @Override
        public List<Double> atBest() {
            return in.by.of(scrutiny.atBest());
        }

        @Override
        public TrialResult trial() {
            try {
                Optional<String> unserved = unserved();
                if (unserved.isPresent()) {
                    return new TrialResult.Missed(unserved.get(), UNSERVED, evidence);
                }
                return scrutiny.refusal(Set.copyOf(evidence))
                        .map(this::missed)
                        .orElseGet(
                                () ->
                                        new TrialResult.Met(
                                                in.by.of(scrutiny.values()), scrutiny.nearest()));
            } catch (UntoldStory e) {
                return LayoutSpace.missed(COMPUTED, evidence);
            }
        }

        /** What it does not do that every drawing does. */
        private Optional<String> unserved() throws UntoldStory {
            if (!in.service.isQuiet(scrutiny)) {
                return Optional.of(Service.QUIET);
            }
            if (!in.service.takesOff(scrutiny)) {
                return Optional.of(Service.TAKES_OFF);
            }
            return in.service.isOffWhenParked(layout.study(), layout.candidate())
                    ? Optional.empty()
                    : Optional.of(Service.OFF_WHEN_PARKED);
        }

        private TrialResult missed(Scrutiny.MissedRequirement refusal) {
            List<String> breaking = refusal.breaking();
            return new TrialResult.Missed(
                    refusal.requirement(),
                    Math.max(1, breaking.size()),
                    breaking.isEmpty() ? evidence : breaking);
        }
    }

    /** One that is out before anything is told. */
    private record Out(List<Double> atBest, TrialResult trial) implements FirstLook {}
}
