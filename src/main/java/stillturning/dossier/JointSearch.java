package stillturning.dossier;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Assess;
import stillturning.dossier.JointWork.UntoldCandidate;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.model.failure.CommonCauses;
import stillturning.model.failure.Failure;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.SearchBlock;
import stillturning.reliability.cutset.Searched;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.reliability.likelihood.Likelihood;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.RunUp;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.CombinedFindings.PairToKnow;
import stillturning.story.UntoldStory;

/** Asks every candidate of a study what its failures do together. */
public final class JointSearch {

    /** Sets of two: the usual question. */
    public static final int PAIRS = 2;

    private final Study study;
    private final Chances chances;
    private final int order;
    private final Map<Candidate, List<Event>> events = new LinkedHashMap<>();

    /**
     * @param order largest sets asked about
     */
    public JointSearch(Study study, Chances chances, int order) {
        this.study = study;
        this.chances = chances;
        this.order = order;
        for (Candidate candidate : study.candidates()) {
            events.put(
                    candidate,
                    CombinedFailures.events(
                            candidate, CommonCauses.of(study.aircraft(), candidate, chances)));
        }
    }

    /** How often the progress will be told. */
    public int blocks() {
        return order * events.values().stream().mapToInt(List::size).sum();
    }

    /**
     * Does the work.
     *
     * @param progress told the id of a candidate after each of its blocks, from any thread
     * @throws UntoldStory if no candidate can be computed
     */
    public JointWork work(Kept kept, Consumer<String> progress) throws UntoldStory {
        List<CombinedFindings> found = new ArrayList<>();
        List<UntoldCandidate> untold = new ArrayList<>();
        for (Map.Entry<Candidate, List<Event>> own : events.entrySet()) {
            Candidate candidate = own.getKey();
            SetSearchWatch watch = watch(candidate, own.getValue(), kept, progress);
            try {
                found.add(
                        finished(
                                CombinedFailures.of(
                                        study, candidate, own.getValue(), order, watch)));
            } catch (UntoldStory e) {
                untold.add(new UntoldCandidate(candidate.id(), String.valueOf(e.getMessage())));
            }
        }
        if (found.isEmpty() && !untold.isEmpty()) {
            throw new UntoldStory(
                    untold.get(0).candidate() + " cannot be computed: " + untold.get(0).reason());
        }
        return new JointWork(found, untold);
    }

    private CombinedFindings finished(CombinedResult joint) throws UntoldStory {
        // what ends the engine alone is seen, so with such sets alone nothing is hidden
        Card card =
                joint.sets().order() > 1
                        ? RunUp.of(study, joint)
                        : Card.empty(study.goals().runUp().name());
        CombinedFindings found =
                new CombinedFindings(
                        joint, card, Likelihood.of(study, joint, card, chances), Optional.empty());
        Optional<List<Integer>> pair = found.likeliestPair();
        return pair.isEmpty() ? found : found.knowing(Optional.of(told(joint, pair.get())));
    }

    private PairToKnow told(CombinedResult joint, List<Integer> pair) throws UntoldStory {
        Failure one = joint.events().get(pair.get(0)).failure();
        Failure other = joint.events().get(pair.get(1)).failure();
        return new PairToKnow(
                pair,
                Assess.one(study, joint.candidate(), one.and(other)),
                Assess.one(study, joint.candidate(), one),
                Assess.one(study, joint.candidate(), other));
    }

    private static SetSearchWatch watch(
            Candidate candidate, List<Event> events, Kept kept, Consumer<String> progress) {
        // numbers mean the same only while the events are called the same
        int names = events.stream().map(Event::name).toList().hashCode();
        String key = candidate.id() + " " + Integer.toHexString(names);
        return new SetSearchWatch() {
            @Override
            public Optional<Searched> known(SearchBlock block) {
                Optional<Searched> known = kept.known(key, events.size(), block);
                known.ifPresent(searched -> progress.accept(candidate.id()));
                return known;
            }

            @Override
            public void done(Searched searched) {
                kept.done(key, searched);
                progress.accept(candidate.id());
            }
        };
    }
}
