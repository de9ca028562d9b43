package stillturning.cli.study;

import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.Variation;
import stillturning.model.Study;

/**
 * The study that a command is about, without a problem.
 *
 * @param reader makes it again with one value changed
 */
public record FoundStudy(Study study, ReadStudy read, StudyReader reader) {

    /** The folder in which studies usually stand. */
    public static final String ARCHITECTURES = "architectures";

    /**
     * The study of this name.
     *
     * @throws Refusal with all its problems, if there are any
     */
    public static FoundStudy sound(String written, CommandContext context) {
        StudyReader reader = StudyReader.open(folder(written, context));
        ReadStudy read = CaseNames.checked(reader.study(Variation.NONE), reader);
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
     * The study with just one of its candidates, or with all where none is named.
     *
     * @throws Refusal if none or more than one fits
     */
    public Study only(Optional<String> candidate) {
        return candidate
                .map(
                        said ->
                                new Study(
                                        study.id(),
                                        study.heading(),
                                        study.aircraft(),
                                        study.goals(),
                                        List.of(CandidateNames.find(study, said))))
                .orElse(study);
    }

    /** What reading the study of this name brings, problems included. */
    public static ReadStudy read(String written, CommandContext context) {
        StudyReader reader = StudyReader.open(folder(written, context));
        return CaseNames.checked(reader.study(Variation.NONE), reader);
    }

    /**
     * The folder as written, or the one of that name among the architectures.
     *
     * @throws Refusal if it can be no path
     */
    public static Path folder(String written, CommandContext context) {
        try {
            Path folder = context.path(written);
            Path usual = context.path(ARCHITECTURES).resolve(written);
            boolean bareName = Path.of(written).getNameCount() == 1;
            return bareName && !Files.exists(folder) && Files.isDirectory(usual) ? usual : folder;
        } catch (InvalidPathException e) {
            throw new Refusal("that can be no folder's name: " + e.getReason());
        }
    }
}
