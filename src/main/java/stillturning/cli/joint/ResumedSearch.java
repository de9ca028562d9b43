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
        Optional<Resumption> kept =
                resume.map(file -> Resumption.of(file, found.read().fingerprint(), context));
        JointSearch search = new JointSearch(found.study(), found.chances(), order);
        Optional<Thread> saving = kept.map(k -> new Thread(k::save, "save"));
        saving.ifPresent(Runtime.getRuntime()::addShutdownHook);
        try (Progress progress = Progress.over(search.blocks(), "blocks of sets tried", context)) {
            JointWork work = search.work(kept.map(k -> (Kept) k).orElse(Kept.NOTHING), progress);
            kept.ifPresent(Resumption::save);
            return work;
        } catch (UntoldStory e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        } finally {
            saving.ifPresent(Runtime.getRuntime()::removeShutdownHook);
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
