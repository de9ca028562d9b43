package stillturning.report.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import stillturning.model.Study;
import stillturning.reliability.likelihood.Inspection;
import stillturning.reliability.runup.Latent;
import stillturning.report.Cautions;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.LatentRemedies;

/** The shape of latent failures in JSON. */
record LatentJson(
        int schemaVersion,
        String caution,
        String study,
        List<OfCandidate> candidates,
        List<String> untold) {

    /** One candidate. */
    record OfCandidate(String candidate, List<One> latent) {}

    /**
     * A latent failure.
     *
     * @param with failures and common causes with any of which it ends the engine
     * @param check of the run-up card that reveals it, counted from 1; null for none
     */
    record One(
            String failure,
            List<String> with,
            @Nullable Integer check,
            @Nullable Looking inspection) {}

    /** How, and how often, to look for it. */
    record Looking(String how, @Nullable Double everySeconds, String words) {}

    static LatentJson of(Study study, List<CombinedFindings> found, List<String> untold) {
        return new LatentJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                study.id(),
                found.stream().map(LatentJson::of).toList(),
                untold);
    }

    private static OfCandidate of(CombinedFindings found) {
        LatentRemedies hidden = new LatentRemedies(found);
        return new OfCandidate(
                found.candidate().id(),
                found.card().latents().stream().map(latent -> one(found, latent, hidden)).toList());
    }

    private static One one(CombinedFindings found, Latent latent, LatentRemedies hidden) {
        return new One(
                name(found, latent.event()),
                latent.with().stream().map(event -> name(found, event)).toList(),
                hidden.check(latent.event()).orElse(null),
                hidden.inspection(latent.event()).map(i -> looking(i, hidden)).orElse(null));
    }

    static Looking looking(Inspection inspection, LatentRemedies hidden) {
        return new Looking(
                hidden.way(inspection.event()),
                inspection.everySeconds().isPresent()
                        ? JsonNumbers.number(inspection.everySeconds().getAsDouble())
                        : null,
                inspection.words());
    }

    static String name(CombinedFindings found, int event) {
        return found.joint().events().get(event).name();
    }
}
