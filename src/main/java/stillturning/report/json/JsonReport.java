package stillturning.report.json;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Guesses;
import stillturning.assess.PhaseVerdicts;
import stillturning.assess.Verdict;
import stillturning.assess.WorseInPhase;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.model.Study;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.SharedFindings;
import stillturning.sizing.SizingReport;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Results as JSON, for other programs. SI units stand in the names of the fields; a time that
 * nothing limits is {@code null} and the field beside it says so; numbers carry six digits. The
 * schemas are the resources {@code decide.schema.json}, {@code story.schema.json}, {@code
 * range.schema.json}, {@code cases.schema.json}, {@code phases.schema.json}, {@code
 * elsewhere.schema.json}, {@code matrix.schema.json}, {@code sizes.schema.json}, {@code
 * pairs.schema.json}, {@code latent.schema.json}, {@code run-up.schema.json} and {@code
 * causes.schema.json} in {@code /stillturning/report}.
 */
public final class JsonReport {

    /** Raised whenever a field changes its meaning or goes away. */
    public static final int SCHEMA_VERSION = 1;

    private JsonReport() {}

    /** The ranked comparison, with what trying the guesses brought if they were tried. */
    public static String decide(Assessment assessment, Optional<Guesses> guesses) {
        return text(DecideJson.of(assessment, guesses));
    }

    /** One failure of one candidate. */
    public static String story(Verdict verdict) {
        return text(StoryJson.of(verdict));
    }

    /** What the study's own cases do to each candidate. */
    public static String cases(Study study, List<CandidateCases> cases) {
        return text(CasesJson.of(study, cases));
    }

    /**
     * Failures at every moment of the flight.
     *
     * @param untold failures that could not be computed, with the reason
     */
    public static String phases(Study study, List<PhaseVerdicts> told, List<String> untold) {
        return text(PhasesJson.of(study, told, untold));
    }

    /** Failures that do worse elsewhere in the flight. */
    public static String elsewhere(Study study, List<WorseInPhase> worse) {
        return text(ElsewhereJson.of(study, worse));
    }

    /** How sure the endurance after one failure is. */
    public static String range(EnduranceRange range) {
        return text(RangeJson.of(range));
    }

    /** Every failure of every candidate. */
    public static String matrix(Assessment assessment) {
        return text(MatrixJson.of(assessment));
    }

    /** The sizes of some of a study's candidates. */
    public static String sizes(String study, List<SizingReport> reports) {
        return text(SizeJson.of(study, reports));
    }

    /**
     * What events do together in some candidates, and how likely it is.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String pairs(Study study, List<CombinedFindings> found, List<String> untold) {
        return text(PairsJson.of(study, found, untold));
    }

    /**
     * Failures of which nobody sees anything.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String latent(Study study, List<CombinedFindings> found, List<String> untold) {
        return text(LatentJson.of(study, found, untold));
    }

    /**
     * Cards for the run-up.
     *
     * @param untold candidates that could not be computed, with the reason
     */
    public static String runUp(Study study, List<CombinedFindings> found, List<String> untold) {
        return text(RunUpJson.of(study, found, untold));
    }

    /** Common causes, and what the shape of each candidate says. */
    public static String causes(Study study, List<SharedFindings> shared) {
        return text(CausesJson.of(study, shared));
    }

    private static String text(Object shape) {
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));
        JsonMapper mapper =
                JsonMapper.builder()
                        .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                        .enable(SerializationFeature.INDENT_OUTPUT)
                        .defaultPrettyPrinter(printer)
                        .build();
        return mapper.writeValueAsString(shape) + "\n";
    }
}
