package stillturning.dossier;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.Assessment.Unassessed;
import stillturning.assess.exchange.Exchange;
import stillturning.assess.exchange.Group;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.report.pair.PairQuestion;
import stillturning.report.pair.ValueMarks;
import stillturning.story.UntoldStory;

/**
 * Two candidates of a study held against each other, which takes both and every mix of them. Both
 * are held against what mixes are: not against a baseline, sizes or pairs of failures.
 *
 * @param marks how well the values of either are known, if somebody looked
 */
public record PairWork(Study study, Candidate one, Candidate other, Optional<ValueMarks> marks) {

    /** Of which nobody knows how well the values are known. */
    public PairWork(Study study, Candidate one, Candidate other) {
        this(study, one, other, Optional.empty());
    }

    /** The same, with how well what the files say is known. */
    public PairWork marked(ReadStudy read) {
        return new PairWork(
                study, one, other, Optional.of(MarkedValues.between(read, one.id(), other.id())));
    }

    /** The first in a ranking and the next; empty where there is none. */
    public static Optional<PairWork> ofFirstTwo(Assessment assessment) {
        List<Candidate> order =
                assessment.ranking().map(RankingResult::standings).orElse(List.of()).stream()
                        .map(Standing::name)
                        .flatMap(name -> assessment.study().candidate(name).stream())
                        .toList();
        return order.size() < 2
                ? Optional.empty()
                : Optional.of(new PairWork(assessment.study(), order.get(0), order.get(1)));
    }

    /** About how many candidates and mixes are assessed for it. */
    public int steps() {
        return 2 + (1 << Math.min(Group.MOST, Exchange.differences(one, other).size()));
    }

    /**
     * Does the work.
     *
     * @param progress told of each candidate and each mix when it is done, from any thread; what it
     *     throws ends the work
     * @throws UntoldStory if one of the two cannot be computed
     */
    public PairQuestion done(Consumer<String> progress) throws UntoldStory {
        Study alone =
                new Study(
                        study.id(),
                        study.heading(),
                        study.aircraft(),
                        Exchange.goals(study.goals()),
                        List.of(one, other));
        Assessment two = Assess.of(alone, progress);
        Optional<Unassessed> not = two.unassessed().stream().findFirst();
        if (two.ranking().isEmpty() || not.isPresent()) {
            throw new UntoldStory(
                    not.map(u -> u.candidate() + " could not be computed: " + u.reason())
                            .orElse("neither could be computed"));
        }
        return new PairQuestion(
                two,
                two.ranking().get(),
                new Exchange(two).all(two.appraisals().get(0), two.appraisals().get(1), progress),
                marks,
                Exchange.aside(study.goals()).stream().map(Requirement::inWords).toList());
    }
}
