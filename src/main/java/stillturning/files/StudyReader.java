package stillturning.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.files.StudyFolder.File;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.Notation;
import stillturning.files.entry.StudyEntry;
import stillturning.files.entry.Values;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.yaml.Binder;
import stillturning.yaml.Bound;
import stillturning.yaml.Problem;

/** Reads a study's folder, every mistake in every file at once. */
public final class StudyReader {

    private final StudyFolder folder;
    private final String id;
    private final Variation variation;
    private final Binder binder = Notation.binder();
    private final List<Problem> problems = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final List<Assumption> assumptions = new ArrayList<>();
    private final Map<String, List<Expanded>> expanded = new LinkedHashMap<>();

    private StudyReader(Path folder, Variation variation) {
        this.folder = StudyFolder.read(folder);
        this.id = String.valueOf(folder.toAbsolutePath().normalize().getFileName());
        this.variation = variation;
    }

    /** The study in a folder, or everything that is wrong with it. */
    public static ReadStudy read(Path folder) {
        return read(folder, Variation.NONE);
    }

    /** The study in a folder with one value changed, or everything that is wrong with it. */
    public static ReadStudy read(Path folder, Variation variation) {
        return new StudyReader(folder, variation).read();
    }

    private ReadStudy read() {
        problems.addAll(folder.problems());
        remarks.addAll(folder.remarks());
        Optional<Frame> frame = folder.study().flatMap(this::frame);
        List<Candidate> candidates = new ArrayList<>();
        for (File file : folder.candidates()) {
            candidate(file, frame).ifPresent(candidates::add);
        }
        Collections.sort(problems);
        remarks.sort(
                Comparator.comparing((Remark r) -> r.file().toString())
                        .thenComparingInt(Remark::line)
                        .thenComparingInt(Remark::column));
        return new ReadStudy(
                frame.filter(f -> problems.isEmpty()).map(f -> study(f, candidates)),
                problems,
                remarks,
                assumptions,
                expanded,
                folder.fingerprint());
    }

    private Study study(Frame frame, List<Candidate> candidates) {
        return new Study(id, frame.heading(), frame.aircraft(), frame.goals(), candidates);
    }

    private Optional<Frame> frame(File file) {
        Bound<StudyEntry> bound = binder.bind(file.document(), StudyEntry.class);
        problems.addAll(bound.problems());
        if (bound.value().isEmpty()) {
            return Optional.empty();
        }
        Ledger ledger = new Ledger(file.name(), variation);
        StudyEntry entry = Values.mapped(bound.value().get(), "", ledger);
        Report report = new Report(bound.places());
        Set<String> names =
                folder.candidates().stream()
                        .map(File::id)
                        .collect(Collectors.toCollection(java.util.TreeSet::new));
        Optional<Frame> frame = new FrameReader(entry, report).read(names);
        take(report, ledger);
        return frame;
    }

    private Optional<Candidate> candidate(File file, Optional<Frame> frame) {
        Bound<CandidateEntry> bound = binder.bind(file.document(), CandidateEntry.class);
        problems.addAll(bound.problems());
        if (bound.value().isEmpty() || frame.isEmpty()) {
            return Optional.empty();
        }
        Report report = new Report(bound.places());
        Ledger ledger = new Ledger(file.name(), variation);
        CandidateReader reader =
                new CandidateReader(file.id(), bound.value().get(), frame.get(), report, ledger);
        Optional<Candidate> candidate = reader.read();
        expanded.put(file.id(), reader.expanded());
        take(report, ledger);
        return candidate;
    }

    private void take(Report report, Ledger ledger) {
        problems.addAll(report.problems());
        remarks.addAll(report.remarks());
        assumptions.addAll(ledger.assumptions());
    }
}
