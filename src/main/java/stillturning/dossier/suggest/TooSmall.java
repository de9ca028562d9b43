package stillturning.dossier.suggest;

import java.util.List;
import java.util.stream.Stream;
import stillturning.assess.Scrutiny;
import stillturning.files.move.Drawn;
import stillturning.report.sizes.FindingWords;
import stillturning.sizing.Sizing;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.UntoldStory;

/**
 * A size that is not as it should be. Mended where the rule is no longer broken there.
 *
 * @param part that is too small; empty where it is no single one
 * @param how in words
 */
public record TooSmall(Rule rule, String part, String how) implements Aim {

    /** Those of a candidate; none where sizes cannot be computed. */
    static Stream<Aim> in(Drawn drawn) {
        try {
            return findings(drawn)
                    .map(f -> new TooSmall(f.rule(), f.part(), FindingWords.wrong(f)));
        } catch (UntoldStory e) {
            return Stream.empty();
        }
    }

    private static Stream<SizeFinding> findings(Drawn drawn) throws UntoldStory {
        return Sizing.of(drawn.study(), drawn.candidate(), drawn.installation()).findings().stream()
                .filter(f -> f.rule().gravity() != Rule.Gravity.NOTE);
    }

    @Override
    public String words() {
        return part.isEmpty() ? how : part + ": " + how;
    }

    @Override
    public List<String> parts() {
        return part.isEmpty() ? List.of() : List.of(part);
    }

    @Override
    public boolean isLeft(Drawn after, Scrutiny look) throws UntoldStory {
        return findings(after).anyMatch(f -> f.rule() == rule && f.part().equals(part));
    }
}
