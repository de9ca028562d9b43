package stillturning.dossier.suggest;

import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.front.Space;
import stillturning.assess.front.Trial;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Verdict;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.dossier.redrawn.Service;
import stillturning.files.move.Drawn;
import stillturning.model.Burdens;
import stillturning.model.Join;
import stillturning.parts.Part;
import stillturning.story.UntoldStory;
import stillturning.structure.shape.CandidateForm;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Drawings that small changes lead to, from one in which something is to be mended. */
final class MendSpace implements Space<Drawn> {

    /** Joints from a failing part to what is near it. */
    private static final int NEAR = 2;

    private static final String COMPUTED = "the engine runs with nothing wrong";
    private final Drawn start;
    private final Appraisal before;
    private final Wanted wanted;
    private final Set<String> known;
    private final Service service;

    MendSpace(Drawn start, Appraisal before, Wanted wanted) {
        this.start = start;
        this.before = before;
        this.wanted = wanted;
        this.known = names(start.candidate().parts());
        this.service = Service.of(List.of(start));
    }

    private static Set<String> names(Collection<Part> parts) {
        return parts.stream().map(Part::id).collect(Collectors.toSet());
    }

    @Override
    public List<Drawn> starts() {
        return List.of(start);
    }

    /** Those that touch what is near to the trouble first. */
    @Override
    public List<Step<Drawn>> steps(Drawn from) {
        Set<String> near = near(from);
        List<Step<Drawn>> first = new ArrayList<>();
        List<Step<Drawn>> then = new ArrayList<>();
        for (DrawnStep step : DrawnStep.all(from)) {
            boolean close = step.move().touches().stream().anyMatch(near::contains);
            (close ? first : then).add(step);
        }
        first.addAll(then);
        return first;
    }

    /** What fails, what was added, what these are joined to, and what that is joined to. */
    private Set<String> near(Drawn from) {
        Set<String> near = new LinkedHashSet<>();
        before.singles().stream()
                .filter(v -> wanted.failures().containsKey(v.failure().name()))
                .flatMap(v -> v.failure().hits().stream())
                .forEach(hit -> near.add(hit.part()));
        names(from.candidate().parts()).stream().filter(p -> !known.contains(p)).forEach(near::add);
        for (int i = 0; i < NEAR; i++) {
            Set<String> next = new LinkedHashSet<>(near);
            for (Join join : from.candidate().joins()) {
                if (near.contains(join.one().part())) {
                    next.add(join.other().part());
                }
                if (near.contains(join.other().part())) {
                    next.add(join.one().part());
                }
            }
            near.addAll(next);
        }
        return near;
    }

    @Override
    public Object form(Drawn drawn) {
        return CandidateForm.of(drawn.candidate());
    }

    @Override
    public Look look(Drawn drawn, List<String> evidence) {
        try {
            Scrutiny scrutiny = Suggest.scrutiny(drawn);
            return service.isDoneBy(drawn.candidate(), scrutiny)
                    ? new Looked(scrutiny, drawn, evidence)
                    : new Dead(Service.WORDS, evidence);
        } catch (UntoldStory e) {
            return new Dead(COMPUTED, evidence);
        }
    }

    /** One that does not do with nothing wrong what it has to, or that cannot be computed. */
    private record Dead(String by, List<String> evidence) implements Look {

        @Override
        public List<Double> atBest() {
            return List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0);
        }

        @Override
        public Trial trial() {
            return new Trial.Missed(by, Double.MAX_VALUE, evidence);
        }
    }

    private final class Looked implements Look {
        private final Scrutiny scrutiny;
        private final Drawn drawn;
        private final List<String> evidence;

        Looked(Scrutiny scrutiny, Drawn drawn, List<String> evidence) {
            this.scrutiny = scrutiny;
            this.drawn = drawn;
            this.evidence = evidence;
        }

        @Override
        public List<Double> atBest() {
            Burdens burdens = Burdens.of(drawn.candidate());
            double parts = Suggestion.Burden.parts(drawn.candidate());
            return List.of(0.0, 0.0, 0.0, burdens.kilograms(), parts, burdens.price(), 0.0, 0.0);
        }

        @Override
        public Trial trial() {
            if (!service.takesOff(scrutiny)) {
                return new Dead(Service.TAKES_OFF, evidence).trial();
            }
            List<Verdict> left = wanted.left(scrutiny.verdicts(wanted.failures().keySet()));
            if (!wanted.failures().isEmpty() && left.size() >= wanted.failures().size()) {
                return missed(left);
            }
            try {
                Appraisal after = scrutiny.appraisal();
                Suggestion found = Suggestion.of(drawn.study(), List.of(), wanted, before, after);
                return found.left().size() < wanted.size()
                        ? new Trial.Met(found.values(), evidence)
                        : missed(left);
            } catch (UntoldStory e) {
                return new Dead(COMPUTED, evidence).trial();
            }
        }

        private Trial missed(List<Verdict> left) {
            String by =
                    left.isEmpty() ? wanted.requirements().get(0) : left.get(0).failure().name();
            return new Trial.Missed(by, shortfall(left), evidence);
        }

        /** The longer the engine runs, the nearer. */
        private double shortfall(List<Verdict> left) {
            double enough = drawn.study().goals().enoughSeconds();
            return left.isEmpty()
                    ? wanted.size()
                    : left.stream()
                            .mapToDouble(v -> v.planned().engine().endurance().seconds())
                            .map(seconds -> 1 - Math.min(1, seconds / enough) / 2)
                            .sum();
        }
    }
}
