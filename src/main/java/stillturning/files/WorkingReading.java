package stillturning.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillturning.files.candidate.CandidateReader;
import stillturning.files.candidate.CheckedStudy;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.files.finding.FileFindings;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.model.Candidate;
import stillturning.model.HalfDrawn;
import stillturning.model.Study;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** Makes of one reading what somebody who is at work on the study wants to see. */
final class WorkingReading {

    private static final Comparator<FileFinding> BY_PLACE =
            Comparator.comparing((FileFinding f) -> f.file().toString())
                    .thenComparingInt(FileFinding::line)
                    .thenComparingInt(FileFinding::column);

    private final ReadStudy read;
    private final List<ReadAttempt> looked;
    private final Optional<CheckedStudy> seen;

    /**
     * @param looked every candidate's file
     * @param seen what candidates share, as far as it can be read
     */
    WorkingReading(ReadStudy read, List<ReadAttempt> looked, Optional<CheckedStudy> seen) {
        this.read = read;
        this.looked = List.copyOf(looked);
        this.seen = seen;
    }

    /**
     * The reading.
     *
     * @param study the study of some candidates; absent if not even their frame can be read
     */
    LenientReading with(Optional<Function<List<Candidate>, Study>> study) {
        Map<String, CandidateReading> candidates = new LinkedHashMap<>();
        looked.forEach(l -> candidates.put(l.file().id(), candidate(l)));
        Set<Path> own =
                looked.stream().map(l -> l.file().document().file()).collect(Collectors.toSet());
        List<FileFinding> common =
                FileFindings.aboutNoPart(
                        read.problems().stream().filter(p -> !own.contains(p.file())).toList(),
                        read.remarks().stream().filter(r -> !own.contains(r.file())).toList());
        List<Candidate> sound = looked.stream().flatMap(l -> l.candidate().stream()).toList();
        boolean usable = !sound.isEmpty() && common.stream().noneMatch(FileFinding::mistake);
        return new LenientReading(
                read,
                study.filter(s -> usable).map(s -> s.apply(sound)),
                looked.stream()
                        .filter(l -> l.candidate().isEmpty())
                        .map(l -> l.file().id())
                        .toList(),
                candidates,
                common);
    }

    private CandidateReading candidate(ReadAttempt file) {
        Optional<CandidateEntry> entry = file.bound().asFarAsRead();
        Optional<CandidateReader> reader =
                seen.filter(f -> file.candidate().isEmpty())
                        .map(
                                frame ->
                                        CandidateReader.forDrawing(
                                                file.file().id(),
                                                entry.orElseGet(WorkingReading::empty),
                                                frame,
                                                new ProblemCollector(file.bound().places())));
        Optional<HalfDrawn> drawing =
                reader.map(CandidateReader::halfDrawn).or(() -> whole(file.candidate()));
        Map<String, PartPlace> places = reader.map(CandidateReader::places).orElse(file.places());
        return new CandidateReading(drawing, findings(file, places), places);
    }

    private Optional<HalfDrawn> whole(Optional<Candidate> candidate) {
        return seen.flatMap(f -> candidate.map(c -> HalfDrawn.of(c, f.aircraft())));
    }

    private static List<FileFinding> findings(ReadAttempt file, Map<String, PartPlace> places) {
        FileFindings about =
                new FileFindings(file.bound().asFarAsRead(), places, file.bound().places()::text);
        List<FileFinding> findings = new ArrayList<>();
        file.bound().problems().forEach(p -> findings.add(about.of(p, Optional.empty())));
        for (Problem problem : file.report().problems()) {
            findings.add(about.of(problem, file.report().subjectOf(problem)));
        }
        file.report().remarks().forEach(r -> findings.add(about.of(r)));
        findings.sort(BY_PLACE);
        return List.copyOf(findings);
    }

    /** What is read of a file in which nothing can be read. */
    private static CandidateEntry empty() {
        return FileNotations.binder()
                .bind(YamlDocument.of(Path.of("empty"), "{}"), CandidateEntry.class)
                .asFarAsRead()
                .orElseThrow(() -> new IllegalStateException("a candidate has no blank form"));
    }
}
