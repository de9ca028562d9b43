package stillturning.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import stillturning.assess.Assess;
import stillturning.cutset.Block;
import stillturning.cutset.Searched;
import stillturning.cutset.Watch;
import stillturning.failure.CommonCauses;
import stillturning.failure.Failure;
import stillturning.likelihood.Likelihood;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.report.joint.Jointly;
import stillturning.report.joint.Jointly.PairToKnow;
import stillturning.runup.Card;
import stillturning.runup.RunUp;
import stillturning.story.UntoldStory;
import stillturning.together.Event;
import stillturning.together.Joint;
import stillturning.together.Together;

/**
 * What failures do together, candidate by candidate.
 *
 * @param found in the order of the candidates
 * @param untold candidates that could not be computed, with the reason
 */
record JointWork(List<Jointly> found, List<Untold> untold) {

    /** A candidate that could not be computed. */
    record Untold(String candidate, String reason) {}

    JointWork {
        found = List.copyOf(found);
        untold = List.copyOf(untold);
    }

    /** Candidates that could not be computed, each with its reason, in words. */
    List<String> reasons() {
        return untold.stream().map(u -> u.candidate + ": " + u.reason).toList();
    }

    /**
     * Does the work.
     *
     * @param order largest sets asked about
     * @param kept where finished work is kept, if anywhere; also when the process is told to end
     * @throws Refusal if no candidate can be computed
     */
    static JointWork of(
            Study study,
            Chances chances,
            int order,
            Optional<Resumption> kept,
            Surroundings around) {
        Map<Candidate, List<Event>> events = new LinkedHashMap<>();
        for (Candidate candidate : study.candidates()) {
            events.put(
                    candidate,
                    Together.events(
                            candidate, CommonCauses.of(study.aircraft(), candidate, chances)));
        }
        Optional<Thread> saving = kept.map(k -> new Thread(k::save, "save"));
        saving.ifPresent(Runtime.getRuntime()::addShutdownHook);
        int blocks = order * events.values().stream().mapToInt(List::size).sum();
        try (Progress progress = Progress.over(blocks, "blocks of sets tried", around)) {
            JointWork work = of(study, chances, order, events, follow(events, kept, progress));
            kept.ifPresent(Resumption::save);
            return work;
        } finally {
            saving.ifPresent(Runtime.getRuntime()::removeShutdownHook);
        }
    }

    private static JointWork of(
            Study study,
            Chances chances,
            int order,
            Map<Candidate, List<Event>> events,
            Function<Candidate, Watch> watches) {
        List<Jointly> found = new ArrayList<>();
        List<Untold> untold = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            List<Event> own = events.getOrDefault(candidate, List.of());
            try {
                found.add(
                        finished(
                                study,
                                chances,
                                Together.of(
                                        study, candidate, own, order, watches.apply(candidate))));
            } catch (UntoldStory e) {
                untold.add(new Untold(candidate.id(), String.valueOf(e.getMessage())));
            }
        }
        if (found.isEmpty()) {
            throw new Refusal(
                    untold.get(0).candidate + " cannot be computed: " + untold.get(0).reason);
        }
        return new JointWork(found, untold);
    }

    private static Function<Candidate, Watch> follow(
            Map<Candidate, List<Event>> events,
            Optional<Resumption> kept,
            Consumer<String> progress) {
        return candidate ->
                watch(candidate, events.getOrDefault(candidate, List.of()), kept, progress);
    }

    private static Jointly finished(Study study, Chances chances, Joint joint) throws UntoldStory {
        // what ends the engine alone is seen, so with such sets alone nothing is hidden
        Card card =
                joint.sets().order() > 1
                        ? RunUp.of(study, joint)
                        : new Card(
                                List.of(),
                                study.goals().runUp().name(),
                                0,
                                List.of(),
                                true,
                                List.of(),
                                List.of());
        Jointly found =
                new Jointly(
                        joint, card, Likelihood.of(study, joint, card, chances), Optional.empty());
        Optional<List<Integer>> pair = found.likeliestPair();
        return pair.isEmpty() ? found : found.knowing(Optional.of(told(study, joint, pair.get())));
    }

    private static PairToKnow told(Study study, Joint joint, List<Integer> pair)
            throws UntoldStory {
        Failure one = joint.events().get(pair.get(0)).failure();
        Failure other = joint.events().get(pair.get(1)).failure();
        return new PairToKnow(
                pair,
                Assess.one(study, joint.candidate(), one.and(other)),
                Assess.one(study, joint.candidate(), one),
                Assess.one(study, joint.candidate(), other));
    }

    private static Watch watch(
            Candidate candidate,
            List<Event> events,
            Optional<Resumption> kept,
            Consumer<String> progress) {
        // numbers mean the same only while the events are called the same
        int names = events.stream().map(Event::name).toList().hashCode();
        String key = candidate.id() + " " + Integer.toHexString(names);
        return new Watch() {
            @Override
            public Optional<Searched> known(Block block) {
                Optional<Searched> known = kept.flatMap(k -> k.known(key, events.size(), block));
                known.ifPresent(searched -> progress.accept(candidate.id()));
                return known;
            }

            @Override
            public void done(Searched searched) {
                kept.ifPresent(k -> k.done(key, searched));
                progress.accept(candidate.id());
            }
        };
    }
}
