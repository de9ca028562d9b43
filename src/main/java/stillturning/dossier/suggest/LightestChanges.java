package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.dossier.suggest.LightestFound.OfCandidate;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;

/**
 * The lightest change for each thing that is wrong with the candidates of a study.
 *
 * @param read what the reader makes of the study, without a mistake
 */
public record LightestChanges(StudyReader reader, ReadStudy read) {

    /** How far it is looked from a candidate where nobody says so. */
    public static final SearchLimits USUAL = new SearchLimits(2, 240);

    /**
     * Looks for them, candidate by candidate.
     *
     * @param limits for each candidate: how many moves one after the other, and how many drawings
     * @param watch on the search of a candidate
     */
    public LightestFound of(
            List<Candidate> candidates, SearchLimits limits, Function<Candidate, SearchWatch> watch)
            throws ChangeRefused {
        List<OfCandidate> found = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        for (Candidate candidate : candidates) {
            Drawn drawn = Drawn.of(reader, read, candidate.id());
            try {
                found.add(Suggest.of(drawn).lightest(limits, watch.apply(candidate)));
            } catch (UntoldStory e) {
                untold.add("\"" + candidate.title() + "\": " + e.getMessage());
            }
        }
        return new LightestFound(found, untold);
    }

    /**
     * Tells again what an earlier search found: every change is read from its text and assessed in
     * full.
     *
     * @throws ChangeRefused if a change cannot be read any more
     * @throws UntoldStory if a candidate cannot be computed as it is
     */
    public LightestFound again(KeptMends kept) throws ChangeRefused, UntoldStory {
        List<OfCandidate> found = new ArrayList<>();
        for (KeptMends.KeptCandidate one : kept.candidates()) {
            Drawn drawn = Drawn.of(reader, read, one.candidate());
            List<Suggest.Made> made = new ArrayList<>();
            for (KeptMends.KeptChange change : one.changes()) {
                Drawn changed = drawn.with(YamlDocument.of(drawn.text().file(), change.text()));
                made.add(new Suggest.Made(change.moves(), changed));
            }
            found.add(Suggest.of(drawn).lightest(made, one.search().done()));
        }
        return new LightestFound(found, kept.untold());
    }
}
