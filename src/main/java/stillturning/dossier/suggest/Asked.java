package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.files.move.Drawn;
import stillturning.story.UntoldStory;

/**
 * What is to be mended.
 *
 * @param wanted all of it, in words
 * @param aim what no appraisal tells of it; absent where there is no such thing
 */
record Asked(Wanted wanted, Optional<Aim> aim) {

    static Asked of(Wanted wanted) {
        return new Asked(wanted, Optional.empty());
    }

    static Asked of(Aim aim) {
        return new Asked(Wanted.other(aim.words()), Optional.of(aim));
    }

    /** What is left of the aim. */
    List<String> left(Drawn after, Scrutiny look) throws UntoldStory {
        List<String> left = new ArrayList<>();
        if (aim.isPresent() && aim.get().isLeft(after, look)) {
            left.add(aim.get().words());
        }
        return left;
    }

    /** A changed drawing held against what was before. */
    Suggestion suggestion(Drawn after, List<String> moves, Appraisal before, Scrutiny look)
            throws UntoldStory {
        Appraisal changed = look.appraisal();
        List<String> left = new ArrayList<>(wanted.left(before, changed));
        left.addAll(left(after, look));
        return Suggestion.of(after.study(), moves, left, before, changed);
    }
}
