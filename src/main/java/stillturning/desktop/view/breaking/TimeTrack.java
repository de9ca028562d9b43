package stillturning.desktop.view.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import stillturning.desktop.view.Labels;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.Scrubber;
import stillturning.desktop.viewmodel.breaking.TimeAxis;
import stillturning.report.EventLines;

/** A story's time as a line with a mark for each event and a handle at the present. */
final class TimeTrack extends Region {

    /** Of the whole line, for a press of a key that moves between events. */
    private static final double SMALL_STEP = 0.002;

    private final Breaking breaking;
    private final Scrubber scrubber;
    private final Region line = region("time-line");
    private final Region past = region("time-past");
    private final Region handle = region("time-handle");
    private final List<Mark> marks = new ArrayList<>();

    /** One or more events at one time. */
    private record Mark(double position, Region tick, Label number) {}

    TimeTrack(Breaking breaking) {
        this.breaking = breaking;
        this.scrubber = breaking.scrubber();
        setId("time-track");
        getStyleClass().add("time-track");

        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        scrubber.position().addListener((of, before, now) -> requestLayout());
        scrubber.seconds().addListener((of, before, now) -> say());
        say();
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::drag);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(KeyEvent.KEY_PRESSED, this::press);
        mark();
    }

    private static Region region(String style) {
        Region region = new Region();
        region.getStyleClass().add(style);
        return region;
    }

    private void say() {
        setAccessibleText(
                EventLines.time(scrubber.seconds().get())
                        + " into the story; left and right go from event to event");
        notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
    }

    /** Marks the events of the story again. */
    void mark() {
        marks.clear();
        Optional<TimeAxis> axis = scrubber.axis();
        List<EventLines.EventLine> told = breaking.lines();
        if (axis.isPresent()) {
            int from = 0;
            while (from < told.size()) {
                int to = from + 1;
                while (to < told.size() && told.get(to).seconds() == told.get(from).seconds()) {
                    to++;
                }
                double position = axis.get().position(told.get(from).seconds());
                marks.add(mark(position, told.subList(from, to)));
                from = to;
            }
        }
        getChildren().setAll(line, past);
        marks.forEach(m -> getChildren().addAll(m.tick, m.number));
        getChildren().add(handle);
        handle.setVisible(axis.isPresent());
        requestLayout();
    }

    private static Mark mark(double position, List<EventLines.EventLine> together) {
        Region tick = region("time-tick");
        boolean engine = together.stream().anyMatch(l -> l.kind().name().startsWith("ENGINE"));
        boolean pilot = together.stream().anyMatch(l -> l.kind().isAct());
        if (engine) {
            tick.getStyleClass().add("time-tick-engine");
        }
        int first = together.get(0).number();
        int last = together.get(together.size() - 1).number();
        String sign = pilot ? "\u25B8" : engine ? "\u25CF" : "";
        String numbers = first == last ? "" + first : first + "\u2013" + last;
        Label number = Labels.of(sign + numbers, "time-number");
        StringBuilder words = new StringBuilder(together.get(0).time());
        together.forEach(l -> words.append('\n').append(l.number()).append("  ").append(l.event()));
        Tooltip tip = new Tooltip(words.toString());
        Tooltip.install(tick, tip);
        number.setTooltip(tip);
        return new Mark(position, tick, number);
    }

    private void drag(MouseEvent event) {
        if (event.getButton() == MouseButton.PRIMARY && scrubber.axis().isPresent()) {
            requestFocus();
            scrubber.playing().set(false);
            Insets in = getInsets();
            double width = getWidth() - in.getLeft() - in.getRight();
            double position = Math.max(0, Math.min(1, (event.getX() - in.getLeft()) / width));
            marks.stream()
                    .filter(m -> Math.abs(m.position - position) * width < 4)
                    .findFirst()
                    .ifPresentOrElse(
                            m -> scrubber.position().set(m.position),
                            () -> scrubber.position().set(position));
            event.consume();
        }
    }

    private void press(KeyEvent event) {
        boolean small = event.isShiftDown();
        switch (event.getCode()) {
            case RIGHT -> step(small, SMALL_STEP, scrubber::next);
            case LEFT -> step(small, -SMALL_STEP, scrubber::previous);
            case HOME -> scrubber.to(0);
            case END -> scrubber.axis().ifPresent(a -> scrubber.to(a.endSeconds()));
            case SPACE -> scrubber.toggle();
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void step(boolean small, double by, Runnable toEvent) {
        if (small) {
            scrubber.position().set(Math.max(0, Math.min(1, scrubber.position().get() + by)));
        } else {
            toEvent.run();
        }
    }

    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> scrubber.position().get();
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> 1.0;
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    protected void layoutChildren() {
        Insets in = getInsets();
        double width = getWidth() - in.getLeft() - in.getRight();
        double letters = marks.isEmpty() ? 0 : marks.get(0).number.prefHeight(-1);
        double top = in.getTop() + letters;
        double height = getHeight() - top - in.getBottom();
        double thick = line.prefHeight(-1);
        double middle = top + height / 2;
        double now = in.getLeft() + scrubber.position().get() * width;
        line.resizeRelocate(in.getLeft(), middle - thick / 2, width, thick);
        past.resizeRelocate(in.getLeft(), middle - thick / 2, now - in.getLeft(), thick);
        double free = Double.NEGATIVE_INFINITY;
        for (Mark mark : marks) {
            double x = in.getLeft() + mark.position * width;
            double wide = mark.tick.prefWidth(-1);
            double tall = mark.tick.prefHeight(-1);
            mark.tick.resizeRelocate(x - wide / 2, middle - tall / 2, wide, tall);
            double words = mark.number.prefWidth(-1);
            double left = Math.max(0, Math.min(getWidth() - words, x - words / 2));
            mark.number.setVisible(left >= free);
            mark.number.resizeRelocate(left, in.getTop(), words, letters);
            free = mark.number.isVisible() ? left + words + 3 : free;
        }
        double size = handle.prefHeight(-1);
        double across = handle.prefWidth(-1);
        handle.resizeRelocate(now - across / 2, middle - size / 2, across, size);
    }
}
