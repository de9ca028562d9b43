package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
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
            sentences.add("Alike in it and in " + String.join(", ", titles(equal.same())) + ".");
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
                        ? "With equal batteries " + who + place(ours)
                        : "With its own batteries in both, "
                                + who
                                + place(ours)
                                + "; with those of the other, "
                                + who
                                + place(theirs);
        return words + share(rival) + ".";
    }

    private static String place(int leaderAgainst) {
        return leaderAgainst == 0
                ? " draws level"
                : leaderAgainst < 0 ? " comes first" : " stays behind";
    }

    private static String share(Attribution rival) {
        return ": batteries make "
                + points(rival.shares().get(0).points())
                + " of "
                + points(rival.all().points() - rival.none().points())
                + " points between them";
    }

    private String alsoTurned(List<Attribution> rivals) {
        Attribution next = rivals.get(0);
        return title(next.from().id())
                + (EqualBatteries.ifBothHaveTheLeaders(next) <= 0
                        ? place(EqualBatteries.ifBothHaveTheLeaders(next))
                                + " with the first one's batteries"
                        : place(EqualBatteries.ifBothHaveTheRivals(next))
                                + " where both have its batteries")
                + (rivals.size() > 1 ? "; " + (rivals.size() - 1) + " more are like it" : "")
                + ".";
    }

    private String behind(List<Attribution> rivals, boolean too) {
        Attribution nearest = rivals.get(0);
        return "With equal batteries it stays before "
                + title(nearest.from().id())
                + (rivals.size() > 1 ? " and " + (rivals.size() - 1) + " more" : "")
                + (too ? "" : share(nearest))
                + ".";
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
