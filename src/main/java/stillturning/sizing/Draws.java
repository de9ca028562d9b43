package stillturning.sizing;

import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.parts.AlteredPart;

/** Studies and candidates as they are supposed for one question. */
final class Draws {

    private Draws() {}

    /** Every load that may run in a phase runs there all the time, at its full current. */
    static Study full(Study study) {
        return study.withLoads(load -> load.with(load.use().always()));
    }

    /** The candidate with all of its batteries full. */
    static Candidate full(Candidate candidate) {
        return candidate.with(part -> new AlteredPart(part, element -> element.charged(1)));
    }

    /** The candidate with its batteries at these charges, from 0 to 1, by part. */
    static Candidate charged(Candidate candidate, Map<String, Double> charges) {
        return candidate.with(
                part ->
                        charges.containsKey(part.id())
                                ? new AlteredPart(part, e -> e.charged(charges.get(part.id())))
                                : part);
    }
}
