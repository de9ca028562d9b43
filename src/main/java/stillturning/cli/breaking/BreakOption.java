package stillturning.cli.breaking;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;

/** An option that makes a question about failures, or belongs to one. */
@SuppressWarnings("ImmutableEnumChecker") // the predicates hold nothing
enum BreakOption {
    FAILURE("--failure", asked -> !asked.failures.isEmpty()),
    PILOT("--pilot", asked -> asked.pilot.isPresent()),
    IN("--in", asked -> asked.phase.isPresent()),
    PLOT("--plot", asked -> asked.plot.isPresent()),
    RANGES("--ranges", asked -> asked.ranges),
    EVERY_PHASE("--every-phase", asked -> asked.everyPhase),
    CASES("--cases", asked -> asked.cases),
    ALL("--all", asked -> asked.all),
    PAIRS("--pairs", asked -> asked.pairs),
    LATENT("--latent", asked -> asked.latent),
    CAUSES("--causes", asked -> asked.causes),
    ORDER("--order", asked -> asked.order.isPresent()),
    RESUME("--resume", asked -> asked.resume.isPresent());

    private final String written;
    private final Predicate<BreakOptions> given;

    BreakOption(String written, Predicate<BreakOptions> given) {
        this.written = written;
        this.given = given;
    }

    /** The option as it is written. */
    String written() {
        return written;
    }

    /** Those that were given. */
    static Set<BreakOption> given(BreakOptions asked) {
        Set<BreakOption> given = EnumSet.noneOf(BreakOption.class);
        Arrays.stream(values()).filter(option -> option.given.test(asked)).forEach(given::add);
        return given;
    }
}
