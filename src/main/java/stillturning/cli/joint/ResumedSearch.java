package stillturning.cli.joint;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import java.util.List;
import java.util.Optional;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.dossier.Kept;
import stillturning.dossier.SharedWork;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.report.joint.SharedFindings;
import stillturning.story.UntoldStory;

/** Asks what failures do together, telling how far it is where somebody waits. */
public final class ResumedSearch {

    private ResumedSearch() {}

    /**
     * Does the work.
     *
     * @param order largest sets asked about
     * @param kept where finished work is kept, if anywhere; also when the process is told to end
     * @throws Refusal if no candidate can be computed
     */
    public static JointWork of(
            Study study,
            Chances chances,
            int order,
            Optional<Resumption> kept,
            CommandContext context) {
        JointSearch search = new JointSearch(study, chances, order);
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
    public static List<SharedFindings> shared(Study study, Chances chances, CommandContext context) {
        try (Progress progress =
                Progress.over(study.candidates().size(), "candidates looked at", context)) {
            return SharedWork.of(study, chances, progress);
        }
    }
}
