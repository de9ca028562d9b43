package stillturning.desktop.viewmodel;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import javafx.beans.property.SimpleDoubleProperty;
import stillturning.desktop.draft.Change;
import stillturning.desktop.viewmodel.breaking.Breaking;
import stillturning.desktop.viewmodel.breaking.FailureChoice;

/**
 * Measures what a person waits for at the desk, in Sandpiper's size: the first ranking, an edit of
 * one candidate until it is answered, one of what all share; and what lies in memory after so many
 * edits and stories as an hour may hold.
 */
public final class DeskSpeed {

    private static final String CANDIDATE = "two-alternators";
    private static final int EDITS = 60;
    private static final int FEW = 5;
    private static final int STORIES = 100;

    private final OpenDesk open;
    private final Desk desk;

    private DeskSpeed(Path folder) throws IOException {
        open = OpenDesk.over("sandpiper", folder);
        desk = open.desk();
    }

    /** Run with the class path of the tests. */
    public static void main(String[] arguments) throws IOException {
        long begun = System.nanoTime();
        DeskSpeed speed = new DeskSpeed(Files.createTempDirectory("desk"));
        tell("open", List.of(System.nanoTime() - begun));
        speed.open.untilAssessed();
        tell("open and first ranking", List.of(System.nanoTime() - begun));
        speed.desk.open(CANDIDATE);
        tell(
                "one candidate changed, all ranked",
                speed.edits(CANDIDATE + ".yaml", "2.0 m (guess)", EDITS));
        tell("what all share changed", speed.edits(Desk.STUDY_FILE, "time-to-land: 30 min", FEW));
        tell("a story", speed.stories());
        speed.memory();
        System.exit(0);
    }

    /**
     * Changes a number again and again.
     *
     * @param value how it stands in the file: {@code 2.0 m (guess)}
     */
    private List<Long> edits(String file, String value, int times) {
        List<Long> took = new ArrayList<>();
        for (int edit = 1; edit <= times; edit++) {
            String text = text(file);
            String other = changed(text, value, edit);
            long begun = System.nanoTime();
            desk.attempt(Change.typing(file, other)).ifPresent(DeskSpeed::refuse);
            open.until(() -> !desk.work().busy("Reading the study"));
            open.untilAssessed();
            took.add(System.nanoTime() - begun);
        }
        return took;
    }

    private static String changed(String text, String value, int edit) {
        String number = value.replaceAll("[^0-9.]", "");
        String pattern = Pattern.quote(value).replace(number, "\\E[0-9.]+\\Q");
        String next = Double.toString(Double.parseDouble(number) + 0.1 * edit);
        String other = text.replaceFirst(pattern, value.replace(number, next));
        if (other.equals(text)) {
            refuse("nothing to change: " + value);
        }
        return other;
    }

    private String text(String file) {
        return Objects.requireNonNull(desk.texts().get().texts().get(file));
    }

    private static void refuse(String why) {
        throw new IllegalStateException(why);
    }

    private List<Long> stories() {
        Breaking breaking = new Breaking(desk, new SimpleDoubleProperty(1.6));
        List<FailureChoice> choices = List.copyOf(breaking.offered());
        List<Long> took = new ArrayList<>();
        for (int story = 0; story < STORIES; story++) {
            FailureChoice next = choices.get(story % choices.size());
            long begun = System.nanoTime();
            breaking.pick(next);
            open.until(() -> !breaking.coming().get());
            took.add(System.nanoTime() - begun);
        }
        return took;
    }

    private static void tell(String what, List<Long> nanoseconds) {
        List<Long> sorted = nanoseconds.stream().sorted().toList();
        System.out.printf(
                "%-36s median %.0f ms, 95 %% %.0f ms, worst %.0f ms%n",
                what,
                sorted.get(sorted.size() / 2) / 1e6,
                sorted.get(sorted.size() * 95 / 100) / 1e6,
                sorted.get(sorted.size() - 1) / 1e6);
    }

    private void memory() {
        System.gc();
        System.out.printf(
                "in use: %d MB of heap%n",
                ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed() >> 20);
    }
}
