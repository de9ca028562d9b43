package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Verdict;
import stillturning.story.Story;

/** Stories as lines of plain text, in order of time. */
public final class StoryText {

    private static final int WIDTH = 100;
    private static final int LABEL = 40;

    private StoryText() {}

    /** What follows from a failure, with the pilot as planned, and what comes of it. */
    public static List<String> of(Verdict verdict) {
        List<String> lines = new ArrayList<>();
        lines.add(verdict.failure().name());
        lines.addAll(events(verdict.planned()));
        lines.addAll(facts(Ending.of(verdict)));
        return List.copyOf(lines);
    }

    /** The same under the candidate's title. */
    public static List<String> of(Appraisal appraisal, Verdict verdict) {
        List<String> lines = new ArrayList<>();
        lines.add(appraisal.candidate().title());
        lines.addAll(of(verdict));
        return List.copyOf(lines);
    }

    /** A story with any pilot, without a verdict on it. */
    public static List<String> of(Story story) {
        List<String> lines = new ArrayList<>();
        lines.add(story.failure().name() + ", pilot " + story.pilot().words());
        lines.addAll(events(story));
        lines.addAll(facts(Ending.of(story)));
        return List.copyOf(lines);
    }

    private static List<String> events(Story story) {
        List<Telling.Line> told = Telling.of(story);
        int times = told.stream().mapToInt(l -> l.time().length()).max().orElse(0);
        int numbers = String.valueOf(told.size()).length();
        List<String> lines = new ArrayList<>();
        for (Telling.Line line : told) {
            String number = String.valueOf(line.number());
            String head = "  " + right(line.time(), times) + "  " + right(number, numbers) + "  ";
            String because = line.because() > 0 ? "  [because of " + line.because() + "]" : "";
            lines.addAll(hung(head, line.event() + because));
        }
        return lines;
    }

    private static List<String> facts(List<Ending.Fact> facts) {
        List<String> lines = new ArrayList<>();
        for (Ending.Fact fact : facts) {
            String label = fact.label() + ":";
            String head = "  " + label + " ".repeat(Math.max(1, LABEL - label.length())) + " ";
            lines.addAll(hung(head, fact.value()));
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
