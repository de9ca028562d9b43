package stillturning.dossier.suggest;

import java.util.List;
import stillturning.assess.Scrutiny;
import stillturning.files.move.Drawn;
import stillturning.story.UntoldStory;

/** Something to be mended that is neither a single failure nor a requirement. */
public sealed interface Aim permits HiddenThenOne, LeftWrong, NothingWrong, TooSmall {

    /** What is wrong, as a person would name it. */
    String words();

    /** Parts that it is about. */
    List<String> parts();

    /**
     * Whether it is still so in another drawing.
     *
     * @param look at the same drawing
     * @throws UntoldStory if nobody can say
     */
    boolean isLeft(Drawn after, Scrutiny look) throws UntoldStory;
}
