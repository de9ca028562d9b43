package stillturning.cli.study;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stillturning.cli.terminal.CommandContext;
import stillturning.files.ReadStudy;

/** What every command on a study is told. */
public final class StudyArgument {

    @Parameters(paramLabel = "STUDY", description = "Folder of the study, or its bare name.")
    private String study = "";

    @Option(names = "--json", description = "Print the result as JSON.")
    private boolean json;

    /** The study's name as written. */
    public String study() {
        return study;
    }

    public boolean json() {
        return json;
    }

    /** What reading the study brings, problems included. */
    public ReadStudy read(CommandContext context) {
        return FoundStudy.checked(FoundStudy.reader(study, context));
    }

    /** The study without the candidates that have a mistake; its own file must have none. */
    public SoundCandidates soundCandidates(CommandContext context) {
        return SoundCandidates.of(FoundStudy.reader(study, context));
    }

    /** The study, which must be without a problem. */
    public FoundStudy sound(CommandContext context) {
        return FoundStudy.sound(FoundStudy.reader(study, context));
    }
}
