package stillturning.report.explored;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import stillturning.model.goal.CriterionName;
import stillturning.report.ResultText;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Mark.Anchor;
import stillturning.report.drawing.Mark.Text;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Stroke;
import stillturning.report.drawing.TextWidths;
import stillturning.report.drawing.plot.Ticks;
import stillturning.report.explored.ExploredFront.ExploredLayout;

/** Weight against complexity: what is on the front as discs, what was drawn as squares. */
public final class FrontPicture {

    private static final double WIDTH = 820;
    private static final double HEIGHT = 520;
    private static final double LEFT = 70;
    private static final double RIGHT = 30;
    private static final double TOP = 60;
    private static final double BOTTOM = 80;
    private static final double HALF = 5;
    private static final double SIZE = 11;
    private static final double GAP = 4;
    private static final int TICKS = 8;

    private final ExploredFront explored;
    private final List<ExploredLayout> all;
    private final Axis across;
    private final Axis up;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();

    private FrontPicture(ExploredFront explored) {
        this.explored = explored;
        this.all =
                Stream.concat(explored.front().stream(), explored.drawings().stream())
                        .distinct()
                        .toList();
        this.across = axis(CriterionName.WEIGHT, LEFT, WIDTH - RIGHT);
        this.up = axis(CriterionName.COMPLEXITY, HEIGHT - BOTTOM, TOP);
    }

    /** An axis from one place on the paper to another. */
    private record Axis(double low, double high, double from, double to) {
        double place(double value) {
            return from + (value - low) / (high - low) * (to - from);
        }
    }

    /** The picture. */
    public static Picture of(ExploredFront explored) {
        return new FrontPicture(explored).picture();
    }

    private Axis axis(CriterionName criterion, double from, double to) {
        ToDoubleFunction<ExploredLayout> value = layout -> explored.value(layout, criterion);
        double low = all.stream().mapToDouble(value).min().orElse(0);
        double high = all.stream().mapToDouble(value).max().orElse(1);
        double room = Math.max((high - low) / TICKS, 0.5);
        return new Axis(low - room, high + room, from, to);
    }

    private Picture picture() {
        String title = "Layouts of " + explored.assessment().study().heading().title();
        marks.add(
                new Text(
                        title,
                        LEFT,
                        24,
                        Anchor.START,
                        new Mark.Type(Mark.Type.TITLE_SIZE, true, Colours.STROKE.light)));
        axes();
        List<ExploredLayout> shown =
                Stream.concat(
                                explored.front().stream(),
                                explored.drawings().stream().filter(d -> !explored.isOnFront(d)))
                        .sorted(Comparator.comparingDouble(this::y))
                        .toList();
        // nothing is written over a mark
        shown.forEach(l -> labels.add(new Label(x(l) - HALF, y(l) + HALF - 1, 2 * HALF)));
        shown.forEach(this::mark);
        legend();
        return new Picture(
                "front",
                title,
                "Weight across, complexity up: "
                        + explored.front().size()
                        + " layouts that nothing looked at outdoes, and "
                        + explored.drawings().size()
                        + " that were drawn",
                WIDTH,
                HEIGHT,
                marks);
    }

    private void axes() {
        Stroke grid = Stroke.line(0.6, Colours.GRID.light);
        for (double value : Ticks.within(across.low, across.high, TICKS).values()) {
            double x = across.place(value);
            line(x, TOP, x, HEIGHT - BOTTOM, grid);
            say(Ticks.text(value), x, HEIGHT - BOTTOM + 16, Anchor.MIDDLE);
        }
        for (double value : Ticks.within(up.low, up.high, TICKS).values()) {
            double y = up.place(value);
            line(LEFT, y, WIDTH - RIGHT, y, grid);
            say(Ticks.text(value), LEFT - 8, y + 4, Anchor.END);
        }
        say("complexity", LEFT - 8, TOP - 12, Anchor.START);
        say("weight in kg", WIDTH - RIGHT, HEIGHT - BOTTOM + 32, Anchor.END);
    }

    private void mark(ExploredLayout layout) {
        if (explored.front().contains(layout)) {
            disc(layout);
        } else {
            square(layout);
        }
    }

    private void disc(ExploredLayout layout) {
        double x = x(layout);
        double y = y(layout);
        boolean drawn = layout.steps().isEmpty();
        marks.add(
                new Mark.PartMarks(
                        layout.id(),
                        layout.id(),
                        List.of(
                                drawn
                                        ? box(x, y, Stroke.solid(Colours.BLUE.light))
                                        : round(x, y, Stroke.solid(Colours.BLUE.light)))));
        label(layout, x, y);
    }

    private void square(ExploredLayout drawing) {
        double x = x(drawing);
        double y = y(drawing);
        boolean meets = explored.missed(drawing).isEmpty();
        String ink = meets ? Colours.BLUE.light : Colours.RED.light;
        Stroke pen = Stroke.line(1.6, ink).filled(Stroke.PAPER);
        List<Mark> own = new ArrayList<>(List.of(box(x, y, pen)));
        if (!meets) {
            own.add(
                    new Mark.Path(
                            path(
                                    "M %.1f %.1f L %.1f %.1f M %.1f %.1f L %.1f %.1f",
                                    x - HALF, y - HALF, x + HALF, y + HALF, x - HALF, y + HALF,
                                    x + HALF, y - HALF),
                            Stroke.line(1.6, ink)));
        }
        marks.add(new Mark.PartMarks(drawing.id(), drawing.id(), own));
        label(drawing, x, y);
    }

    /** Beside its mark, on the side on which there is room, below what is written there. */
    private void label(ExploredLayout layout, double x, double y) {
        String words = layout.id() + ", " + lasts(layout);
        double width = TextWidths.of(words, SIZE, false);
        boolean toTheRight = x + HALF + GAP + width < WIDTH - GAP;
        double from = toTheRight ? x + HALF + GAP : x - HALF - GAP - width;
        double line = y + HALF - 1;
        for (Label other : labels) {
            if (other.covers(from, line, width)) {
                line = other.line + SIZE + 2;
            }
        }
        labels.add(new Label(from, line, width));
        labels.sort(Comparator.comparingDouble(Label::line));
        say(words, from, line, Anchor.START);
    }

    /** Where something is written. */
    private record Label(double from, double line, double width) {
        boolean covers(double other, double otherLine, double otherWidth) {
            return from < other + otherWidth
                    && other < from + width
                    && Math.abs(line - otherLine) < SIZE + 1;
        }
    }

    private void legend() {
        double y = HEIGHT - 20;
        say("disc: found, outdone by nothing", LEFT, y, Anchor.START);
        say("full square: drawn, outdone by nothing", LEFT + 200, y, Anchor.START);
        say("square: drawn", LEFT + 435, y, Anchor.START);
        say("crossed: misses a requirement", LEFT + 530, y, Anchor.START);
    }

    private String lasts(ExploredLayout layout) {
        return ResultText.seconds(explored.value(layout, CriterionName.ENDURANCE));
    }

    private double x(ExploredLayout layout) {
        return across.place(explored.value(layout, CriterionName.WEIGHT));
    }

    private double y(ExploredLayout layout) {
        return up.place(explored.value(layout, CriterionName.COMPLEXITY));
    }

    private void say(String words, double x, double y, Anchor anchor) {
        marks.add(new Text(words, x, y, anchor, new Mark.Type(SIZE, false, Colours.STROKE.light)));
    }

    private void line(double x, double y, double toX, double toY, Stroke pen) {
        marks.add(new Mark.Path(path("M %.1f %.1f L %.1f %.1f", x, y, toX, toY), pen));
    }

    private static Mark.Path box(double x, double y, Stroke pen) {
        return new Mark.Path(
                path(
                        "M %.1f %.1f L %.1f %.1f L %.1f %.1f L %.1f %.1f Z",
                        x - HALF, y - HALF, x + HALF, y - HALF, x + HALF, y + HALF, x - HALF,
                        y + HALF),
                pen);
    }

    private static Mark.Path round(double x, double y, Stroke pen) {
        return new Mark.Path(
                path(
                        "M %.1f %.1f A %.1f %.1f 0 1 0 %.1f %.1f A %.1f %.1f 0 1 0 %.1f %.1f Z",
                        x - HALF, y, HALF, HALF, x + HALF, y, HALF, HALF, x - HALF, y),
                pen);
    }

    private static String path(String form, Object... numbers) {
        return String.format(Locale.ROOT, form, numbers);
    }
}
