package stillturning.report.joint;

import java.util.ArrayList;
import java.util.List;
import stillturning.quantity.Formats;
import stillturning.reliability.chance.Importance;
import stillturning.reliability.likelihood.ChanceEstimate;
import stillturning.reliability.likelihood.LikelihoodResult;
import stillturning.reliability.likelihood.Share;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Column;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;

/** How likely it is that a candidate's engine ends, and what that hangs on. */
final class ChanceBlocks {

    private static final int IMPORTANT = 8;
    private static final String NONE = "-";

    private ChanceBlocks() {}

    /** The chance of a flight and of an hour, each with its range. */
    static List<Block> chance(LikelihoodResult likely) {
        ChanceEstimate checked = likely.checked();
        ChanceEstimate unchecked = likely.unchecked();
        double flight = checked.point().flightSeconds();
        List<List<String>> rows = new ArrayList<>();
        rows.add(
                row(
                        "a flight of " + Formats.duration(flight) + ", rates at their means",
                        ChanceWords.mean(checked.point().average()),
                        ChanceWords.mean(unchecked.point().average())));
        rows.add(
                row(
                        "  the same, 5 to 95 % of the rates' spread",
                        ChanceWords.range(checked.ranges().average()),
                        ChanceWords.range(unchecked.ranges().average())));
        rows.add(
                row(
                        "  its sets simply added (upper bound)",
                        ChanceWords.of(checked.point().average().rareEventSum()),
                        ChanceWords.of(unchecked.point().average().rareEventSum())));
        rows.add(
                row(
                        "an hour flown, rates at their means",
                        ChanceWords.mean(checked.point().averagePerHour()),
                        ChanceWords.mean(unchecked.point().averagePerHour())));
        rows.add(
                row(
                        "  the same, 5 to 95 % of the rates' spread",
                        ChanceWords.range(checked.ranges().averagePerHour()),
                        ChanceWords.range(unchecked.ranges().averagePerHour())));
        return List.of(
                new Heading("How likely it is that the engine ends"),
                new Grid(
                        List.of(
                                Column.words("", 44),
                                Column.words("run-up before every flight", 25),
                                Column.words("never a run-up", 25)),
                        rows));
    }

    private static List<String> row(String... cells) {
        return List.of(cells);
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
                new Grid(
                        List.of(
                                Column.words("", 44),
                                Column.numbers("goes if it never failed", 14),
                                Column.numbers("times likelier if it surely did", 16)),
                        shares.stream().limit(IMPORTANT).map(ChanceBlocks::row).toList()));
        if (shares.size() > IMPORTANT) {
            blocks.add(new Note((shares.size() - IMPORTANT) + " more weigh less."));
        }
    }

    private static List<String> row(Share share) {
        Importance importance = share.importance();
        return List.of(
                share.name(),
                ChanceWords.share(importance.criticality()),
                Double.isFinite(importance.riskAchievement())
                        ? Formats.significant(importance.riskAchievement(), 2)
                        : NONE);
    }
}
