package stillturning.desktop.viewmodel.offer;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Tally;
import stillturning.assess.suggest.Wanted;
import stillturning.desktop.draft.Draft;
import stillturning.desktop.viewmodel.BackgroundWork.Work;
import stillturning.desktop.viewmodel.BackgroundWork.WorkHandle;
import stillturning.dossier.suggest.Suggest;
import stillturning.dossier.suggest.Suggested;
import stillturning.dossier.suggest.SuggestedFile;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.report.suggest.SuggestionWords;
import stillturning.story.UntoldStory;

/**
 * Looks for what would mend a trouble.
 *
 * @param most how many moves one after the other, and how many drawings
 * @param stop ends it with what is found by then
 */
record MendWork(Draft draft, Trouble trouble, SearchLimits most, AtomicBoolean stop)
        implements Work<Offered> {

    @Override
    public Offered done(WorkHandle progress) throws ChangeRefused, UntoldStory {
        StudyReader reader = draft.reader();
        ReadStudy read = reader.reading().read();
        Suggest suggest = Suggest.of(Drawn.of(reader, read, trouble.candidate()));
        Wanted wanted = trouble.wanted(suggest.before());
        SearchLimits limits = wanted.isNothing() ? new SearchLimits(0, 1) : most;
        return offered(suggest.mending(wanted, limits, new Told(progress, most.trials(), stop)));
    }

    private Offered offered(Suggested found) throws ChangeRefused {
        SuggestionWords words = new SuggestionWords(found.suggestions());
        List<OfferedDrawing> offers = new ArrayList<>();
        for (int i = 0; i < found.suggestions().found().size(); i++) {
            SuggestedFile file = SuggestedFile.of(found, i);
            offers.add(
                    new OfferedDrawing(
                            SuggestionWords.moves(file.suggestion()),
                            words.about(file.suggestion()),
                            found.suggestions().before().candidate(),
                            file.drawn(),
                            file.name(taken -> false),
                            file.text()));
        }
        return new Offered(
                words.wanted(),
                offers,
                Stream.of(
                                Stream.of(words.found()),
                                words.outweighed().stream(),
                                Stream.of(words.done(), SuggestionWords.MEANING))
                        .flatMap(lines -> lines)
                        .toList());
    }

    /** Tells how far it is; ends it when nobody waits any more. */
    private record Told(WorkHandle progress, int most, AtomicBoolean stop) implements SearchWatch {

        @Override
        public void seen(Tally tally, List<List<Double>> front) {
            progress.report(
                    Math.min(1, (double) tally.tried() / most),
                    tally.tried()
                            + " drawings looked at, "
                            + tally.met()
                            + (tally.met() == 1 ? " mends" : " mend")
                            + " something");
        }

        @Override
        public boolean enough() {
            return stop.get();
        }
    }
}
