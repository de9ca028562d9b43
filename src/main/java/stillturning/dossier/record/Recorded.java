package stillturning.dossier.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.StudyReader;
import stillturning.files.record.MeasuredEntry;
import stillturning.files.record.MeasuredEntry.Item;
import stillturning.files.record.MeasuredFile;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.page.Document.Chapter;
import stillturning.report.record.MeasuredWords;
import stillturning.report.record.RecordedCandidate;
import stillturning.report.record.RecordedCandidate.Day;
import stillturning.report.record.RecordedCandidate.ReadingVerdict;
import stillturning.report.record.RecordedCandidate.RecordRow;
import stillturning.report.record.RecordedCandidate.ShownPrediction;
import stillturning.report.record.RecordedChapter;

/** What the records beside a study say, for the dossier. */
public final class Recorded {

    private Recorded() {}

    /**
     * The chapter on what was measured; none where there is no record.
     *
     * @param reader of the study
     * @param fingerprint of its files as they are
     */
    public static List<Chapter> chapters(StudyReader reader, Study study, String fingerprint) {
        return folder(reader).stream()
                .flatMap(
                        folder ->
                                RecordedChapter.of(
                                        study.candidates().stream()
                                                .map(c -> recorded(folder, c, fingerprint))
                                                .toList())
                                        .stream())
                .toList();
    }

    /** The study's folder, in which records have one of their own. */
    public static Optional<Path> folder(StudyReader reader) {
        return reader.documents().stream()
                .findFirst()
                .map(document -> document.file().toAbsolutePath().normalize().getParent());
    }

    private static RecordedCandidate recorded(
            Path folder, Candidate candidate, String fingerprint) {
        try {
            MeasuredFile file = MeasuredFile.of(folder, candidate.id());
            List<RecordRow> rows = new ArrayList<>();
            for (MeasuredEntry entry : file.entries()) {
                Day day = new Day(entry.date(), entry.by(), !entry.study().equals(fingerprint));
                entry.items().forEach(item -> rows.add(row(day, item)));
            }
            return new RecordedCandidate(
                    candidate.title(),
                    rows,
                    file.problems().stream().map(String::valueOf).toList());
        } catch (IOException e) {
            return new RecordedCandidate(
                    candidate.title(), List.of(), List.of("It cannot be read: " + e));
        }
    }

    private static RecordRow row(Day day, Item item) {
        return new RecordRow(
                day,
                item.what(),
                item.says(),
                item.measured(),
                new ShownPrediction(
                        item.prediction().likely(),
                        item.prediction().least().isEmpty()
                                ? ""
                                : item.prediction().least() + " to " + item.prediction().most()),
                new ReadingVerdict(item.verdict(), MeasuredWords.isGood(item.verdict())));
    }
}
