package stillturning.dossier.record;

import java.util.List;
import stillturning.report.record.FormLine;

/** Some of what is asked for, under one title. */
public record AskedGroup(String title, List<FormLine> lines) {
    public AskedGroup {
        lines = List.copyOf(lines);
    }
}
