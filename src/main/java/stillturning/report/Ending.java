package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.assess.Outcome;
import stillturning.assess.Verdict;
import stillturning.quantity.Formats;
import stillturning.story.Happening;
import stillturning.story.Story;
import stillturning.story.Story.Feed;
import stillturning.story.Trace;

/** What came of a failure, as labelled facts in a fixed order. */
final class Ending {

    /** One fact. */
    record Fact(String label, String value) {}

    private static final String BEFORE_PILOT = "before the pilot acts";
    private static final String AT_FIRST = "after the first events";

    private Ending() {}

    static List<Fact> of(Verdict verdict) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact("outcome", verdict.outcome().words()));
        facts.addAll(pilot(verdict.planned()));
        verdict.actBySeconds()
                .ifPresent(
                        by -> facts.add(new Fact(actBy(verdict.outcome()), Formats.lasting(by))));
        List<String> dark = new ArrayList<>(verdict.losses().engineLoads());
        dark.addAll(verdict.losses().otherLoads());
        String when = verdict.planned().aftermath().actedPilot() ? BEFORE_PILOT : AT_FIRST;
        facts.add(new Fact("dark " + when, listed(dark)));
        if (!verdict.losses().feeds().isEmpty()) {
            facts.add(new Fact("feeds lost " + when, feeds(verdict.losses().feeds())));
        }
        facts.add(new Fact("engine runs, pilot as planned", endurance(verdict.planned())));
        facts.add(new Fact("engine runs, pilot does nothing", endurance(verdict.unaided())));
        if (verdict.procedureHarms()) {
            facts.add(new Fact("note", "the procedure ends an engine that would have run on"));
        }
        verdict.inBand()
                .ifPresent(
                        band ->
                                facts.add(
                                        new Fact(
                                                Tolerance.LABEL,
                                                Tolerance.inWords(verdict, band))));
        addInterruption(verdict.planned(), facts);
        facts.addAll(volts(verdict.planned()));
        facts.add(new Fact("energy", BalanceText.of(verdict.planned().balance())));
        return List.copyOf(facts);
    }

    private static String actBy(Outcome outcome) {
        return outcome == Outcome.STOPS_UNTIL_PILOT_ACTS
                ? "it stays stopped until he acts, from"
                : "he must act by";
    }

    static List<Fact> of(Story story) {
        List<Fact> facts = new ArrayList<>(pilot(story));
        facts.add(new Fact("engine runs, pilot " + story.pilot().words(), endurance(story)));
        addInterruption(story, facts);
        facts.addAll(volts(story));
        return List.copyOf(facts);
    }

    static String endurance(Story story) {
        return Shown.endurance(story.engine().endurance());
    }

    private static void addInterruption(Story story, List<Fact> facts) {
        double seconds = story.engine().longestInterruptionSeconds();
        if (seconds > 0) {
            facts.add(new Fact("longest interruption", Telling.time(seconds)));
        }
    }

    private static List<Fact> pilot(Story story) {
        return List.of(
                new Fact("pilot sees", first(story.of(Happening.Kind.CUE))),
                new Fact("pilot does", first(story.of(Happening.Kind.PILOT))));
    }

    /** Each thing once, when it first happens. */
    private static String first(List<Happening> happenings) {
        Map<String, String> byPart = new LinkedHashMap<>();
        for (Happening h : happenings) {
            String words = h.kind() == Happening.Kind.PILOT ? ": " + h.words() : "";
            byPart.putIfAbsent(
                    h.part() + words, h.part() + words + " (" + Telling.time(h.seconds()) + ")");
        }
        return listed(List.copyOf(byPart.values()));
    }

    private static List<Fact> volts(Story story) {
        List<String> buses =
                story.traces().stream()
                        .filter(t -> t.unit().equals("V") && !t.points().isEmpty())
                        .map(Ending::range)
                        .toList();
        return buses.isEmpty()
                ? List.of()
                : List.of(new Fact("bus voltages, lowest to highest", listed(buses)));
    }

    private static String range(Trace trace) {
        return trace.name()
                + " "
                + Formats.fixed(trace.lowest(), 1)
                + " to "
                + Formats.fixed(trace.highest(), 1)
                + " V";
    }

    private static String feeds(List<Feed> feeds) {
        Map<String, List<String>> bySource = new LinkedHashMap<>();
        for (Feed feed : feeds) {
            String input = feed.input().equals("plus") ? "" : "." + feed.input();
            bySource.computeIfAbsent(feed.source(), s -> new ArrayList<>())
                    .add(feed.load() + input);
        }
        return bySource.entrySet().stream()
                .map(e -> "from " + e.getKey() + " to " + String.join(", ", e.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String listed(List<String> items) {
        return items.isEmpty() ? "nothing" : String.join(", ", items);
    }
}
