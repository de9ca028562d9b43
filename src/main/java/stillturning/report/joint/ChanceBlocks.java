package stillturning.report.joint;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import stillturning.quantity.Formats;
import stillturning.reliability.chance.Importance;
import stillturning.reliability.likelihood.ChanceEstimate;
import stillturning.reliability.likelihood.LikelihoodResult;
import stillturning.reliability.likelihood.Share;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;

/** How likely it is that a candidate's engine ends, and what that hangs on. */
final class ChanceBlocks {

    private static final String MEAN =
            "The mean is that of the range beneath it. Rates that are known from one source are wrong"
                    + " together in both, so that two of a kind fail together more often than their"
                    + " means alone would say: 7 times within a factor of 10.";

    private static final int IMPORTANT = 8;
    private static final String NONE = "-";

    private ChanceBlocks() {}

    /** The chance of a flight and of an hour, each with its range. */
    static List<Block> chance(LikelihoodResult likely) {
        double flight = likely.checked().point().flightSeconds();
        List<Row> rows =
                List.of(
                        Row.of(
                                "a flight of "
                                        + Formats.duration(flight)
                                        + ", mean over the rates' spread",
                                likely,
                                e -> ChanceWords.mean(e.point().average())),
                        Row.of(
                                "  5 to 95 % of that spread",
                                likely, e -> ChanceWords.range(e.ranges().average())),
                        Row.of(
                                "  its sets simply added (upper bound)",
                                likely,
                                e -> ChanceWords.of(e.point().average().rareEventSum())),
                        Row.of(
                                "an hour flown, mean over the rates' spread",
                                likely,
                                e -> ChanceWords.mean(e.point().averagePerHour())),
                        Row.of(
                                "  5 to 95 % of that spread",
                                likely, e -> ChanceWords.range(e.ranges().averagePerHour())));
        return List.of(
                new Heading("How likely it is that the engine ends"),
                new Note(MEAN),
                Grid.of(
                        rows,
                        List.of(
                                words("chance in", 44, Row::what),
                                words("run-up before every flight", 25, Row::checked),
                                words("never a run-up", 25, Row::unchecked))));
    }

    /** A figure with a run-up before every flight, and without any. */
    private record Row(String what, String checked, String unchecked) {

        static Row of(
                String what, LikelihoodResult likely, Function<ChanceEstimate, String> figure) {
            return new Row(what, figure.apply(likely.checked()), figure.apply(likely.unchecked()));
        }
    }

    /** The parts, and what else, that weigh most. */
    static List<Block> importance(LikelihoodResult likely) {
        List<Block> blocks = new ArrayList<>();
        shares("What it hangs on: parts", likely.parts(), blocks);
        shares("What it hangs on: everything else", likely.causes(), blocks);
        return blocks;
    }

    private static void shares(String heading, List<Share> shares, List<Block> blocks) {
        if (shares.isEmpty()) {
            return;
        }
        blocks.add(new Heading(heading));
        blocks.add(
                Grid.of(
                        shares.stream().limit(IMPORTANT).toList(),
                        List.of(
                                words("what fails", 44, Share::name),
                                ChanceWords.shares(
                                        "goes if it never failed",
                                        s -> s.importance().criticality()),
                                figures(
                                        "times likelier if it surely did",
                                        16,
                                        s -> achievement(s.importance())))));
        if (shares.size() > IMPORTANT) {
            blocks.add(new Note((shares.size() - IMPORTANT) + " more weigh less."));
        }
    }

    private static String achievement(Importance importance) {
        return Double.isFinite(importance.riskAchievement())
                ? ChanceWords.times(importance.riskAchievement())
                : NONE;
    }
}
