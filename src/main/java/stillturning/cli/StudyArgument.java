package stillturning.cli;

import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What every command on a study is told. */
final class StudyArgument {

    @Parameters(paramLabel = "STUDY", description = "Folder of the study, or its bare name.")
    String study = "";

    @Option(names = "--json", description = "Print the result as JSON.")
    boolean json;
}
