package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.Zone;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.reliability.groundtest.NotShown.Why;
import stillturning.reliability.groundtest.Trials.FoundHand;
import stillturning.story.Spell;
import stillturning.story.UntoldStory;

/** Finds what can be shown of a candidate on the ground, and puts it in an order. */
public final class GroundTests {

    private final Study study;
    private final Candidate candidate;
    private final Likeness likeness;
    private final List<Hand> hands;
    private final List<Failure> singles;
    private final Consumer<String> progress;
    private final Map<String, FoundHand> missing = new LinkedHashMap<>();

    /** What shows some failures in a configuration. */
    record RevealingHand(Hand hand, Optional<String> on) {}

    private GroundTests(Study study, Candidate candidate, Consumer<String> progress) {
        this.study = study;
        this.candidate = candidate;
        this.likeness = new Likeness(candidate);
        this.hands = HandOpenings.of(candidate);
        this.singles = FailureCatalogue.singlesOf(candidate);
        this.progress = progress;
    }

    /**
     * The plan of a candidate: steps with the engine at rest first, then those with it running.
     *
     * @throws UntoldStory if the candidate has no steady state with nothing wrong, or the plan
     *     cannot be played to its end
     */
    public static GroundTest of(Study study, Candidate candidate) throws UntoldStory {
        return of(study, candidate, failure -> {});
    }

    /**
     * The same, for somebody who waits.
     *
     * @param progress told of each failure that was tried in a configuration, from any thread; what
     *     it throws ends the work
     */
    public static GroundTest of(Study study, Candidate candidate, Consumer<String> progress)
            throws UntoldStory {
        return new GroundTests(study, candidate, progress).plan();
    }

    /** How many failures are tried in all configurations. */
    public static int tries(Candidate candidate) {
        long openable =
                FailureCatalogue.singlesOf(candidate).stream()
                        .filter(f -> !opened(f).isEmpty())
                        .count();
        return Math.toIntExact(openable) * Configuration.values().length;
    }

    private GroundTest plan() throws UntoldStory {
        Rig rest = Rig.of(study, candidate, Configuration.ENGINE_STOPPED);
        Rig running = Rig.of(study, candidate, Configuration.ENGINE_RUNNING);
        singles.forEach(f -> missing.put(f.name(), FoundHand.not(Why.OPENS_NOTHING)));
        Map<RevealingHand, List<String>> atRest = shown(rest, hands);
        Map<RevealingHand, List<String>> whileRunning =
                shown(running, hands.stream().filter(Hand::whileItTurns).toList());
        Staging staging = new Staging(study, candidate);
        List<Stage> stages = new ArrayList<>(staging.stages(rest, ordered(atRest), 1));
        int next = 1 + stages.stream().mapToInt(stage -> stage.steps().size()).sum();
        stages.addAll(staging.stages(running, ordered(whileRunning), next));
        return new GroundTest(
                candidate.id(),
                study.goals().runUp().name(),
                rest.pace(),
                stages,
                missing.entrySet().stream()
                        .filter(e -> e.getValue().hand().isEmpty())
                        .map(e -> new NotShown(e.getKey(), e.getValue().why(), e.getValue().harm()))
                        .toList());
    }

    private FoundHand found(String failure) {
        return Objects.requireNonNull(missing.get(failure), failure);
    }

    /** Names of failures by what shows them in a configuration. */
    private Map<RevealingHand, List<String>> shown(Rig rig, List<Hand> possible)
            throws UntoldStory {
        Map<RevealingHand, List<String>> shown = new LinkedHashMap<>();
        Trials usual = trials(rig, possible, Optional.empty());
        note(usual, rig, Optional.empty(), singles, shown);
        for (String load : rig.off()) {
            Optional<String> on = Optional.of(load);
            Spell with = rig.tried(List.of(rig.intact("begins", on))).get(0);
            List<Failure> fed =
                    singles.stream()
                            .filter(f -> found(f.name()).hand().isEmpty())
                            .filter(f -> feeds(f, usual.before(), with))
                            .toList();
            if (!fed.isEmpty()) {
                List<Hand> there =
                        possible.stream()
                                .filter(h -> flows(h.part(), usual.before(), with))
                                .toList();
                note(trials(rig, there, on), rig, on, fed, shown);
            }
        }
        return shown;
    }

    private Trials trials(Rig rig, List<Hand> possible, Optional<String> on) throws UntoldStory {
        return new Trials(rig, likeness, possible, on, study.aircraft().engine().logic().loads());
    }

    private boolean feeds(Failure failure, Spell without, Spell with) {
        return failure.hits().stream().anyMatch(hit -> flows(hit.part(), without, with));
    }

    /** Whether more flows in a part because a load is on. */
    private boolean flows(String part, Spell without, Spell with) {
        return candidate.part(part).orElseThrow().elements().stream()
                .anyMatch(e -> !near(without, with, part, e.name()));
    }

    private static boolean near(Spell one, Spell other, String part, String element) {
        return Math.abs(one.flow().amps(part, element) - other.flow().amps(part, element)) < 0.1;
    }

    private void note(
            Trials trials,
            Rig rig,
            Optional<String> on,
            List<Failure> failures,
            Map<RevealingHand, List<String>> shown) {
        List<Map.Entry<Failure, FoundHand>> all =
                failures.parallelStream()
                        .filter(f -> !opened(f).isEmpty())
                        .map(f -> Map.entry(f, tried(trials, f, on.isEmpty())))
                        .toList();
        for (Map.Entry<Failure, FoundHand> one : all) {
            String name = one.getKey().name();
            FoundHand found = one.getValue();
            boolean first = found(name).hand().isEmpty();
            found.hand()
                    .filter(hand -> first || (running(rig) && trials.concernsTheEngine(hand)))
                    .ifPresent(
                            hand ->
                                    shown.computeIfAbsent(
                                                    new RevealingHand(hand, on),
                                                    s -> new ArrayList<>())
                                            .add(name));
            if (first && tellsMore(found, found(name))) {
                missing.put(name, found);
            }
        }
    }

    /** Failures that are tried again with a load on are not told again. */
    private FoundHand tried(Trials trials, Failure failure, boolean tell) {
        FoundHand found = trials.of(failure.hits().get(0), opened(failure));
        if (tell) {
            progress.accept(failure.name());
        }
        return found;
    }

    private static boolean running(Rig rig) {
        return rig.configuration() == Configuration.ENGINE_RUNNING;
    }

    private static boolean tellsMore(FoundHand found, FoundHand before) {
        return found.hand().isPresent()
                || before.why() == Why.OPENS_NOTHING
                || before.why() == Why.NOTHING_CHANGES;
    }

    private static Set<String> opened(Failure failure) {
        return HandOpenings.opened(failure.hits().get(0).mode());
    }

    /** From place to place, in the order of the study; there in the order of the candidate. */
    private List<Map.Entry<RevealingHand, List<String>>> ordered(
            Map<RevealingHand, List<String>> shown) {
        List<String> zones = study.aircraft().zones().stream().map(Zone::name).toList();
        return shown.entrySet().stream()
                .sorted(
                        Comparator.<Map.Entry<RevealingHand, List<String>>>comparingInt(
                                        e -> zones.indexOf(zone(e.getKey().hand())))
                                .thenComparingInt(e -> hands.indexOf(e.getKey().hand())))
                .toList();
    }

    private String zone(Hand hand) {
        return candidate.part(hand.part()).orElseThrow().tag().zone();
    }
}
