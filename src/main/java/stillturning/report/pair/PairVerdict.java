package stillturning.report.pair;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateDifferences;
import stillturning.assess.exchange.Attribution.AttributedShare;
import stillturning.assess.exchange.Group;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.Standing;
import stillturning.quantity.Formats;
import stillturning.report.LeaderFirmness;
import stillturning.report.Reasons;

/** Which of two candidates, what that buys and costs, and what would turn it. */
final class PairVerdict {

    /** What is less is 0 where points are printed. */
    private static final double SHOWN = 0.0005;

    private final PairQuestion pair;
    private final Standing ahead;
    private final Standing behind;

    PairVerdict(PairQuestion pair) {
        this.pair = pair;
        this.ahead = pair.ranking().standings().get(0);
        this.behind = pair.ranking().standings().get(1);
    }

    /** Who is ahead, and by how much. */
    String first() {
        String by = Formats.fixed(Math.abs(ahead.total() - behind.total()), 3) + " points";
        if (ahead.rank() == behind.rank()) {
            return title(ahead) + " and " + title(behind) + " are level" + equally() + ".";
        }
        int more = behind.missedGates().size() - ahead.missedGates().size();
        return title(ahead)
                + " is ahead of "
                + title(behind)
                + (more > 0
                        ? ", which misses "
                                + more
                                + (more == 1 ? " requirement more" : " requirements more")
                        : " by " + by)
                + equally()
                + ".";
    }

    /** Who is ahead once what is no matter of layout is equal; empty where nothing such differs. */
    private String equally() {
        return pair.mixes().shares().stream()
                .filter(share -> !share.isLayout())
                .map(this::equally)
                .collect(Collectors.joining());
    }

    private String equally(AttributedShare share) {
        String what = Group.words(share.together());
        int seconds = Integer.signum(pair.mixes().ifBothHaveTheSeconds(share));
        int firsts = Integer.signum(pair.mixes().ifBothHaveTheFirsts(share));
        return seconds == firsts
                ? "; with equal " + what + " " + order(seconds)
                : "; with the "
                        + what
                        + " of "
                        + title(pair.one())
                        + " in both "
                        + order(firsts)
                        + ", with those of "
                        + title(pair.other())
                        + " "
                        + order(seconds);
    }

    /** Above 0 if the second of the pair is before the first. */
    private String order(int secondBefore) {
        if (secondBefore == 0) {
            return ahead.rank() == behind.rank() ? "they stay level" : "they are level";
        }
        Appraisal before = secondBefore > 0 ? pair.other() : pair.one();
        boolean same = before.candidate().id().equals(ahead.name());
        return title(before)
                + (same && ahead.rank() != behind.rank() ? " stays" : " is")
                + " ahead";
    }

    private static String title(Appraisal appraisal) {
        return "\"" + PairBlocks.title(appraisal) + "\"";
    }

    /** What is bought, what is paid, and what would have to be true for the other answer. */
    List<String> paragraph() {
        Comparison comparison = pair.ranking().compare(ahead.name(), behind.name());
        Reasons reasons = new Reasons(pair.two(), pair.ranking());
        List<String> sentences = new ArrayList<>();
        String bought = reasons.differences(comparison.better());
        String paid = reasons.differences(comparison.worse());
        sentences.add(
                title(ahead)
                        + " buys "
                        + (bought.isEmpty() ? "nothing that a criterion counts" : bought)
                        + met(comparison.gatesReferenceMissed())
                        + "; it is paid for with "
                        + (paid.isEmpty() ? "nothing that a criterion counts" : paid)
                        + ".");
        List<String> turning = turning();
        if (turning.isEmpty()) {
            sentences.add(
                    paid.isEmpty()
                            ? "It is at least as good by every criterion, so no weighting at all"
                                    + " and no group of differences exchanged gives the other answer."
                            : "No change of a single weight, and no group of differences exchanged,"
                                    + " gives the other answer.");
            sentences.addAll(new NeededValue(pair, ahead, behind).sentences());
        } else {
            sentences.add(
                    "For the other answer, one of these would have to be true: "
                            + String.join(" ", turning));
        }
        return sentences;
    }

    private static String met(List<GateVerdict> missed) {
        return missed.isEmpty()
                ? ""
                : ", and meets \""
                        + String.join("\", \"", missed.stream().map(GateVerdict::gate).toList())
                        + "\"";
    }

    /** That two come out alike once nothing that shows is left between them says nothing. */
    private boolean reversedBy(AttributedShare share) {
        int asTheyAre = pair.mixes().all().against(pair.mixes().none());
        boolean reversed =
                asTheyAre * pair.mixes().ifBothHaveTheSeconds(share) < 0
                        || asTheyAre * pair.mixes().ifBothHaveTheFirsts(share) < 0;
        return reversed
                && pair.mixes().shares().stream().anyMatch(s -> !s.equals(share) && shows(s));
    }

    private static boolean shows(AttributedShare share) {
        return Math.abs(share.points()) >= SHOWN || Math.abs(share.missed()) >= SHOWN;
    }

    private List<String> turning() {
        List<String> sentences = new ArrayList<>();
        for (AttributedShare share : pair.mixes().shares()) {
            if (share.isLayout() ? reversedBy(share) : pair.mixes().turnedBy(share)) {
                sentences.add(
                        "Both have the same "
                                + Group.words(share.together())
                                + " (worth "
                                + Formats.fixed(Math.abs(share.points()), 3)
                                + " points).");
            }
        }
        if (!pair.ranking().unseatedBy().isEmpty()) {
            sentences.addAll(LeaderFirmness.unseating(pair.two(), pair.ranking()));
        }
        List<String> ahead = this.ahead.missedGates().stream().map(GateVerdict::gate).toList();
        List<String> alone =
                behind.missedGates().stream()
                        .map(GateVerdict::gate)
                        .filter(gate -> !ahead.contains(gate))
                        .toList();
        if (!alone.isEmpty()) {
            sentences.add(
                    title(behind)
                            + " meets what it alone misses: "
                            + String.join("; ", alone)
                            + ".");
        }
        return sentences;
    }

    private String title(Standing standing) {
        return "\""
                + pair.two()
                        .of(standing.name())
                        .map(Appraisal::candidate)
                        .map(c -> c.title())
                        .orElse(standing.name())
                + "\"";
    }

    /** How many failures end better and worse in the second, and how many only one can have. */
    static String counts(CandidateDifferences differences) {
        long better = differences.shifts().stream().filter(s -> s.better()).count();
        long worse = differences.shifts().size() - better;
        String both =
                differences.shifts().isEmpty()
                        ? "Of the failures that both can have none ends otherwise; "
                        : "Of the failures that both can have, "
                                + better
                                + (better == 1 ? " ends" : " end")
                                + " better in the second and "
                                + worse
                                + " worse; ";
        return both
                + differences.own().size()
                + " only the second can have, "
                + differences.spared().size()
                + " only the first";
    }
}
