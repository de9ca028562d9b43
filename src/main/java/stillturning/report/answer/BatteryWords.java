package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.Attribution;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.quantity.Formats;

/** What becomes of the first place with equal batteries. */
final class BatteryWords {

    private final Assessment assessment;
    private final EqualBatteries equal;

    BatteryWords(Assessment assessment, EqualBatteries equal) {
        this.assessment = assessment;
        this.equal = equal;
    }

    /**
     * Who is first with equal batteries, as the end of a sentence about the first one; empty where
     * none was tried.
     *
     * @param first those in first place with the batteries as they are
     * @param next the one after them, named just before; empty where there is none
     */
    String clause(List<String> first, String next) {
        if (equal.rivals().isEmpty()) {
            return "";
        }
        return "; with equal batteries: " + firstAgain(first, next) + byTheirOwn();
    }

    /** With the batteries of the first one in all. */
    private String firstAgain(List<String> first, String next) {
        List<String> now = now(first);
        if (Set.copyOf(now).equals(Set.copyOf(first))) {
            return first.size() > 1 ? "still level" : "still first";
        }
        if (!now.contains(equal.leader())) {
            return String.join(" and ", titles(now)) + " first";
        }
        List<String> level = now.stream().filter(c -> !c.equals(equal.leader())).toList();
        if (first.size() == 1 && level.equals(List.of(next))) {
            return "level";
        }
        return level.isEmpty()
                ? title(equal.leader()) + " alone first"
                : "level with " + String.join(" and ", titles(level));
    }

    /** Those whose batteries are like the first one's stay level with it. */
    private List<String> now(List<String> first) {
        List<String> tried = equal.firstWithTheLeaders();
        return tried.contains(equal.leader())
                ? Stream.concat(tried.stream(), first.stream().filter(equal.same()::contains))
                        .toList()
                : tried;
    }

    /** The rival that comes first only if both have the batteries of that one. */
    private String byTheirOwn() {
        List<String> now = equal.firstWithTheLeaders();
        return equal.turning().stream()
                .filter(r -> EqualBatteries.ifBothHaveTheRivals(r) < 0)
                .map(r -> title(r.from().id()))
                .filter(who -> !titles(now).contains(who))
                .findFirst()
                .map(who -> ", but " + who + " first where both have its batteries")
                .orElse("");
    }

    /** The rival first that gains most by it. */
    List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        List<Attribution> turning = equal.turning();
        turning.stream().findFirst().ifPresent(rival -> sentences.add(turned(rival)));
        if (turning.size() > 1) {
            sentences.add(alsoTurned(turning.subList(1, turning.size())));
        }
        List<Attribution> behind =
                equal.rivals().stream().filter(r -> !turning.contains(r)).toList();
        if (!behind.isEmpty()) {
            sentences.add(behind(behind, !turning.isEmpty()));
        }
        if (!equal.same().isEmpty()) {
            sentences.add(
                    "Batteries are alike in it and in "
                            + String.join(", ", titles(equal.same()))
                            + ".");
        }
        if (!equal.untried().isEmpty()) {
            int untried = equal.untried().size();
            sentences.add(
                    "Not tried with "
                            + (untried == 1 ? "one that misses" : untried + " that miss")
                            + " two requirements more than it, or cannot be exchanged.");
        }
        return sentences;
    }

    private String turned(Attribution rival) {
        int theirs = EqualBatteries.ifBothHaveTheRivals(rival);
        int ours = EqualBatteries.ifBothHaveTheLeaders(rival);
        String who = title(rival.from().id());
        String words =
                Integer.signum(theirs) == Integer.signum(ours)
                        ? "; with equal ones that one" + place(ours)
                        : "; with the first one's in both, that one"
                                + place(ours)
                                + ", with its own it"
                                + place(theirs)
                                + missing(rival);
        return share(rival) + " before " + who + words + ".";
    }

    private static String place(int leaderAgainst) {
        return leaderAgainst == 0
                ? " draws level"
                : leaderAgainst < 0 ? " comes first" : " stays behind";
    }

    private static String share(Attribution rival) {
        return "Batteries make "
                + points(rival.shares().get(0).points())
                + " of the "
                + points(rival.all().points() - rival.none().points())
                + " points";
    }

    private String alsoTurned(List<Attribution> rivals) {
        Attribution next = rivals.get(0);
        return title(next.from().id())
                + (EqualBatteries.ifBothHaveTheLeaders(next) <= 0
                        ? place(EqualBatteries.ifBothHaveTheLeaders(next))
                                + " with the first one's batteries"
                        : place(EqualBatteries.ifBothHaveTheRivals(next))
                                + " where both have its batteries"
                                + missing(next))
                + (rivals.size() > 1 ? "; " + (rivals.size() - 1) + " more are like it" : "")
                + ".";
    }

    /** What the first one then no longer meets. */
    private static String missing(Attribution rival) {
        int more = EqualBatteries.withTheRivals(rival).missed() - rival.all().missed();
        return more <= 0
                ? ""
                : ", with which the first one misses "
                        + more
                        + (more == 1 ? " requirement more" : " requirements more");
    }

    private String behind(List<Attribution> rivals, boolean too) {
        Attribution nearest = rivals.get(0);
        return "With equal batteries it stays before "
                + title(nearest.from().id())
                + (rivals.size() > 1 ? " and " + (rivals.size() - 1) + " more" : "")
                + (too ? "." : ". " + share(nearest) + " before that one.");
    }

    private static String points(double points) {
        return Formats.fixed(points, 3);
    }

    private List<String> titles(List<String> candidates) {
        return candidates.stream().map(this::title).toList();
    }

    private String title(String candidate) {
        String title = assessment.of(candidate).map(a -> a.candidate().title()).orElse(candidate);
        return "\"" + title + "\"";
    }
}
