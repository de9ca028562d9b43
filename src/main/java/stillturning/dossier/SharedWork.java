package stillturning.dossier;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import stillturning.assess.Assess;
import stillturning.assess.crosscheck.Disagreement;
import stillturning.assess.crosscheck.SecondOpinion;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.CommonCauses;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.report.joint.SharedFindings;
import stillturning.report.joint.SharedFindings.Carrier;
import stillturning.report.joint.SharedFindings.PlayedCause;
import stillturning.report.joint.SharedFindings.SharedStructure;
import stillturning.story.UntoldStory;
import stillturning.structure.SharedPlaces;
import stillturning.structure.Structure;

/** Looks at what a candidate's parts share. */
public final class SharedWork {

    private final Study study;
    private final Candidate candidate;
    private final Chances chances;
    private final List<String> untold = new ArrayList<>();

    private SharedWork(Study study, Candidate candidate, Chances chances) {
        this.study = study;
        this.candidate = candidate;
        this.chances = chances;
    }

    /**
     * All candidates in their order.
     *
     * @param progress told the id of each candidate when it is done
     */
    public static List<SharedFindings> of(Study study, Chances chances, Consumer<String> progress) {
        List<SharedFindings> all = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            all.add(new SharedWork(study, candidate, chances).shared());
            progress.accept(candidate.id());
        }
        return all;
    }

    private SharedFindings shared() {
        SharedStructure shape =
                new SharedStructure(
                        Structure.functions(study.aircraft(), candidate),
                        Structure.of(study.aircraft(), candidate).singlePoints(),
                        SharedPlaces.of(study.aircraft(), candidate, chances.odds(candidate.id())));
        return new SharedFindings(candidate, causes(), carriers(), shape, disagreements(), untold);
    }

    private List<PlayedCause> causes() {
        List<PlayedCause> played = new ArrayList<>();
        for (Cause cause : CommonCauses.of(study.aircraft(), candidate, chances)) {
            played.add(new PlayedCause(cause, verdict(cause.failure())));
        }
        return played;
    }

    private List<Carrier> carriers() {
        List<Carrier> carriers = new ArrayList<>();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            if (candidate.part(failure.hits().get(0).part()).orElseThrow().carriesSeveral()) {
                verdict(failure).flatMap(this::carrier).ifPresent(carriers::add);
            }
        }
        return carriers;
    }

    private Optional<Carrier> carrier(Verdict verdict) {
        Set<String> needed = Set.copyOf(study.aircraft().engine().logic().loads());
        Set<String> loads = new LinkedHashSet<>();
        Stream.concat(
                        verdict.losses().feeds().stream().map(feed -> feed.load()),
                        verdict.losses().engineLoads().stream())
                .filter(needed::contains)
                .forEach(loads::add);
        return loads.size() > 1
                ? Optional.of(new Carrier(verdict, List.copyOf(loads)))
                : Optional.empty();
    }

    private Optional<Verdict> verdict(Failure failure) {
        try {
            return Optional.of(Assess.one(study, candidate, failure));
        } catch (UntoldStory e) {
            untold.add(failure.name() + ": " + e.getMessage());
            return Optional.empty();
        }
    }

    private List<Disagreement> disagreements() {
        try {
            SecondOpinion opinion = Assess.secondOpinion(study, candidate);
            opinion.untold().forEach(why -> untold.add("shape against story: " + why));
            return opinion.disagreements();
        } catch (UntoldStory e) {
            untold.add("shape against story: " + e.getMessage());
            return List.of();
        }
    }
}
