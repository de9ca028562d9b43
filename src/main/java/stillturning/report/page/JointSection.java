package stillturning.report.page;

import java.util.List;

/** What failures do together and what hides, candidate by candidate. */
public record JointSection(List<JointChapter> chapters) {

    /** One question, put to every candidate. */
    public record JointChapter(
            String anchor, String heading, String meaning, List<JointSheet> sheets) {
        public JointChapter {
            sheets = List.copyOf(sheets);
        }
    }

    /**
     * One candidate's answer.
     *
     * @param card whether it is to be printed and cut out by itself
     * @param cautions what must stand on it then
     */
    public record JointSheet(
            String title, boolean card, List<String> cautions, List<Block> blocks) {
        public JointSheet {
            cautions = List.copyOf(cautions);
            blocks = List.copyOf(blocks);
        }
    }

    public JointSection {
        chapters = List.copyOf(chapters);
    }
}
