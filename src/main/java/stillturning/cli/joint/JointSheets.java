package stillturning.cli.joint;

import java.util.List;
import java.util.function.Function;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.Output;
import stillturning.dossier.JointWork;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.Cautions;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.page.Block;
import stillturning.report.terminal.BlockText;

/** Failures together and hidden for a person: one sheet a candidate. */
public final class JointSheets {

    private JointSheets() {}

    /** The study's title, and what the sheets mean. */
    public static void heading(Study study, String meaning, Output out) {
        out.paragraph(study.heading().title());
        if (study.heading().invented()) {
            out.line(Cautions.inFull(true).get(0));
        }
        out.paragraph(meaning);
    }

    /** A sheet of each candidate, then those that could not be computed. */
    public static void print(
            JointWork work, Function<CombinedFindings, List<Block>> sheet, Output out) {
        work.found().forEach(found -> print(found.candidate(), sheet.apply(found), out));
        leftOut(work, out);
    }

    /** The sheet of one candidate. */
    public static void print(Candidate candidate, List<Block> sheet, Output out) {
        out.section(candidate.title()).lines(BlockText.lines(sheet, out.paint()));
    }

    static void leftOut(JointWork work, Output out) {
        work.untold()
                .forEach(u -> StudyAssessment.leftOut(u.candidate(), u.reason(), out.line("")));
    }
}
