package stillturning.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.files.ReadCandidate.ReadNotes;
import stillturning.files.StudyFolder.File;
import stillturning.files.candidate.ChancesReader;
import stillturning.files.candidate.CheckedStudy;
import stillturning.files.candidate.CheckedStudyReader;
import stillturning.files.candidate.Expanded;
import stillturning.files.candidate.InstallationReader;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.StudyEntry;
import stillturning.files.entry.Values;
import stillturning.files.finding.FileRemark;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.value.Assumption;
import stillturning.files.value.Range;
import stillturning.files.value.ValueLog;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Chances.Odds;
import stillturning.model.Installation;
import stillturning.model.Installation.FittedParts;
import stillturning.model.Study;
import stillturning.parts.element.Cell;
import stillturning.quantity.Dimension;
import stillturning.yaml.BindResult;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;

/**
 * Reads a study's folder, every mistake in every file at once. Opened once, it makes the study as
 * often as one likes, each time with one value changed.
 */
public final class StudyReader {

    /** A file and the entry in it. */
    private record Written<T>(File file, BindResult<T> bound) {}

    private final StudyFolder folder;
    private final String id;
    private final Optional<Written<StudyEntry>> study;
    private final List<Written<CandidateEntry>> candidates;
    private final KeptReadings kept;

    private StudyReader(StudyFolder folder, String id) {
        this(folder, id, Optional.empty(), List.of(), new KeptReadings());
    }

    /** What was bound before is not bound again where the document is the same. */
    private StudyReader(
            StudyFolder folder,
            String id,
            Optional<Written<StudyEntry>> study,
            List<Written<CandidateEntry>> candidates,
            KeptReadings kept) {
        this.kept = kept;
        this.folder = folder;
        this.id = id;
        this.study = folder.study().map(f -> written(f, study.stream(), StudyEntry.class));
        this.candidates =
                folder.candidates().parallelStream()
                        .map(f -> written(f, candidates.stream(), CandidateEntry.class))
                        .toList();
    }

    @SuppressWarnings("ReferenceEquality") // an equal text in another document has other places
    private static <T extends Record> Written<T> written(
            File file, Stream<Written<T>> before, Class<T> type) {
        return before.filter(w -> w.file.document() == file.document())
                .findFirst()
                .map(w -> new Written<>(file, w.bound))
                .orElseGet(
                        () ->
                                new Written<>(
                                        file, FileNotations.binder().bind(file.document(), type)));
    }

    /** Reads the files of a folder; what is wrong with them shows when the study is made. */
    public static StudyReader open(Path folder) {
        return new StudyReader(
                StudyFolder.read(folder),
                String.valueOf(folder.toAbsolutePath().normalize().getFileName()));
    }

    /**
     * A candidate's file with other sizes of wires and protectors, everything else as it is.
     *
     * @param places where each part of the candidate is asked for
     * @param awgByWire size by wire, by its name in the table
     * @param ampsByProtector rating by protector (A)
     * @throws EditRefused if the file is written in a way that forbids it
     * @throws IllegalArgumentException if there is no such candidate
     */
    public YamlDocument resized(
            String candidate,
            Map<String, PartPlace> places,
            Map<String, String> awgByWire,
            Map<String, Double> ampsByProtector)
            throws EditRefused {
        return new Resizing(document(candidate), places).with(awgByWire, ampsByProtector);
    }

    /**
     * A candidate's file as it was read.
     *
     * @throws IllegalArgumentException if there is no such candidate
     */
    public YamlDocument document(String candidate) {
        return folder.candidates().stream()
                .filter(f -> f.id().equals(candidate))
                .map(File::document)
                .findFirst()
                .orElseThrow(
                        () -> new IllegalArgumentException("no candidate " + candidate + " here"));
    }

    /** The same study with another text in one of its files; nothing is written. */
    public StudyReader with(YamlDocument changed) {
        return new StudyReader(folder.with(changed), id, study, candidates, kept);
    }

    /**
     * The study of the same folder with these files in it and no others; nothing is read from disk.
     *
     * @param unread what is wrong with the folder beside what stands in these files
     */
    public StudyReader holding(Collection<YamlDocument> documents, List<Problem> unread) {
        return new StudyReader(folder.holding(documents, unread), id, study, candidates, kept);
    }

    /** Every file of the study as it was read, its own first. */
    public List<YamlDocument> documents() {
        return Stream.concat(folder.study().stream(), folder.candidates().stream())
                .map(File::document)
                .toList();
    }

    /** The files of the candidates. */
    public List<Path> candidateFiles() {
        return folder.candidates().stream().map(f -> f.document().file()).toList();
    }

    /** The study of the same folder as if some of its files were not there. */
    public StudyReader without(Collection<Path> files) {
        return new StudyReader(folder.without(files), id, study, candidates, kept);
    }

    /** The study in a folder, or everything that is wrong with it. */
    public static ReadStudy read(Path folder) {
        return open(folder).study(Variation.NONE);
    }

    /** The study in a folder with one value changed, or everything that is wrong with it. */
    public static ReadStudy read(Path folder, Variation variation) {
        return open(folder).study(variation);
    }

    /** The study of the opened folder with one value changed, or everything that is wrong. */
    public ReadStudy study(Variation variation) {
        return new Making(variation, candidates).study();
    }

    /** The study of the opened folder for somebody who is at work on it, mistakes and all. */
    public LenientReading reading() {
        Making making = new Making(Variation.NONE, candidates);
        return making.reading(making.study());
    }

    /** The forms of the study's files; absent if there is no file of the study. */
    public Optional<StudyForms> forms() {
        return study.map(written -> new StudyForms(written.file.document()));
    }

    /**
     * A reader of other texts for the files of single candidates; absent if the study's own file
     * has a mistake.
     */
    public Optional<OtherTexts> otherTexts() {
        Making making = new Making(Variation.NONE, List.of());
        boolean sound = making.study().study().isPresent();
        return study.filter(written -> sound)
                .map(
                        written ->
                                new OtherTexts(
                                        written.file.document(),
                                        making.frameEntry.orElseThrow(),
                                        making.frame.orElseThrow(),
                                        making.said.orElseThrow()));
    }

    /**
     * The ranges of all values that can reach what happens in a candidate: those of the study's
     * file and of its own, without masses and failure rates.
     */
    public List<Range> rangesOf(String candidate) {
        return only(Set.of(candidate), Variation.NONE).ranges().stream()
                .filter(r -> r.dimension() != Dimension.MASS && r.dimension() != Dimension.RATE)
                .toList();
    }

    /**
     * The study with some candidates, every value where it is asked for in its range.
     *
     * @param wanted ids of the candidates
     * @param at 0 for the low end to 1 for the high end, by range
     */
    public DrawnStudy drawn(Set<String> wanted, List<Range> ranges, double[] at) {
        return new ValueDraw(this, wanted, ranges, at).draw();
    }

    /** The same as {@link #study} with no other candidates than these, by their ids. */
    public ReadStudy only(Set<String> wanted, Variation variation) {
        return new Making(
                        variation,
                        candidates.stream().filter(c -> wanted.contains(c.file.id())).toList())
                .study();
    }

    /**
     * A mistake at a path in the study's own file, which is found by somebody who knows more than
     * the files.
     */
    public Problem mistake(String path, String wrong, String right) {
        return study.map(written -> written.bound.places().problem(path, wrong, right))
                .orElseThrow(() -> new IllegalStateException("no study to be wrong at " + path));
    }

    /** One making of the study. */
    private final class Making {
        private final Variation variation;
        private final List<Written<CandidateEntry>> made;
        private final List<Problem> problems = new ArrayList<>(folder.problems());
        private final List<FileRemark> remarks = new ArrayList<>(folder.remarks());
        private final List<Assumption> assumptions = new ArrayList<>();
        private final List<Range> ranges = new ArrayList<>();
        private final Map<String, List<Expanded>> expanded = new LinkedHashMap<>();
        private Optional<StudyEntry> frameEntry = Optional.empty();
        private Optional<ChancesReader.StatedChances> said = Optional.empty();
        private final Map<String, String> supposedClasses = new TreeMap<>();
        private final Map<String, Odds> odds = new LinkedHashMap<>();
        private final Map<String, FittedParts> fits = new LinkedHashMap<>();
        private final Map<String, Map<String, PartPlace>> places = new LinkedHashMap<>();
        private Optional<CheckedStudy> frame = Optional.empty();
        private final List<ReadAttempt> looked = new ArrayList<>();

        Making(Variation variation, List<Written<CandidateEntry>> made) {
            this.variation = variation;
            this.made = made;
        }

        ReadStudy study() {
            frame = study.flatMap(this::frame);
            List<Optional<ReadCandidate>> readings =
                    made.parallelStream().map(this::reading).toList();
            List<Candidate> read = new ArrayList<>();
            for (int i = 0; i < made.size(); i++) {
                candidate(made.get(i), readings.get(i)).ifPresent(read::add);
            }
            study.ifPresent(written -> suppose(written, read));
            Collections.sort(problems);
            remarks.sort(
                    Comparator.comparing((FileRemark r) -> r.file().toString())
                            .thenComparingInt(FileRemark::line)
                            .thenComparingInt(FileRemark::column));
            return new ReadStudy(
                    frame.filter(f -> problems.isEmpty()).map(f -> study(f, read)),
                    problems,
                    remarks,
                    assumptions,
                    ranges,
                    expanded,
                    new ReadStudy.SizingInput(
                            frameEntry
                                    .map(e -> InstallationReader.of(e, fits))
                                    .orElse(Installation.USUAL),
                            places),
                    said.map(s -> s.with(odds)).orElse(Chances.NONE),
                    folder.fingerprint());
        }

        private Study study(CheckedStudy frame, List<Candidate> read) {
            return new Study(id, frame.heading(), frame.aircraft(), frame.goals(), read);
        }

        private Optional<CheckedStudy> frame(Written<StudyEntry> written) {
            problems.addAll(written.bound.problems());
            if (written.bound.value().isEmpty()) {
                return Optional.empty();
            }
            ValueLog ledger = new ValueLog(written.file.name(), variation);
            ProblemCollector report = new ProblemCollector(written.bound.places());
            StudyEntry entry = Values.mapped(written.bound.value().get(), "", ledger);
            Optional<CheckedStudy> frame =
                    new CheckedStudyReader(entry, report)
                            .read(names())
                            .map(f -> f.withClasses(variation.classes()));
            frameEntry = Optional.of(entry);
            said = frame.map(f -> new ChancesReader(entry, f, report).read());
            take(ReadNotes.by(report, ledger));
            return frame;
        }

        private Set<String> names() {
            return candidates.stream()
                    .map(c -> c.file.id())
                    .collect(Collectors.toCollection(TreeSet::new));
        }

        /** Takes over what was read of a candidate; nothing where it could not be begun. */
        private Optional<Candidate> candidate(
                Written<CandidateEntry> written, Optional<ReadCandidate> begun) {
            problems.addAll(written.bound.problems());
            looked.add(ReadAttempt.of(written.file, written.bound, begun));
            if (begun.isEmpty()) {
                return Optional.empty();
            }
            ReadCandidate reading = begun.get();
            String name = written.file.id();
            expanded.put(name, reading.expanded());
            fits.put(name, reading.fit());
            odds.put(name, reading.odds());
            places.put(name, reading.places());
            supposedClasses.putAll(reading.supposedClasses());
            take(reading.told());
            return reading.candidate();
        }

        private Optional<ReadCandidate> reading(Written<CandidateEntry> written) {
            if (written.bound.value().isEmpty() || frame.isEmpty() || said.isEmpty()) {
                return Optional.empty();
            }
            CheckedStudy around = frame.get();
            ChancesReader.StatedChances chances = said.get();
            Supplier<ReadCandidate> read =
                    () -> ReadCandidate.of(written.file, written.bound, around, chances, variation);
            return Optional.of(
                    variation.equals(Variation.NONE) && study.isPresent()
                            ? kept.of(study.get().file.document(), names(), written.file, read)
                            : read.get());
        }

        LenientReading reading(ReadStudy read) {
            Optional<CheckedStudy> seen = frame.or(() -> study.flatMap(this::frameAsFarAsRead));
            return new WorkingReading(read, looked, seen)
                    .with(frame.map(f -> cs -> study(f.withBaselineAmong(cs), cs)));
        }

        private Optional<CheckedStudy> frameAsFarAsRead(Written<StudyEntry> written) {
            ProblemCollector unheard = new ProblemCollector(written.bound.places());
            return written.bound
                    .asFarAsRead()
                    .flatMap(entry -> new CheckedStudyReader(entry, unheard).read(names()));
        }

        /** Written down where one would state them: in the study's own file. */
        private void suppose(Written<StudyEntry> written, List<Candidate> read) {
            ValueLog ledger = new ValueLog(written.file.name(), variation);
            supposedClasses.forEach(ledger::supposedClass);
            Map<String, String> laws = new LinkedHashMap<>();
            for (Candidate candidate : read) {
                candidate.parts().stream()
                        .flatMap(part -> part.elements().stream())
                        .filter(Cell.class::isInstance)
                        .forEach(cell -> laws.putAll(((Cell) cell).guesses()));
            }
            laws.forEach(ledger::supposedLaw);
            assumptions.addAll(0, ledger.assumptions());
        }

        private void take(ReadNotes told) {
            problems.addAll(told.problems());
            remarks.addAll(told.remarks());
            assumptions.addAll(told.assumptions());
            ranges.addAll(told.ranges());
        }
    }
}
