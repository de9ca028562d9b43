package stillturning.assess.requirement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.parts.Part;

/** What a candidate has that the baseline has not or has otherwise; wires and loads apart. */
public final class BaselineParts {

    private BaselineParts() {}

    /** The baseline, where something is required of departures from it. */
    public static Optional<Candidate> baseline(Study study) {
        return study.goals()
                .required(Requirement.DeparturesAtMost.class)
                .flatMap(required -> study.goals().baseline())
                .flatMap(study::candidate);
    }

    /** Names of parts that are other than in the baseline, added ones first, then missing ones. */
    public static Optional<List<String>> departures(Study study, Candidate candidate) {
        return baseline(study).map(b -> departures(parts(candidate), parts(b)));
    }

    private static List<String> departures(Map<String, Part> here, Map<String, Part> there) {
        List<String> departures = new ArrayList<>();
        here.forEach(
                (id, part) -> {
                    if (!there.containsKey(id)) {
                        departures.add(id + " added");
                    } else if (!part.equals(there.get(id))) {
                        departures.add(id + " other");
                    }
                });
        there.keySet().stream()
                .filter(id -> !here.containsKey(id))
                .map(id -> id + " left out")
                .forEach(departures::add);
        return List.copyOf(departures);
    }

    private static Map<String, Part> parts(Candidate candidate) {
        Map<String, Part> parts = new LinkedHashMap<>();
        candidate.parts().stream()
                .filter(p -> p.role() != Part.Role.WIRE && p.role() != Part.Role.LOAD)
                .forEach(p -> parts.put(p.id(), p));
        return parts;
    }
}
