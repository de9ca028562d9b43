package stillturning.files.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.record.LogColumn.ColumnContent;
import stillturning.yaml.Excerpt;
import stillturning.yaml.Problem;

/** Reads the log of a discharge: volts and amps over time, a line a reading. */
public final class LogFile {

    private static final int MOST_BYTES = 64_000_000;
    private static final int MOST_READINGS = 2_000_000;
    private static final int MOST_PROBLEMS = 50;

    /** More than any instrument of a light aircraft shows (V), (A). */
    private static final double MOST_VOLTS = 1000;

    private static final double MOST_AMPS = 100_000;

    /** Longer than any discharge (s): a hundred days. */
    private static final double MOST_SECONDS = 8.64e6;

    private static final Pattern CLOCK =
            Pattern.compile("([0-9]{1,4}):([0-5][0-9]):([0-5][0-9]([.,][0-9]+)?)");

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][+-]?[0-9]+)?");

    /**
     * One reading.
     *
     * @param seconds time (s)
     * @param volts voltage (V)
     * @param amps current (A)
     */
    public record LogLine(double seconds, double volts, double amps) {}

    /**
     * What came of reading.
     *
     * @param lines none where there is a problem
     * @param problems the first of them, by place
     */
    public record ReadLog(List<LogLine> lines, List<Problem> problems) {
        public ReadLog {
            lines = problems.isEmpty() ? List.copyOf(lines) : List.of();
            problems = problems.stream().sorted().toList();
        }
    }

    private final Path file;
    private final List<Problem> problems = new ArrayList<>();
    private final List<LogLine> lines = new ArrayList<>();
    private final Map<ColumnContent, LogColumn> columns = new EnumMap<>(ColumnContent.class);
    private char separator = ',';
    private boolean headed;
    private int unsaid;
    private int firstUnsaid;

    private LogFile(Path file) {
        this.file = file;
    }

    /**
     * Reads a file in UTF-8.
     *
     * @throws IOException if it cannot be read at all
     */
    public static ReadLog read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return of(file, in.readNBytes(MOST_BYTES + 1));
        }
    }

    /** Reads what stands in a file in UTF-8, or would. */
    public static ReadLog of(Path file, byte[] bytes) {
        LogFile log = new LogFile(file);
        if (bytes.length > MOST_BYTES) {
            log.problem(1, 1, "the file is larger than 64 MB", "take a reading less often");
        } else {
            log.read(bytes);
        }
        return new ReadLog(log.lines, log.problems);
    }

    private void read(byte[] bytes) {
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        boolean text = !decoder.decode(in, out, true).isError();
        String read = out.flip().toString();
        int nul = read.indexOf('\0');
        if (!text || nul >= 0) {
            String before = text ? read.substring(0, nul) : read;
            int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
            int column = before.length() - before.lastIndexOf('\n');
            problem(line, column, "this is no text in UTF-8", "export the log as CSV text");
            return;
        }
        lines(read.startsWith("\ufeff") ? read.substring(1) : read);
        finish();
    }

    private void lines(String text) {
        int number = 0;
        int from = 0;
        while (from < text.length() && lines.size() <= MOST_READINGS) {
            int end = text.indexOf('\n', from);
            int to = end < 0 ? text.length() : end;
            int bare = to > from && text.charAt(to - 1) == '\r' ? to - 1 : to;
            number++;
            String line = text.substring(from, bare);
            if (!line.isBlank() && !line.startsWith("#")) {
                if (headed) {
                    reading(number, line);
                } else {
                    head(number, line);
                }
            }
            from = to + 1;
        }
    }

    private void finish() {
        if (lines.size() > MOST_READINGS) {
            problem(1, 1, "there are more than 2 million readings", "take one less often");
        } else if (!headed) {
            problem(1, 1, "the log is empty", "begin it with a line: " + wanted());
        } else if (lines.isEmpty() && problems.isEmpty()) {
            problem(1, 1, "no reading follows the heads of the columns", "add one a line");
        }
        if (unsaid > 0) {
            problems.add(
                    new Problem(
                            file,
                            firstUnsaid,
                            1,
                            "",
                            unsaid + " more lines are wrong",
                            "correct those above first"));
        }
    }

    private static String wanted() {
        return ColumnContent.TIME.example()
                + ", "
                + ColumnContent.VOLTS.example()
                + ", "
                + ColumnContent.AMPS.example();
    }

    private void head(int number, String line) {
        headed = true;
        separator = line.indexOf(';') >= 0 ? ';' : line.indexOf('\t') >= 0 ? '\t' : ',';
        List<String> heads = cells(line);
        int column = 1;
        for (int i = 0; i < heads.size(); i++) {
            Optional<LogColumn.StatedColumn> said = LogColumn.said(unquoted(heads.get(i)));
            if (said.isPresent()) {
                head(number, column, i, said.get());
            }
            column += heads.get(i).length() + 1;
        }
        for (ColumnContent of : ColumnContent.values()) {
            if (!columns.containsKey(of) && problems.isEmpty()) {
                problem(
                        number,
                        1,
                        "no column is headed as " + of.example(),
                        "begin the log with a line: " + wanted());
            }
        }
    }

    private void head(int number, int column, int position, LogColumn.StatedColumn said) {
        if (columns.containsKey(said.of())) {
            problem(
                    number,
                    column,
                    "a second column is headed as " + said.of().example(),
                    "leave in the head of one of them alone");
        } else if (said.factor().isEmpty()
                && !(said.of() == ColumnContent.TIME && said.unit().isEmpty())) {
            problem(
                    number,
                    column,
                    said.unit().isEmpty()
                            ? "the head does not say its unit"
                            : "\"" + Excerpt.of(said.unit()) + "\" is no unit of it",
                    "write one of " + said.of().units() + ": " + said.of().example());
        } else {
            // a time without a unit is one that a clock shows
            double factor = said.factor().orElse(Double.NaN);
            columns.put(said.of(), new LogColumn(said.of(), position, factor));
        }
    }

    private List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int at = line.indexOf(separator); at >= 0; at = line.indexOf(separator, from)) {
            cells.add(line.substring(from, at));
            from = at + 1;
        }
        cells.add(line.substring(from));
        return cells;
    }

    private static String unquoted(String cell) {
        String bare = cell.strip();
        boolean quoted = bare.length() > 1 && bare.startsWith("\"") && bare.endsWith("\"");
        return quoted ? bare.substring(1, bare.length() - 1).strip() : bare;
    }

    private void reading(int number, String line) {
        if (columns.size() < ColumnContent.values().length) {
            return;
        }
        List<String> cells = cells(line);
        int before = problems.size() + unsaid;
        double seconds = value(ColumnContent.TIME, number, cells, 0, MOST_SECONDS);
        double volts = value(ColumnContent.VOLTS, number, cells, -MOST_VOLTS, MOST_VOLTS);
        double amps = value(ColumnContent.AMPS, number, cells, -MOST_AMPS, MOST_AMPS);
        if (problems.size() + unsaid > before) {
            return;
        }
        if (!lines.isEmpty() && !(seconds > lines.get(lines.size() - 1).seconds)) {
            problem(
                    number,
                    place(cells, column(ColumnContent.TIME)),
                    "this is not later than the reading before it",
                    "put the readings in the order of time, one an instant");
            return;
        }
        lines.add(new LogLine(seconds, volts, amps));
    }

    private int column(ColumnContent of) {
        LogColumn column = columns.get(of);
        return column == null ? 0 : column.position();
    }

    private static int place(List<String> cells, int position) {
        int column = 1;
        for (int i = 0; i < position && i < cells.size(); i++) {
            column += cells.get(i).length() + 1;
        }
        return position < cells.size() ? column : column - 1;
    }

    private double value(
            ColumnContent of, int number, List<String> cells, double least, double most) {
        LogColumn column = columns.get(of);
        if (column == null) {
            return 0;
        }
        int place = place(cells, column.position());
        if (column.position() >= cells.size()) {
            problem(number, place, "the line ends before its " + name(of), "complete it");
            return 0;
        }
        String cell = unquoted(cells.get(column.position()));
        double value =
                of == ColumnContent.TIME
                        ? time(cell, column.factor())
                        : number(cell) * column.factor();
        if (Double.isNaN(value)) {
            problem(
                    number,
                    place,
                    "\"" + Excerpt.of(cell) + "\" is no number for its " + name(of),
                    of == ColumnContent.TIME && Double.isNaN(column.factor())
                            ? "write h:mm:ss, or the unit in the head: " + of.example()
                            : "write a number such as 12.4");
        } else if (!(value >= least && value <= most)) {
            problem(
                    number,
                    place,
                    "\"" + Excerpt.of(cell) + "\" is beyond any " + name(of),
                    String.format(Locale.ROOT, "write between %.0f and %.0f", least, most));
        }
        return value;
    }

    private static String name(ColumnContent of) {
        return of.name().toLowerCase(Locale.ROOT);
    }

    private double time(String cell, double factor) {
        Matcher clock = CLOCK.matcher(cell);
        if (clock.matches()) {
            return 3600 * Double.parseDouble(clock.group(1))
                    + 60 * Double.parseDouble(clock.group(2))
                    + Double.parseDouble(clock.group(3).replace(',', '.'));
        }
        return number(cell) * factor;
    }

    /** Not a number where it is none. */
    private double number(String cell) {
        String point = separator == ',' ? cell : cell.replace(',', '.');
        return NUMBER.matcher(point).matches() ? Double.parseDouble(point) : Double.NaN;
    }

    private void problem(int line, int column, String wrong, String right) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem(file, line, column, "", wrong, right));
        } else {
            firstUnsaid = unsaid == 0 ? line : firstUnsaid;
            unsaid++;
        }
    }
}
