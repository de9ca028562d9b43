package stillturning.dossier.record;

import java.util.List;
import stillturning.report.record.Line;

/** Some of what is asked for, under one title. */
public record AskedGroup(String title, List<Line> lines) {
    public AskedGroup {
        lines = List.copyOf(lines);
    }
}
