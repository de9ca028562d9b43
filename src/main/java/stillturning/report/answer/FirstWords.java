package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.Weighty;
import stillturning.assess.findout.Turn;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.RankShares;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;
import stillturning.quantity.Formats;
import stillturning.report.FirstPlace;
import stillturning.report.LeaderFirmness;
import stillturning.report.Reasons;

/** Who is first, how firmly, and what the next one buys. */
final class FirstWords {

    private static final int NAMED = 2;

    private final Assessment assessment;
    private final RankingResult ranking;
    private final List<String> criteria;
    private final Standing leader;

    /**
     * @param criteria short names, in the study's order
     */
    FirstWords(Assessment assessment, RankingResult ranking, List<String> criteria) {
        this.assessment = assessment;
        this.ranking = ranking;
        this.criteria = criteria;
        this.leader = ranking.leader();
    }

    /**
     * Who is first, by how much, and whether it meets what is asked.
     *
     * @param equally who is first with equal batteries, as the end of a sentence
     */
    String who(String equally) {
        FirstPlace place = new FirstPlace(assessment, ranking);
        String who = place.shared() ? "Shared by " + place.titles() : place.titles();
        return who
                + " with "
                + points(leader.total())
                + before(place)
                + equally
                + ". "
                + requirements(place);
    }

    private String before(FirstPlace place) {
        int shared = ranking.first().size();
        if (ranking.standings().size() == shared) {
            return place.shared() ? "" : ", the only candidate";
        }
        Standing next = ranking.standings().get(shared);
        int more = next.missedGates().size() - leader.missedGates().size();
        return more > 0
                ? "; " + title(next.name()) + " misses " + counted(more, "requirement") + " more"
                : ", "
                        + Formats.fixed(leader.total() - next.total(), 3)
                        + " before "
                        + title(next.name());
    }

    private String requirements(FirstPlace place) {
        int asked = assessment.study().goals().requirements().size();
        if (asked == 0) {
            return "The study sets no hard requirement.";
        }
        String subject = place.shared() ? "Each of them" : "It";
        int missed = leader.missedGates().size();
        if (missed > 0) {
            String names =
                    String.join(
                            "; ", leader.missedGates().stream().map(GateVerdict::gate).toList());
            return subject
                    + " misses "
                    + missed
                    + " of "
                    + counted(asked, "hard requirement")
                    + " ("
                    + names
                    + "); no candidate misses fewer.";
        }
        long others =
                ranking.standings().stream().filter(s -> s.missedGates().isEmpty()).count()
                        - ranking.first().size();
        return subject
                + (asked == 1
                        ? " meets the hard requirement"
                        : " meets all " + asked + " hard requirements")
                + (others > 0
                        ? ", as " + (others == 1 ? "one other does." : others + " others do.")
                        : ".");
    }

    /**
     * How the first place holds under other weights, and under other guesses if those were tried.
     */
    List<String> firm(Optional<Guesses> guesses) {
        List<String> sentences = new ArrayList<>();
        List<String> changes = LeaderFirmness.unseating(assessment, ranking);
        String share =
                ranking.robustness().shares().stream()
                        .filter(s -> s.name().equals(leader.name()))
                        .map(RankShares::byRank)
                        .map(byRank -> "First in " + Formats.percent(byRank.get(0)))
                        .findFirst()
                        .map(words -> words + " of all weightings. ")
                        .orElse("");
        int others = changes.size() - 1;
        sentences.add(
                share
                        + changes.get(0)
                        + (others > 0
                                ? (others == 1 ? " So does " : " So do ")
                                        + counted(others, "other change")
                                        + " of one weight."
                                : ""));
        sentences.add("Weights: " + weights() + ".");
        guesses.ifPresent(tried -> sentences.add(unseating(tried)));
        guesses.flatMap(Guesses::spread).flatMap(this::spread).ifPresent(sentences::add);
        return sentences;
    }

    private String weights() {
        return IntStream.range(0, criteria.size())
                .mapToObj(
                        i ->
                                criteria.get(i)
                                        + " "
                                        + Formats.percent(ranking.scales().get(i).weight()))
                .collect(Collectors.joining(", "));
    }

    private Optional<String> spread(Acceptability spread) {
        return spread.candidates().stream()
                .filter(c -> c.name().equals(leader.name()))
                .findFirst()
                .map(
                        c ->
                                "With all guesses drawn at once, "
                                        + spread.samples()
                                        + " times, it is first in "
                                        + Formats.percent(c.first())
                                        + " +- "
                                        + Formats.percent(c.firstError())
                                        + " of draws and weightings, with these weights in "
                                        + Formats.percent(c.asWeighed())
                                        + " +- "
                                        + Formats.percent(c.asWeighedError())
                                        + ".");
    }

    /** The guesses that can put another first, the likeliest with its tipping value. */
    private static String unseating(Guesses tried) {
        List<Weighty> turning = tried.matter().stream().filter(w -> w.worth().first() > 0).toList();
        int all = tried.matter().size() + tried.indifferent().size();
        if (turning.isEmpty()) {
            return "None of " + counted(all, "guess") + ", within its range, takes its place.";
        }
        List<String> named = turning.stream().limit(NAMED).map(FirstWords::turning).toList();
        return turning.size()
                + " of "
                + counted(all, "guess")
                + " can put another first: "
                + String.join("; ", named)
                + (turning.size() > NAMED ? "; ..." : "")
                + ".";
    }

    private static String turning(Weighty weighty) {
        String from =
                weighty.worth().turns().stream()
                        .filter(Turn::first)
                        .findFirst()
                        .map(
                                turn ->
                                        (turn.below() ? ", below " : ", above ")
                                                + weighty.reach().wordsAt(turn.place()))
                        .orElse("");
        return weighty.guess().name()
                + from
                + " ("
                + Formats.percent(weighty.worth().first())
                + " of its range)";
    }

    /**
     * What the next one has that the first has not, and the reverse; nothing where there is none.
     */
    List<String> next() {
        if (ranking.standings().size() < 2) {
            return List.of();
        }
        Comparison pair = ranking.compare(ranking.standings().get(1).name(), leader.name());
        Reasons reasons = new Reasons(assessment, ranking);
        String better = reasons.differences(pair.better());
        String worse = reasons.differences(pair.worse());
        List<String> clauses = new ArrayList<>();
        if (!better.isEmpty()) {
            clauses.add("is better in " + better);
        }
        cold(pair.candidate(), leader.name()).ifPresent(clauses::add);
        if (clauses.isEmpty()) {
            clauses.add("is better in nothing");
        }
        if (!worse.isEmpty()) {
            clauses.add("is worse in " + worse);
        }
        return List.of(title(pair.candidate()) + " " + String.join("; ", clauses) + ".");
    }

    /** Whether one starts in the cold and the other does not, or the reverse. */
    private Optional<String> cold(String one, String other) {
        boolean known = startsCold(one).isPresent() && startsCold(other).isPresent();
        if (!known || startsCold(one).equals(startsCold(other))) {
            return Optional.empty();
        }
        return Optional.of(
                startsCold(one).orElse(false)
                        ? "starts in the cold with tired batteries"
                        : "does not start in the cold with tired batteries, as the first does");
    }

    private Optional<Boolean> startsCold(String candidate) {
        return assessment
                .of(candidate)
                .map(Appraisal::cases)
                .flatMap(Appraisal.Cases::coldStart)
                .map(start -> start.runs());
    }

    private static String points(double points) {
        return Formats.fixed(points, 3) + " points";
    }

    private static String counted(int number, String thing) {
        String plural = thing.endsWith("s") ? thing + "es" : thing + "s";
        return number + " " + (number == 1 ? thing : plural);
    }

    private String title(String candidate) {
        String title = assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate);
        return "\"" + title + "\"";
    }
}
