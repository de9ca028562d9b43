package stillturning.cli.decide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.cli.terminal.Paragraph;
import stillturning.quantity.Formats;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.AnswerFinding;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.CandidateLine;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstAnswer.NotAsked;

/** The first answer set into a terminal of {@value #COLUMNS} columns. */
final class FirstScreen {

    static final int COLUMNS = 100;

    /** Lines that the answer may take; three more are left for the caution under it. */
    static final int LINES = 37;

    private static final Pattern SAME_COMMAND = Pattern.compile("^decide \\S+ (?=--)");
    private static final int LABEL = 11;
    private static final int FEWEST_CANDIDATES = 2;
    private static final int TITLE = 1;
    private static final int MARKS = 2;
    private static final int NARROWEST_TITLE = 12;
    private static final int MOST_LEFT_OUT = 2;
    private static final int LINES_OF_LEFT_OUT = 2;
    private static final int LINES_OF_FINDING = 3;
    private static final int LINES_OF_FIRST = 4;
    private static final int LINES_OF_UNLIKE = 2;
    private static final int LINES_OF_LEGEND = 4;
    private static final int LINES_OF_QUESTIONS = 4;

    private final FirstAnswer answer;

    FirstScreen(FirstAnswer answer) {
        this.answer = answer;
    }

    /** Never more than {@link #LINES}: what does not fit is counted, and {@code --full} has it. */
    List<String> lines() {
        List<String> head = wrapped("", answer.title() + ": " + answer.scope() + ".");
        List<String> foot = foot();
        List<String> legend = legend();
        int forFindings =
                LINES
                        - head.size()
                        - foot.size()
                        - legend.size()
                        - 2
                        - Math.min(answer.matrix().candidates().size(), 12);
        List<String> lines = new ArrayList<>(head);
        lines.addAll(findings(Math.max(AnswerTopic.values().length, forFindings)));
        if (!answer.matrix().candidates().isEmpty()) {
            lines.add("");
            lines.addAll(matrix(LINES - lines.size() - legend.size() - foot.size()));
            lines.addAll(legend);
        }
        lines.addAll(foot);
        return lines;
    }

    /**
     * A finding as it is set.
     *
     * @param first whether it is the first of its topic
     */
    private record Said(AnswerTopic topic, boolean first, List<String> lines) {}

    /** Each topic's first finding whole, the others as far as there is room. */
    private List<String> findings(int room) {
        List<Said> all = new ArrayList<>();
        AnswerTopic before = null;
        int number = 0;
        for (AnswerFinding finding : answer.findings()) {
            boolean fresh = finding.topic() != before;
            number = fresh ? 1 : number + 1;
            boolean counted =
                    finding.topic() == AnswerTopic.BREAKS
                            && answer.of(AnswerTopic.BREAKS).size() > 1;
            String label = fresh ? finding.topic().words() : "";
            String lead = label + " ".repeat(LABEL - label.length());
            List<String> block =
                    atMost(
                            mostLines(finding.topic()),
                            wrapped(lead, (counted ? number + ". " : "") + finding.text()));
            all.add(new Said(finding.topic(), fresh, block));
            before = finding.topic();
        }
        return fitting(all, room);
    }

    private static int mostLines(AnswerTopic topic) {
        return switch (topic) {
            case FIRST -> LINES_OF_FIRST;
            case UNLIKE -> LINES_OF_UNLIKE;
            case FIRM, EQUAL_BATTERIES, BREAKS, NEXT -> LINES_OF_FINDING;
        };
    }

    /** What the first one breaks goes before what else is more than the first of its topic. */
    private static List<String> fitting(List<Said> all, int room) {
        Set<Said> shown = Collections.newSetFromMap(new IdentityHashMap<>());
        all.stream().filter(Said::first).forEach(shown::add);
        int left = room - shown.stream().mapToInt(s -> s.lines.size()).sum();
        for (boolean breaks : new boolean[] {true, false}) {
            for (Said one : all) {
                boolean asked = !one.first && (one.topic == AnswerTopic.BREAKS) == breaks;
                if (asked && one.lines.size() <= left - 1) {
                    left -= one.lines.size();
                    shown.add(one);
                }
            }
        }
        List<String> lines = new ArrayList<>();
        all.stream().filter(shown::contains).forEach(s -> lines.addAll(s.lines));
        if (shown.size() < all.size()) {
            lines.add(
                    " ".repeat(LABEL)
                            + "... and "
                            + (all.size() - shown.size())
                            + " more with --full");
        }
        return lines;
    }

    /** A line for each candidate, as far as there is room. */
    private List<String> matrix(int room) {
        List<CandidateLine> all = answer.matrix().candidates();
        List<List<String>> rows = new ArrayList<>();
        rows.add(head());
        boolean cut = all.size() > room - 1;
        int shown = cut ? Math.max(FEWEST_CANDIDATES, room - 2) : all.size();
        all.stream().limit(shown).map(FirstScreen::cells).forEach(rows::add);
        List<String> lines = new ArrayList<>(aligned(rows));
        if (cut) {
            lines.add("    ... and " + (all.size() - shown) + " more with --full");
        }
        return lines;
    }

    private List<String> head() {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < answer.matrix().requirements().size(); i++) {
            letters.append(letter(i));
        }
        List<String> head = new ArrayList<>(List.of("", "candidate", letters.toString(), "points"));
        head.addAll(answer.matrix().criteria());
        return head;
    }

    private static String letter(int requirement) {
        return String.valueOf((char) ('A' + requirement));
    }

    private static List<String> cells(CandidateLine line) {
        String marks = line.met().stream().map(m -> m ? "+" : "-").collect(Collectors.joining());
        List<String> cells =
                new ArrayList<>(
                        List.of(
                                String.valueOf(line.rank()),
                                line.title(),
                                marks,
                                Formats.fixed(line.points(), 3)));
        cells.addAll(line.values());
        return cells;
    }

    /** Columns of one width each; the titles take what is left. */
    private static List<String> aligned(List<List<String>> rows) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        int others = columns - 1;
        for (int i = 0; i < columns; i++) {
            others += i == TITLE ? 0 : widths[i];
        }
        widths[TITLE] = Math.max(NARROWEST_TITLE, Math.min(widths[TITLE], COLUMNS - others));
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = shortened(row.get(i), widths[i]);
            String space = " ".repeat(widths[i] - cell.length());
            boolean left = i == TITLE || i == MARKS;
            line.append(i == 0 ? "" : " ").append(left ? cell + space : space + cell);
        }
        return shortened(line.toString().stripTrailing(), COLUMNS);
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most - 2).stripTrailing() + "..";
    }

    /** What the letters mean. */
    private List<String> legend() {
        List<String> requirements = answer.matrix().requirements();
        if (requirements.isEmpty()) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        for (int i = 0; i < requirements.size(); i++) {
            words.add(letter(i) + " " + requirements.get(i));
        }
        return atMost(
                LINES_OF_LEGEND, wrapped("", "Met +, missed -: " + String.join("; ", words) + "."));
    }

    private List<String> foot() {
        List<String> lines = new ArrayList<>();
        List<LeftOut> leftOut = answer.leftOut();
        for (LeftOut one : leftOut.subList(0, Math.min(MOST_LEFT_OUT, leftOut.size()))) {
            lines.addAll(
                    atMost(
                            LINES_OF_LEFT_OUT,
                            wrapped("left out: ", one.candidate() + ": " + one.reason())));
        }
        if (leftOut.size() > MOST_LEFT_OUT) {
            lines.add(
                    "left out: "
                            + leftOut.stream()
                                    .skip(MOST_LEFT_OUT)
                                    .map(LeftOut::candidate)
                                    .collect(
                                            Collectors.collectingAndThen(
                                                    Collectors.joining(", "),
                                                    names -> shortened(names, COLUMNS - 10))));
        }
        if (!answer.notAsked().isEmpty()) {
            String questions =
                    answer.notAsked().stream()
                            .map(FirstScreen::question)
                            .collect(Collectors.joining("; "));
            lines.addAll(
                    atMost(
                            LINES_OF_QUESTIONS,
                            wrapped("not asked: ", "all tables (--full); " + questions + ".")));
        }
        return lines;
    }

    /** What is asked by the same command goes by its options. */
    private static String question(NotAsked one) {
        return one.what() + " (" + SAME_COMMAND.matcher(one.how()).replaceFirst("") + ")";
    }

    /** The first lines, with a sign that there are more. */
    private static List<String> atMost(int most, List<String> lines) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> some = new ArrayList<>(lines.subList(0, most));
        String last = some.get(most - 1);
        some.set(most - 1, last.substring(0, Math.min(last.length(), COLUMNS - 4)) + " ...");
        return List.copyOf(some);
    }

    private static List<String> wrapped(String lead, String text) {
        return Stream.of(Paragraph.of(lead, text).split("\n", -1))
                .map(line -> shortened(line, COLUMNS))
                .toList();
    }
}
