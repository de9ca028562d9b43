package stillturning.cli.breaking;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.function.Predicate;

/** An option that makes a question about failures, or belongs to one. */
enum BreakOption {
    FAILURE("--failure", asked -> !asked.failures().isEmpty()),
    PILOT("--pilot", asked -> asked.pilot().isPresent()),
    IN("--in", asked -> asked.phase().isPresent()),
    PLOT("--plot", asked -> asked.plot().isPresent()),
    RANGES("--ranges", BreakOptions::ranges),
    EVERY_PHASE("--every-phase", BreakOptions::everyPhase),
    CASES("--cases", BreakOptions::cases),
    ALL("--all", BreakOptions::all),
    PAIRS("--pairs", BreakOptions::pairs),
    LATENT("--latent", BreakOptions::latent),
    CAUSES("--causes", BreakOptions::causes),
    ORDER("--order", asked -> asked.order().isPresent()),
    RESUME("--resume", asked -> asked.resume().isPresent());

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
