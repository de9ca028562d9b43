package stillturning.dossier.suggest;

import java.util.function.Predicate;
import stillturning.assess.suggest.Suggestion;
import stillturning.files.edit.CandidateEdits;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.report.suggest.SuggestionWords;
import stillturning.yaml.YamlDocument;

/**
 * A suggestion as a candidate of its own, that says what it was made from.
 *
 * @param drawn as it is drawn
 */
public record SuggestedFile(Suggestion suggestion, Drawn drawn) {

    /** One of what was found, by its place from 0. */
    public static SuggestedFile of(Suggested suggested, int index) {
        return new SuggestedFile(
                suggested.suggestions().found().get(index), suggested.drawings().get(index));
    }

    /** A name for it that is not taken. */
    public String name(Predicate<String> taken) {
        String id = drawn.candidate().id() + "-changed";
        String free = id;
        for (int count = 2; taken.test(free); count++) {
            free = id + "-" + count;
        }
        return free;
    }

    /**
     * The drawing with a title and a reason of its own.
     *
     * @throws ChangeRefused if the file cannot be changed
     */
    public String text() throws ChangeRefused {
        String title = drawn.candidate().title();
        YamlDocument titled = edits(drawn.text()).title(title + ", changed").after();
        return edits(titled)
                .setAt(
                        "",
                        "about",
                        "Made from \"" + title + "\": " + SuggestionWords.moves(suggestion) + ".")
                .after()
                .text();
    }

    private CandidateEdits edits(YamlDocument now) {
        return new CandidateEdits(now, drawn.studyText());
    }
}
