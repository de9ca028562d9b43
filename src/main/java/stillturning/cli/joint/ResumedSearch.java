package stillturning.cli.joint;

import java.util.List;
import java.util.Optional;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.dossier.Kept;
import stillturning.dossier.SharedWork;
import stillturning.report.joint.SharedFindings;
import stillturning.story.UntoldStory;

/** Asks what failures do together, telling how far it is where somebody waits. */
public final class ResumedSearch {

    private ResumedSearch() {}

    /**
     * Does the work.
     *
     * @param order largest sets asked about
     * @param resume file in which finished work is kept, if any; also when the process is told to
     *     end
     * @throws Refusal if no candidate can be computed, or the file belongs to something else
     */
    public static JointWork of(
            FoundStudy found, int order, Optional<String> resume, CommandContext context) {
        JointSearch search = new JointSearch(found.study(), found.chances(), order);
        if (resume.isEmpty()) {
            return work(search, Kept.NOTHING, context);
        }
        String fingerprint = found.read().fingerprint();
        try (Resumption kept = Resumption.of(resume.get(), fingerprint, context)) {
            Thread saving = new Thread(kept::save, "save");
            Runtime.getRuntime().addShutdownHook(saving);
            try {
                JointWork work = work(search, kept, context);
                kept.save();
                return work;
            } finally {
                Runtime.getRuntime().removeShutdownHook(saving);
            }
        }
    }

    private static JointWork work(JointSearch search, Kept kept, CommandContext context) {
        try (Progress progress = Progress.over(search.blocks(), "blocks of sets tried", context)) {
            return search.work(kept, progress);
        } catch (UntoldStory e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    /** What the parts of each candidate share. */
    public static List<SharedFindings> shared(FoundStudy found, CommandContext context) {
        int candidates = found.study().candidates().size();
        try (Progress progress = Progress.over(candidates, "candidates looked at", context)) {
            return SharedWork.of(found.study(), found.chances(), progress);
        }
    }
}
