package stillturning.report;

import stillturning.model.CountsFrom;
import stillturning.story.Story;

/** What the pilot can first notice, and how long the engine runs from then. */
final class FirstSignWords {

    private FirstSignWords() {}

    static String of(Story story) {
        return story.engine()
                .sign()
                .map(sign -> sign.words() + " (" + EventLines.time(sign.seconds()) + ")")
                .orElse("none");
    }

    /** From the failure, and from the first sign where that makes a difference to a reader. */
    static String endurance(Story story) {
        String fromFailure = ResultText.endurance(story.engine().endurance());
        String fromSign = ResultText.seconds(story.engine().lastsFrom(CountsFrom.FIRST_SIGN));
        return !story.engine().endurance().ends() || fromFailure.equals(fromSign)
                ? fromFailure
                : fromFailure + " from the failure, " + fromSign + " from the first sign";
    }
}
