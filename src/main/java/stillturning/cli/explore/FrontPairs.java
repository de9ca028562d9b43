package stillturning.cli.explore;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.exploration.Explored;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.CommonCauses;
import stillturning.reliability.combined.CombinedFailures;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.Searched;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.report.explored.ExploredFront.ExploredLayout;
import stillturning.story.UntoldStory;

/**
 * Counts the pairs of failures that end the engine, for what is on a front; events that take
 * several parts are among them.
 */
final class FrontPairs {

    private static final int PAIRS = 2;

    private final Study study;
    private final Map<Candidate, List<Event>> events = new LinkedHashMap<>();

    private FrontPairs(Explored found, FoundStudy drawn) {
        this.study = found.front().assessment().study();
        for (ExploredLayout layout : found.front().front()) {
            Candidate candidate = found.front().of(layout).candidate();
            List<Cause> causes =
                    Optional.ofNullable(found.drawn().get(layout.id()))
                            .map(Drawn::causes)
                            .orElseGet(
                                    () ->
                                            CommonCauses.of(
                                                    study.aircraft(), candidate, drawn.chances()));
            events.put(candidate, CombinedFailures.events(candidate, causes));
        }
    }

    /** The same front with its pairs, each pair told as any story. */
    static Explored counted(Explored found, FoundStudy drawn, CommandContext context) {
        FrontPairs front = new FrontPairs(found, drawn);
        int blocks = PAIRS * front.events.values().stream().mapToInt(List::size).sum();
        try (Progress progress = Progress.over(blocks, "blocks of pairs tried", context)) {
            return found.withPairs(front.counts(progress));
        } catch (UntoldStory e) {
            throw new Refusal("--pairs: " + e.getMessage());
        }
    }

    private Map<String, Integer> counts(Progress progress) throws UntoldStory {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (Map.Entry<Candidate, List<Event>> one : events.entrySet()) {
            Candidate candidate = one.getKey();
            SetSearchWatch watch =
                    new SetSearchWatch() {
                        @Override
                        public void done(Searched searched) {
                            progress.accept(candidate.id());
                        }
                    };
            counts.put(
                    candidate.id(),
                    CombinedFailures.of(study, candidate, one.getValue(), PAIRS, watch)
                            .sets()
                            .ofOrder(PAIRS)
                            .size());
        }
        return counts;
    }
}
