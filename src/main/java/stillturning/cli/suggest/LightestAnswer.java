package stillturning.cli.suggest;

import java.util.Optional;
import stillturning.assess.suggest.StudyMends;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Output;
import stillturning.report.suggest.MendBlocks;
import stillturning.report.suggest.MendsJson;
import stillturning.report.terminal.BlockText;

/**
 * The lightest changes that were found.
 *
 * @param kept in which file, in words
 */
record LightestAnswer(StudyMends found, Optional<String> kept) implements Answer {

    /** The same with those that lose the engine in more ways than before. */
    LightestAnswer withOutweighed() {
        return new LightestAnswer(found.withOutweighed(), kept);
    }

    @Override
    public String json() {
        return MendsJson.MENDS.text(found);
    }

    @Override
    public void print(Output out) {
        out.lines(BlockText.lines(new MendBlocks(found).all(), out.paint()));
        kept.ifPresent(out::line);
    }
}
