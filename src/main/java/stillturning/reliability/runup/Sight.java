package stillturning.reliability.runup;

import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.UntoldStory;

/** What a pilot sees of one failure. */
public final class Sight {

    private Sight() {}

    /**
     * Whether he sees nothing of it, from turning the key to the landing.
     *
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static boolean hides(Study study, Candidate candidate, Failure failure)
            throws UntoldStory {
        return new LatentFailureSearch(study, candidate).unseen(failure);
    }
}
