package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.SheddingEndurances;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.story.DarkSpell;
import stillturning.story.Endurance;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.Story.Feed;
import stillturning.story.StoryEvent;
import stillturning.story.Trace;

/** What came of a failure, as labelled facts in a fixed order. */
public final class StoryFacts {

    /** One fact. */
    public record StoryFact(String label, String value) {}

    private static final Map<Pilot, String> SAID =
            Map.of(
                    Pilot.PLANNED, "pilot as planned",
                    Pilot.LATE, "pilot three times as slow",
                    Pilot.NEVER, "pilot does nothing");

    private static final String BEFORE_PILOT = "before the pilot acts";
    private static final String AT_FIRST = "after the first events";

    private StoryFacts() {}

    public static List<StoryFact> of(Verdict verdict) {
        return of(verdict, Pilot.PLANNED);
    }

    /** What comes of it with a pilot of this kind, and beside it with the others. */
    public static List<StoryFact> of(Verdict verdict, Pilot pilot) {
        Story story = verdict.with(pilot);
        List<StoryFact> facts = new ArrayList<>(brief(verdict, pilot));
        facts.addAll(volts(story));
        facts.add(new StoryFact("energy", BalanceText.of(story.balance())));
        return List.copyOf(facts);
    }

    /** The same without what only measures: voltages and energy. */
    public static List<StoryFact> brief(Verdict verdict, Pilot pilot) {
        Story story = verdict.with(pilot);
        List<StoryFact> facts = new ArrayList<>();
        facts.add(new StoryFact("outcome", verdict.outcome(pilot).words()));
        verdict.remarks(pilot).forEach(remark -> facts.add(new StoryFact("but", remark.words())));
        story.setting()
                .start()
                .one()
                .ifPresent(
                        start ->
                                facts.add(
                                        new StoryFact(
                                                "because of a motor's start",
                                                start.load()
                                                        + " starts at its worst moment ("
                                                        + EventLines.time(start.atSeconds())
                                                        + ")")));
        facts.add(new StoryFact("first sign", FirstSignWords.of(story)));
        facts.addAll(pilot(story));
        verdict.actBySeconds()
                .ifPresent(
                        by ->
                                facts.add(
                                        new StoryFact(
                                                actBy(verdict.outcome()), Formats.lasting(by))));
        if (pilot == Pilot.PLANNED) {
            facts.addAll(losses(verdict));
        }
        for (Pilot kind : Pilot.values()) {
            facts.add(new StoryFact("engine runs, " + SAID.get(kind), endurance(verdict, kind)));
        }
        if (verdict.procedureHarms()) {
            facts.add(new StoryFact("note", "the procedure ends an engine that would have run on"));
        }
        facts.addAll(restart(verdict));
        verdict.inBand()
                .ifPresent(
                        band ->
                                facts.add(
                                        new StoryFact(
                                                ToleranceWords.LABEL,
                                                ToleranceWords.inWords(verdict, band))));
        addInterruption(story, facts);
        return facts;
    }

    private static List<StoryFact> losses(Verdict verdict) {
        List<StoryFact> facts = new ArrayList<>();
        String when = verdict.planned().aftermath().actedPilot() ? BEFORE_PILOT : AT_FIRST;
        facts.add(new StoryFact("dark " + when, listed(dark(verdict))));
        if (!verdict.losses().feeds().isEmpty()) {
            facts.add(new StoryFact("feeds lost " + when, feeds(verdict.losses().feeds())));
        }
        return facts;
    }

    /** What stays dark by its name; what came back before the pilot acts with how long it was. */
    private static List<String> dark(Verdict verdict) {
        Map<String, DarkSpell> spells = DarkSpell.beforeThePilotActs(verdict.planned());
        Set<String> loads = new LinkedHashSet<>(verdict.losses().engineLoads());
        loads.addAll(verdict.losses().otherLoads());
        loads.addAll(spells.keySet());
        return loads.stream()
                .map(
                        load ->
                                load
                                        + Optional.ofNullable(spells.get(load))
                                                .map(StoryFacts::was)
                                                .orElse(""))
                .toList();
    }

    private static String was(DarkSpell dark) {
        if (dark.until().isEmpty()) {
            return "";
        }
        double until = dark.until().getAsDouble();
        String began = EventLines.time(dark.from());
        return dark.times() > 1
                ? " (" + dark.times() + " times, " + began + " to " + EventLines.time(until) + ")"
                : " (for " + EventLines.time(until - dark.from()) + " at " + began + ")";
    }

    /** With the outcome, where it is another than that of the pilot as planned. */
    private static String endurance(Verdict verdict, Pilot pilot) {
        Outcome outcome = verdict.outcome(pilot);
        String runs = FirstSignWords.endurance(verdict.with(pilot));
        return outcome == verdict.outcome() ? runs : runs + " (" + outcome.words() + ")";
    }

    /** Whether a stopped engine runs again, turned by the air or by the starter alone. */
    private static List<StoryFact> restart(Verdict verdict) {
        return verdict.standing()
                .map(
                        standing ->
                                List.of(
                                        new StoryFact(
                                                "restart, the air turning the propeller",
                                                again(verdict.planned())),
                                        new StoryFact(
                                                "restart, the propeller standing still",
                                                again(standing))))
                .orElse(List.of());
    }

    private static String again(Story story) {
        return story.of(StoryEvent.Kind.ENGINE_RESTARTS).stream()
                .findFirst()
                .map(h -> "runs again after " + EventLines.time(h.seconds()))
                .orElse(
                        story.of(StoryEvent.Kind.CRANKING_FAILS).isEmpty()
                                ? "does not run again"
                                : "the starter is tried and does not start it");
    }

    private static String actBy(Outcome outcome) {
        return outcome == Outcome.STOPS_UNTIL_PILOT_ACTS
                ? "it stays stopped until he acts, from"
                : "he must act by";
    }

    /** What switching loads off is worth. */
    public static List<StoryFact> of(SheddingEndurances lasting) {
        List<StoryFact> facts = new ArrayList<>();
        facts.add(
                new StoryFact(
                        "if nothing is shed, no breaker pulled", runs(lasting.sheddingNothing())));
        facts.add(new StoryFact("as the procedures have it", runs(lasting.asWritten())));
        facts.add(new StoryFact("if all the engine can spare is off", runs(lasting.best())));
        lasting.worstPlaced()
                .ifPresent(
                        worst ->
                                facts.add(
                                        new StoryFact(
                                                "short-time loads at the worst time",
                                                runs(worst.endurance())
                                                        + ", if they begin at "
                                                        + EventLines.time(worst.fromSeconds()))));
        return facts;
    }

    private static String runs(SheddingEndurances.Best best) {
        return runs(best.endurance())
                + (best.spared().isEmpty() ? "" : ", with " + listed(best.spared()) + " off too");
    }

    private static String runs(Endurance endurance) {
        return ResultText.endurance(endurance);
    }

    public static String endurance(Story story) {
        return ResultText.endurance(story.engine().endurance());
    }

    private static void addInterruption(Story story, List<StoryFact> facts) {
        double seconds = story.engine().longestInterruptionSeconds();
        if (seconds > 0) {
            facts.add(new StoryFact("longest interruption", EventLines.time(seconds)));
        }
    }

    private static List<StoryFact> pilot(Story story) {
        return List.of(
                new StoryFact("pilot sees", first(story.of(StoryEvent.Kind.CUE))),
                new StoryFact("pilot does", first(acts(story))));
    }

    /** What the pilot does, the starter included. */
    private static List<StoryEvent> acts(Story story) {
        return story.happenings().stream().filter(h -> h.kind().isAct()).toList();
    }

    /** Each thing once, when it first happens. */
    private static String first(List<StoryEvent> happenings) {
        Map<String, String> byPart = new LinkedHashMap<>();
        for (StoryEvent h : happenings) {
            String words = h.kind().isAct() ? ": " + h.words() : "";
            byPart.putIfAbsent(
                    h.part() + words, h.part() + words + " (" + EventLines.time(h.seconds()) + ")");
        }
        return listed(List.copyOf(byPart.values()));
    }

    private static List<StoryFact> volts(Story story) {
        List<String> buses =
                story.traces().stream()
                        .filter(t -> t.unit().equals("V") && !t.points().isEmpty())
                        .map(StoryFacts::range)
                        .toList();
        return buses.isEmpty()
                ? List.of()
                : List.of(new StoryFact("bus voltages, lowest to highest", listed(buses)));
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
