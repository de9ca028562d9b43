package stillturning.files.move;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.files.OtherTexts;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.StudyOutline;
import stillturning.files.entry.Names;
import stillturning.model.Candidate;
import stillturning.model.Installation;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.CommonCauses;
import stillturning.parts.Part;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** One candidate as it is drawn: the text of its file, and what it reads as. */
public final class Drawn {

    private final OtherTexts texts;
    private final Study study;
    private final Candidate candidate;
    private final OtherTexts.ReadText read;
    private final YamlDocument text;
    private final CandidateOutline outline;
    private final StudyOutline loads;

    private Drawn(
            OtherTexts texts,
            Study study,
            Candidate candidate,
            OtherTexts.ReadText read,
            YamlDocument text) {
        this.texts = texts;
        this.study = study;
        this.candidate = candidate;
        this.read = read;
        this.text = text;
        this.outline = new CandidateOutline(text);
        this.loads = new StudyOutline(texts.study());
    }

    /**
     * A candidate of a study as its file draws it.
     *
     * @param read what the reader makes of the study
     * @throws ChangeRefused if there is no such candidate, or the study has a mistake
     */
    public static Drawn of(StudyReader reader, ReadStudy read, String candidate)
            throws ChangeRefused {
        Optional<OtherTexts> texts = reader.otherTexts();
        Optional<Study> study = read.study();
        if (texts.isEmpty() || study.isEmpty() || study.get().candidate(candidate).isEmpty()) {
            throw new ChangeRefused("there is no candidate " + candidate + " without a mistake");
        }
        Optional<Candidate> drawn = study.get().candidate(candidate);
        OtherTexts.ReadText asRead =
                new OtherTexts.ReadText(
                        drawn, read.sizes().installation(), read.chances(), List.of());
        return new Drawn(texts.get(), study.get(), drawn.get(), asRead, reader.document(candidate));
    }

    /** The study as it was read, with the candidates of its folder. */
    public Study study() {
        return study;
    }

    /** What the text reads as, under the name of the candidate that it was drawn from. */
    public Candidate candidate() {
        return candidate;
    }

    /** How what is in it lies, as sizes ask for it. */
    public Installation installation() {
        return read.installation();
    }

    /** Every event that fails several of its parts together. */
    public List<Cause> causes() {
        return CommonCauses.of(study.aircraft(), candidate, read.chances());
    }

    public YamlDocument text() {
        return text;
    }

    /** The study's own file. */
    public YamlDocument studyText() {
        return texts.study();
    }

    /**
     * The same candidate drawn otherwise.
     *
     * @throws ChangeRefused if the text has a mistake
     */
    public Drawn with(YamlDocument other) throws ChangeRefused {
        OtherTexts.ReadText read = texts.read(candidate.id(), other);
        if (read.candidate().isEmpty()) {
            Problem first = read.problems().get(0);
            String place = first.path().isEmpty() ? "" : first.path() + ": ";
            throw new ChangeRefused(place + first.wrong() + "; " + first.right());
        }
        return new Drawn(texts, study, read.candidate().get(), read, other);
    }

    // --- what finders ask

    CandidateOutline outline() {
        return outline;
    }

    StudyOutline loads() {
        return loads;
    }

    /** The parts that the file writes of a kind, in its order. */
    List<String> ofKind(String kind) {
        return outline.parts().keySet().stream()
                .filter(part -> outline.kind(part).filter(kind::equals).isPresent())
                .toList();
    }

    boolean isKind(String part, String kind) {
        return outline.kind(part).filter(kind::equals).isPresent();
    }

    List<OutlineRun> links() {
        return outline.runs().stream().filter(Runs::isLink).toList();
    }

    List<OutlineRun> feeds() {
        return outline.runs().stream().filter(run -> !Runs.isLink(run)).toList();
    }

    /**
     * Whether a lever is the key: off in flight, and moved to start the engine. On, or taken out of
     * its line, it would turn the starter of a running engine.
     */
    boolean isKey(String lever) {
        return candidate.cockpit().starting().containsKey(lever)
                && "off".equals(candidate.cockpit().flight().get(lever));
    }

    /** The zone of a part. */
    String zone(String part) {
        return candidate.part(part).map(p -> p.tag().zone()).orElse("");
    }

    /** What a person calls a part: its label, with its name where the label says less. */
    String called(String part) {
        return candidate
                .part(part)
                .map(Part::tag)
                .map(tag -> tag.label().isEmpty() ? Names.spoken(part) : tag.label())
                .orElseGet(() -> Names.spoken(part));
    }

    /** The same with its kind before it, where its name does not tell that. */
    String calledWithKind(String part) {
        String called = called(part);
        return candidate
                .part(part)
                .map(p -> p.kind().name())
                .filter(kind -> !called.contains(kind.substring(kind.lastIndexOf(' ') + 1)))
                .map(kind -> kind + " " + called)
                .orElse(called);
    }

    /** Loads that the engine's logic names. */
    Set<String> engineLoads() {
        return Set.copyOf(study.aircraft().engine().logic().loads());
    }
}
