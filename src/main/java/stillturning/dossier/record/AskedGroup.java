package stillturning.dossier.record;

import stillturning.report.record.FormLine;

import java.util.List;

/** Some of what is asked for, under one title. */
public record AskedGroup(String title, List<FormLine> lines) {
    public AskedGroup {
        lines = List.copyOf(lines);
    }
}
