package stillturning.cli.joint;

import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import java.util.List;
import java.util.function.Function;
import stillturning.dossier.JointWork;
import stillturning.model.Study;
import stillturning.report.BlockText;
import stillturning.report.Cautions;
import stillturning.report.joint.CauseSheet;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.LatentSheet;
import stillturning.report.joint.PairSheet;
import stillturning.report.joint.RunUpSheet;
import stillturning.report.joint.SharedFindings;
import stillturning.report.page.Block;

/** Failures together and hidden, for a person. */
public final class JointText {

    private final Study study;
    private final JointWork work;
    private final Output out;

    public JointText(Study study, JointWork work, Output out) {
        this.study = study;
        this.work = work;
        this.out = out;
    }

    /** Sets that end the engine, and chances. */
    public void pairs(boolean all) {
        heading(PairSheet.MEANING);
        tell(found -> PairSheet.of(found, all));
    }

    /** What nobody sees. */
    public void latent(boolean all) {
        heading(LatentSheet.MEANING);
        tell(found -> LatentSheet.of(found, all));
    }

    /** The card of each candidate, each to be cut out. */
    public void runUp() {
        for (CombinedFindings found : work.found()) {
            out.section(
                    "Run-up card: " + study.heading().title() + ", " + found.candidate().title());
            if (study.heading().invented()) {
                out.line(Paragraph.of("  ", Cautions.inFull(true).get(0)));
            }
            out.line(Paragraph.of("  ", Cautions.SHORT)).line("");
            out.lines(BlockText.lines(RunUpSheet.of(found), out.paint()));
        }
        untold();
    }

    /** Common causes, and what the shape says. */
    public static void causes(Study study, List<SharedFindings> shared, boolean all, Output out) {
        new JointText(study, new JointWork(List.of(), List.of()), out).heading(CauseSheet.MEANING);
        shared.forEach(
                of ->
                        out.section(of.candidate().title())
                                .lines(BlockText.lines(CauseSheet.of(of, all), out.paint())));
        out.caution();
    }

    private void heading(String meaning) {
        out.line(Paragraph.of("", study.heading().title()));
        if (study.heading().invented()) {
            out.line(Cautions.inFull(true).get(0));
        }
        out.line(Paragraph.of("", meaning));
    }

    private void tell(Function<CombinedFindings, List<Block>> blocks) {
        work.found()
                .forEach(
                        found ->
                                out.section(found.candidate().title())
                                        .lines(BlockText.lines(blocks.apply(found), out.paint())));
        untold();
        out.caution();
    }

    private void untold() {
        work.untold()
                .forEach(
                        u ->
                                out.line("")
                                        .line(
                                                Paragraph.of(
                                                        "",
                                                        u.candidate()
                                                                + " could not be computed and is"
                                                                + " left out: "
                                                                + u.reason())));
    }
}
