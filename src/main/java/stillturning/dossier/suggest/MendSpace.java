package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.front.Space;
import stillturning.assess.front.TrialResult;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.verdict.Verdict;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.dossier.redrawn.Service;
import stillturning.files.move.Drawn;
import stillturning.files.move.MoveKind;
import stillturning.model.Join;
import stillturning.parts.Part;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.structure.shape.CandidateForm;

/** Drawings that small changes lead to, from one in which something is to be mended. */
final class MendSpace implements Space<Drawn> {

    /** Joints from a failing part to what is near it. */
    private static final int NEAR = 2;

    private static final String COMPUTED = "the engine runs with nothing wrong";
    private final Drawn start;
    private final Appraisal before;
    private final Asked asked;
    private final Wanted wanted;
    private final Set<String> known;
    private final Service service;
    private final boolean burden;

    /** Drawings in which what the pilot does ends an engine that would have run on. */
    private final Set<Drawn> worseByActs = ConcurrentHashMap.newKeySet();

    MendSpace(Drawn start, Appraisal before, Asked asked) {
        this.start = start;
        this.before = before;
        this.asked = asked;
        this.wanted = asked.wanted();
        this.known = names(start.candidate().parts());
        this.service = Service.of(List.of(start));
        this.burden = isBurden(wanted, before);
    }

    private static Set<String> names(Collection<Part> parts) {
        return parts.stream().map(Part::id).collect(Collectors.toSet());
    }

    @Override
    public List<Drawn> starts() {
        return List.of(start);
    }

    /** The smallest mend is one move: none is left untried while two are looked at. */
    @Override
    public boolean nearestFirst() {
        return true;
    }

    /**
     * Those that touch what is near to the trouble first; before them, where a pilot who does
     * nothing keeps the engine longer, what the pilot does. Where it is about weight, price or acts
     * alone, what adds something comes last.
     */
    @Override
    public List<Step<Drawn>> steps(Drawn from) {
        Set<String> near = near(from);
        List<Step<Drawn>> first = new ArrayList<>();
        List<Step<Drawn>> then = new ArrayList<>();
        List<Step<Drawn>> acts = new ArrayList<>();
        for (DrawnStep step : DrawnStep.all(from)) {
            boolean close = step.move().touches().stream().anyMatch(near::contains);
            if (worseByActs.contains(from) && step.move().kind() == MoveKind.ACT_CHANGED) {
                acts.add(new Placed(step, StepEffect.MORE));
            } else if (burden) {
                then.add(
                        new Placed(
                                step,
                                step.turn() == StepEffect.MORE
                                        ? StepEffect.LESS
                                        : StepEffect.MORE));
            } else {
                (close ? first : then).add(step);
            }
        }
        return Stream.of(acts, first, then).flatMap(List::stream).toList();
    }

    /** A step that is taken in another turn than its own. */
    private record Placed(DrawnStep step, StepEffect turn) implements Step<Drawn> {

        @Override
        public String words() {
            return step.words();
        }

        @Override
        public Optional<Drawn> taken() {
            return step.taken();
        }
    }

    /** Whether all that is wanted is a requirement that no failure misses. */
    private static boolean isBurden(Wanted wanted, Appraisal before) {
        return wanted.size() == wanted.requirements().size()
                && before.met().stream()
                        .filter(met -> wanted.requirements().contains(met.requirement()))
                        .allMatch(met -> met.culprits().isEmpty());
    }

    /** What fails, what was added, what these are joined to, and what that is joined to. */
    private Set<String> near(Drawn from) {
        Set<String> near = new LinkedHashSet<>();
        asked.aim().ifPresent(aim -> near.addAll(aim.parts()));
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
    public FirstLook look(Drawn drawn, List<String> evidence) {
        try {
            Scrutiny scrutiny = Suggest.scrutiny(drawn);
            Optional<String> refused = refused(drawn, scrutiny);
            return refused.isPresent()
                    ? new Dead(refused.get(), nothing(), evidence)
                    : new Looked(scrutiny, drawn, evidence);
        } catch (UntoldStory e) {
            return new Dead(COMPUTED, nothing(), evidence);
        }
    }

    private Optional<String> refused(Drawn drawn, Scrutiny look) throws UntoldStory {
        if (!service.isDoneBy(drawn.candidate(), look)) {
            return Optional.of(Service.WORDS);
        }
        if (!service.isQuiet(look)) {
            return Optional.of(Service.QUIET);
        }
        return service.isOffWhenParked(drawn.study(), drawn.candidate())
                ? Optional.empty()
                : Optional.of(Service.OFF_WHEN_PARKED);
    }

    /** What no drawing is better than. */
    private List<Double> nothing() {
        return asked.values(List.of(), Suggestion.nothing());
    }

    /** One that does not do with nothing wrong what it has to, or that cannot be computed. */
    private record Dead(String by, List<Double> atBest, List<String> evidence)
            implements FirstLook {

        @Override
        public TrialResult trial() {
            return new TrialResult.Missed(by, Double.MAX_VALUE, evidence);
        }
    }

    private static double seconds(Story story) {
        return story.engine().endurance().seconds();
    }

    private final class Looked implements FirstLook {
        private final Scrutiny scrutiny;
        private final Drawn drawn;
        private final List<String> evidence;
        private final List<Verdict> failing;
        private final List<String> others;
        private final List<String> unmet;

        Looked(Scrutiny scrutiny, Drawn drawn, List<String> evidence) throws UntoldStory {
            this.scrutiny = scrutiny;
            this.drawn = drawn;
            this.evidence = evidence;
            this.failing = wanted.left(scrutiny.verdicts(wanted.failures().keySet()));
            this.others = asked.left(drawn, scrutiny);
            this.unmet = asked.unmet(before, scrutiny);
            if (failing.stream().anyMatch(v -> seconds(v.unaided()) > seconds(v.planned()))) {
                worseByActs.add(drawn);
            }
        }

        /** What is left for certain, before everything is told. */
        private int left() {
            return failing.size() + others.size() + unmet.size();
        }

        private List<String> failingOrUnmet() {
            return Stream.concat(failing.stream().map(v -> v.failure().name()), unmet.stream())
                    .toList();
        }

        private boolean mends() {
            return left() < wanted.size();
        }

        /** What mends nothing is told in full, since others may be made from it. */
        @Override
        public List<Double> atBest() {
            return mends()
                    ? asked.values(
                            failingOrUnmet(),
                            Suggestion.atBest(drawn.study(), left(), start.candidate(), scrutiny))
                    : nothing();
        }

        @Override
        public TrialResult trial() {
            if (!service.takesOff(scrutiny)) {
                return new Dead(Service.TAKES_OFF, nothing(), evidence).trial();
            }
            if (!mends()) {
                return missed(wanted.requirements());
            }
            try {
                Suggestion found = asked.suggestion(drawn, List.of(), before, scrutiny);
                return found.left().size() < wanted.size()
                        ? new TrialResult.Met(asked.values(found), evidence)
                        : missed(found.left());
            } catch (UntoldStory e) {
                return new Dead(COMPUTED, nothing(), evidence).trial();
            }
        }

        private TrialResult missed(List<String> beside) {
            List<String> by = new ArrayList<>();
            failing.forEach(v -> by.add(v.failure().name()));
            by.addAll(others);
            by.addAll(beside);
            return new TrialResult.Missed(by.get(0), shortfall(), evidence);
        }

        /** The longer the engine runs, with what the pilot does or without, the nearer. */
        private double shortfall() {
            double enough = drawn.study().goals().enoughSeconds();
            return failing.isEmpty()
                    ? wanted.size()
                    : failing.stream()
                            .mapToDouble(v -> Math.max(seconds(v.planned()), seconds(v.unaided())))
                            .map(seconds -> 1 - Math.min(1, seconds / enough) / 2)
                            .sum();
        }
    }
}
