package stillturning.cli.study;

import java.util.List;
import java.util.Optional;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Chances;
import stillturning.model.Study;

/**
 * The study that a command is about, without a problem.
 *
 * @param study with the candidates that the command is about
 * @param read all that its files say
 * @param reader makes it again with one value changed
 */
public record FoundStudy(Study study, ReadStudy read, StudyReader reader) {

    /**
     * The study of this reader.
     *
     * @throws Refusal with all its problems, if there are any
     */
    public static FoundStudy sound(StudyReader reader) {
        ReadStudy read = checked(reader);
        return read.study()
                .map(study -> new FoundStudy(study, read, reader))
                .orElseThrow(
                        () ->
                                new Refusal(
                                        ProblemText.counted(read.problems())
                                                + " in the study; nothing was assessed\n"
                                                + ProblemText.of(read.problems())));
    }

    /**
     * The study that these words mean.
     *
     * @throws Refusal with all its problems, if there are any
     */
    public static FoundStudy of(String written, CommandContext context) {
        return sound(reader(written, context));
    }

    static StudyReader reader(String written, CommandContext context) {
        return StudyReader.open(NamedFolder.existing(written, context));
    }

    /** What its files say, and which of its cases mean nothing. */
    static ReadStudy checked(StudyReader reader) {
        return CaseNames.checked(reader.study(Variation.NONE), reader);
    }

    /**
     * With just one of its candidates, or with all where none is named.
     *
     * @throws Refusal if none or more than one fits
     */
    public FoundStudy only(Optional<String> candidate) {
        return candidate
                .map(
                        said ->
                                with(
                                        new Study(
                                                study.id(),
                                                study.heading(),
                                                study.aircraft(),
                                                study.goals(),
                                                List.of(CandidateNames.find(study, said)))))
                .orElse(this);
    }

    /** The same files, of which only these candidates matter. */
    public FoundStudy with(Study some) {
        return new FoundStudy(some, read, reader);
    }

    /** What is a mistake in its candidates though they can be computed. */
    public Mistakes mistakes() {
        return Mistakes.in(study, read);
    }

    public Chances chances() {
        return read.chances();
    }
}
