package stillturning.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.candidate.ChancesReader;
import stillturning.files.candidate.CheckedStudy;
import stillturning.files.candidate.InstallationReader;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.StudyEntry;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Installation;
import stillturning.yaml.BindResult;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** Reads texts of single candidates as if they were files of one study, the study read once. */
public final class OtherTexts {

    private final YamlDocument document;
    private final StudyEntry entry;
    private final CheckedStudy frame;
    private final ChancesReader.StatedChances said;

    OtherTexts(
            YamlDocument document,
            StudyEntry entry,
            CheckedStudy frame,
            ChancesReader.StatedChances said) {
        this.document = document;
        this.entry = entry;
        this.frame = frame;
        this.said = said;
    }

    /**
     * What came of reading a text.
     *
     * @param candidate present exactly if there is no problem
     * @param installation how what is in it lies, as sizes ask for it
     * @param chances how often what is in it fails, and what its parts share
     */
    public record ReadText(
            Optional<Candidate> candidate,
            Installation installation,
            Chances chances,
            List<Problem> problems) {
        public ReadText {
            problems = List.copyOf(problems);
        }
    }

    /** The study's own file. */
    public YamlDocument study() {
        return document;
    }

    /**
     * Reads a text.
     *
     * @param id of the candidate that it is to be
     */
    public synchronized ReadText read(String id, YamlDocument text) {
        BindResult<CandidateEntry> bound = FileNotations.binder().bind(text, CandidateEntry.class);
        List<Problem> problems = new ArrayList<>(bound.problems());
        if (bound.value().isEmpty()) {
            return new ReadText(Optional.empty(), Installation.USUAL, Chances.NONE, problems);
        }
        ReadCandidate reading =
                ReadCandidate.of(
                        new StudyFolder.File(id, text), bound, frame, said, Variation.NONE);
        problems.addAll(reading.told().problems());
        return new ReadText(
                reading.candidate().filter(c -> problems.isEmpty()),
                InstallationReader.of(entry, Map.of(id, reading.fit())),
                said.with(Map.of(id, reading.odds())),
                problems);
    }
}
