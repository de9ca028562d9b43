package stillturning.timeline;

import java.util.ArrayList;
import java.util.List;

/** Writes the story's events down, each with what led to it. */
final class Journal {

    private final List<Happening> happenings = new ArrayList<>();
    private int latest = -1;
    private int cause = -1;

    void write(double seconds, Happening.Kind kind, String part, String words) {
        happenings.add(new Happening(seconds, kind, part, words, cause));
        latest = happenings.size() - 1;
    }

    /** The network was solved: what was written before is the cause of what comes after. */
    void solved() {
        cause = latest;
    }

    List<Happening> happenings() {
        return List.copyOf(happenings);
    }
}
