package stillturning.report.joint;

import java.util.List;
import java.util.stream.Collectors;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.Latent;
import stillturning.reliability.runup.LatentPairs;
import stillturning.report.Spoken;

/** Pairs of failures of which one is latent, in the words of a requirement. */
public final class LatentPairWords {

    private static final int NAMED = 3;

    private final LatentPairs found;
    private final EventNames names;
    private final CheckWords checks;

    public LatentPairWords(LatentPairs found) {
        Spoken spoken = new Spoken(found.joint().candidate());
        this.found = found;
        this.names = new EventNames(found.joint().events(), spoken::of);
        this.checks = new CheckWords(spoken);
    }

    /** How many pairs some latent failures are in, and the worst by name with what reveals them. */
    public String reason(List<Latent> breaking) {
        return found(breaking) + "; events that take several parts were not asked about";
    }

    private String found(List<Latent> breaking) {
        int latent = found.card().latents().size();
        if (breaking.isEmpty()) {
            return "no pair with one of its "
                    + latent
                    + " latent failures does"
                    + (found.latents().isEmpty() ? "" : " that the run-up does not show");
        }
        long pairs = LatentPairs.pairs(breaking);
        int left = breaking.size() - NAMED;
        return pairs
                + (pairs == 1 ? " pair does" : " pairs do")
                + ", with "
                + breaking.size()
                + " of "
                + latent
                + " latent failures ("
                + breaking.stream().limit(NAMED).map(this::pair).collect(Collectors.joining("; "))
                + (left > 0 ? "; and " + left + " more" : "")
                + ")";
    }

    /** How many pairs more than none, or how many the run-up alone keeps away. */
    public String margin(List<Latent> breaking) {
        if (!breaking.isEmpty()) {
            return LatentPairs.pairs(breaking) + " too many";
        }
        long checked = LatentPairs.pairs(found.latents());
        return checked == 0 ? "none hangs on the run-up" : checked + " without the run-up";
    }

    private String pair(Latent latent) {
        return "unseen "
                + names.of(latent.event())
                + " with "
                + names.anyOf(latent.with())
                + ", "
                + shown(latent.event());
    }

    private String shown(int event) {
        return found.card()
                .check(event)
                .map(number -> found.card().checks().get(number - 1))
                .map(check -> "shown at run-up by " + moved(check))
                .orElse("no check shows it");
    }

    private String moved(Check check) {
        return checks.moves(check.moves());
    }
}
