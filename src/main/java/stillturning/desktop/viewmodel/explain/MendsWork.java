package stillturning.desktop.viewmodel.explain;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.front.Tally;
import stillturning.assess.suggest.StudyMends;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.files.edit.ChangeRefused;
import stillturning.model.Candidate;
import stillturning.report.page.Document.Chapter;
import stillturning.report.suggest.MendBlocks;

/**
 * Looks for the lightest change for each thing that is wrong with the candidates that nothing is
 * known of yet.
 *
 * @param candidates whose changes go onto the page
 * @param limits of each candidate
 * @param known keeps what is found of each candidate as soon as it is found
 */
record MendsWork(
        LightestChanges changes,
        List<Candidate> candidates,
        SearchLimits limits,
        KeptAnswers known) {

    /** Drawings that are looked at, or fewer. */
    int steps() {
        return unknown().size() * limits.trials();
    }

    private List<Candidate> unknown() {
        return candidates.stream().filter(c -> known.mends(c.id()).isEmpty()).toList();
    }

    /**
     * Does the work.
     *
     * @param looked told of each drawing that is looked at, or that need not be
     * @throws ChangeRefused if a candidate cannot be drawn
     */
    Chapter done(Consumer<String> looked) throws ChangeRefused {
        for (Candidate candidate : unknown()) {
            Counted counted = new Counted(looked, new AtomicInteger());
            known.mends(
                    candidate.id(),
                    changes.of(List.of(candidate), limits, same -> counted).mends());
            counted.upTo(limits.trials());
        }
        return new MendBlocks(
                        StudyMends.together(
                                candidates.stream()
                                        .flatMap(c -> known.mends(c.id()).stream())
                                        .toList()))
                .chapter();
    }

    private record Counted(Consumer<String> looked, AtomicInteger told) implements SearchWatch {

        @Override
        public void seen(Tally tally, List<List<Double>> front) {
            upTo(tally.tried());
        }

        void upTo(int drawings) {
            while (told.get() < drawings) {
                looked.accept(String.valueOf(told.incrementAndGet()));
            }
        }

        @Override
        public boolean enough() {
            return false;
        }
    }
}
