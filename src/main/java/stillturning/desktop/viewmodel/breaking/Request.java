package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Moment;

/**
 * What is to be played.
 *
 * @param picked what goes wrong, all at once; nothing if empty
 */
record Request(Study study, Candidate candidate, List<FailureChoice> picked, Moment moment) {

    private static final Failure NOTHING = Failure.levers("nothing fails", Map.of());

    Request {
        picked = List.copyOf(picked);
    }

    /** The candidate with its levers as they stood before the flight. */
    Candidate set() {
        Map<String, String> left = new HashMap<>();
        picked.forEach(choice -> left.putAll(choice.left()));
        return left.isEmpty() ? candidate : candidate.with(left);
    }

    /**
     * Everything that goes wrong as one failure.
     *
     * @throws IllegalArgumentException if one lever would be in two positions
     */
    Failure failure() {
        List<Failure> all = new ArrayList<>();
        picked.forEach(choice -> all.add(choice.failure()));
        return all.stream().reduce(Failure::and).orElse(NOTHING);
    }
}
