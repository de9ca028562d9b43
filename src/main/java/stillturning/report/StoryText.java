package stillturning.report;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.SheddingEndurances;
import stillturning.assess.verdict.Verdict;
import stillturning.report.table.TextTable;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent.Kind;

/** Stories as lines of plain text, in order of time. */
public final class StoryText {

    private static final int WIDTH = 100;
    private static final int LABEL = 40;

    /** Lines of a story that is told without leaving anything out. */
    private static final int LONGEST = 48;

    private static final int BEGINNING = 20;
    private static final int END = 12;

    private static final Set<Kind> ALWAYS =
            EnumSet.of(
                    Kind.PILOT,
                    Kind.LOAD_STARTS,
                    Kind.PROTECTOR_OPENS,
                    Kind.BATTERY_EMPTY,
                    Kind.BATTERY_DISCONNECTS,
                    Kind.ENGINE_INTERRUPTED,
                    Kind.ENGINE_STOPS,
                    Kind.ENGINE_RESTARTS,
                    Kind.PHASE,
                    Kind.CRANKING,
                    Kind.CHATTER,
                    Kind.UNTOLD);

    /** How the lines are to be read; stands once above them. */
    public static final String READING =
            "Each event has a number; 7 <- 5 means that 7 happened because of 5. > marks what the"
                    + " pilot does.";

    private StoryText() {}

    /**
     * What follows with a pilot of this kind, and what comes of it with every kind.
     *
     * @param lasting what switching loads off is worth, if that was asked
     * @param names what parts are called; the failure keeps the name by which one asks for it
     */
    public static List<String> of(
            Verdict verdict,
            Pilot pilot,
            Optional<SheddingEndurances> lasting,
            PrintedNames names) {
        List<String> lines = new ArrayList<>();
        lines.add(verdict.failure().name() + ", pilot " + pilot.words());
        lines.addAll(events(verdict.with(pilot), names));
        lines.addAll(facts(StoryFacts.of(verdict, pilot), names));
        lasting.ifPresent(worth -> lines.addAll(facts(StoryFacts.of(worth), names)));
        return List.copyOf(lines);
    }

    private static List<String> events(Story story, PrintedNames names) {
        List<EventLines.EventLine> told = EventLines.of(story);
        int times = told.stream().mapToInt(l -> l.time().length()).max().orElse(0);
        int numbers = String.valueOf(told.size()).length();
        List<String> lines = new ArrayList<>();
        int left = 0;
        for (EventLines.EventLine line : told) {
            if (folded(line, told.size())) {
                left++;
            } else {
                addFold(left, lines);
                left = 0;
                String head = "  " + right(line.time(), times) + "  " + chain(line, numbers);
                lines.addAll(
                        hung(head + (line.kind().isAct() ? " > " : "   "), names.in(line.event())));
            }
        }
        addFold(left, lines);
        return lines;
    }

    /** The event's number and that of its cause. */
    private static String chain(EventLines.EventLine line, int numbers) {
        String number = right(String.valueOf(line.number()), numbers);
        return line.because() > 0
                ? number + " <- " + right(String.valueOf(line.because()), numbers)
                : number + " ".repeat(4 + numbers);
    }

    /** Of a long story only what matters most is told between its beginning and its end. */
    private static boolean folded(EventLines.EventLine line, int of) {
        return of > LONGEST
                && line.number() > BEGINNING
                && line.number() <= of - END
                && !ALWAYS.contains(line.kind());
    }

    private static void addFold(int left, List<String> lines) {
        if (left > 0) {
            lines.add("  ... " + left + (left == 1 ? " event" : " events") + " left out here");
        }
    }

    private static List<String> facts(List<StoryFacts.StoryFact> facts, PrintedNames names) {
        List<String> lines = new ArrayList<>();
        for (StoryFacts.StoryFact fact : facts) {
            String label = fact.label() + ":";
            String head = "  " + label + " ".repeat(Math.max(1, LABEL - label.length())) + " ";
            lines.addAll(hung(head, names.in(fact.value())));
        }
        return lines;
    }

    /** A text behind its head; what does not fit stands below, indented as far. */
    private static List<String> hung(String head, String text) {
        List<String> lines = new ArrayList<>();
        for (String piece : TextTable.broken(text, WIDTH - head.length())) {
            lines.add((lines.isEmpty() ? head : " ".repeat(head.length())) + piece);
        }
        return lines;
    }

    private static String right(String text, int width) {
        return " ".repeat(width - text.length()) + text;
    }
}
