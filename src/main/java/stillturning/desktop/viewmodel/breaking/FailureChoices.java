package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.model.failure.CommonCauses;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.model.failure.FailureWords;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.report.FailureRows;
import stillturning.yaml.LooseNames;
import stillturning.yaml.LooseNames.LooseName;
import stillturning.yaml.LooseNames.Named;

/** Everything that can be made to happen in one candidate, and how to find it by a few words. */
public final class FailureChoices {

    /** Choices of no candidate. */
    public static final FailureChoices NONE = new FailureChoices(List.of());

    private static final String CAUSES = "several at once";
    private static final String DEAD = "indicators";
    private static final String LEFT = "switches left before flight";

    private final List<Named<FailureChoice>> named;

    private FailureChoices(List<Named<FailureChoice>> named) {
        this.named = List.copyOf(named);
    }

    /**
     * Operating cases first, then parts by kind, then common causes, dead indicators and left
     * switches.
     */
    public static FailureChoices of(Study study, Candidate candidate, Chances chances) {
        List<Named<FailureChoice>> all = new ArrayList<>();
        cases(candidate).forEach(failure -> all.add(whole(FailureRows.CASES, failure, Map.of())));
        List<Named<FailureChoice>> singles =
                candidate.parts().stream().flatMap(FailureChoices::ofPart).toList();
        Set<String> kinds = new LinkedHashSet<>(FailureRows.kinds());
        singles.forEach(single -> kinds.add(single.thing().kind()));
        for (String kind : kinds) {
            singles.stream().filter(s -> s.thing().kind().equals(kind)).forEach(all::add);
        }
        CommonCauses.of(study.aircraft(), candidate, chances)
                .forEach(cause -> all.add(whole(CAUSES, cause.failure(), Map.of())));
        FailureCatalogue.deadLampsOf(candidate)
                .forEach(dead -> all.add(whole(DEAD, dead, Map.of())));
        for (Misplaced left : FailureCatalogue.omissionsOf(candidate)) {
            Failure nothingElse = Failure.levers(left.name(), Map.of());
            all.add(whole(LEFT, nothingElse, left.positions()));
        }
        return new FailureChoices(all);
    }

    private static List<Failure> cases(Candidate candidate) {
        Failure charging = FailureCatalogue.chargingLost(candidate);
        return Stream.concat(
                        Stream.of(charging).filter(f -> !f.hits().isEmpty()),
                        FailureCatalogue.operatingCasesOf(candidate).stream())
                .toList();
    }

    private static Named<FailureChoice> whole(
            String kind, Failure failure, Map<String, String> left) {
        FailureChoice choice =
                new FailureChoice(kind, Optional.empty(), failure.name(), failure, left);
        return new Named<>(choice, List.of(LooseName.of(failure.name())));
    }

    private static Stream<Named<FailureChoice>> ofPart(Part part) {
        return part.failureModes().stream().map(mode -> ofMode(part, mode));
    }

    private static Named<FailureChoice> ofMode(Part part, FailureMode mode) {
        Failure failure = Failure.of(new Hit(part.id(), mode));
        FailureChoice choice =
                new FailureChoice(
                        part.kind().plural(),
                        Optional.of(part.id()),
                        mode.name(),
                        failure,
                        Map.of());
        List<LooseName> names =
                Stream.of(part.id(), part.tag().label())
                        .distinct()
                        .flatMap(
                                called ->
                                        FailureWords.of(mode).stream()
                                                .map(words -> new LooseName(called, words)))
                        .toList();
        return new Named<>(choice, names);
    }

    /** All of them, in order. */
    public List<FailureChoice> all() {
        return named.stream().map(Named::thing).toList();
    }

    /** Those that the words fit, best first; all in their order if nothing is said. */
    public List<FailureChoice> fitting(String said) {
        return LooseNames.fitting(said, named);
    }

    /** The choice of this name. */
    public Optional<FailureChoice> called(String name) {
        return all().stream().filter(choice -> choice.name().equals(name)).findFirst();
    }

    /** Failures of one part, in the order of its kind. */
    public List<FailureChoice> of(String part) {
        return all().stream().filter(c -> c.part().equals(Optional.of(part))).toList();
    }
}
