package stillturning.cli.study;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command on a study is told. */
public final class StudyArgument {

    @Parameters(paramLabel = "STUDY", description = "Folder of the study, or its bare name.")
    public String study = "";

    @Option(names = "--json", description = "Print the result as JSON.")
    public boolean json;
}
