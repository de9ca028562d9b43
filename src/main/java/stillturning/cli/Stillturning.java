package stillturning.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import stillturning.dossier.ProgramVersion;

/** The program without a command. */
@Command(
        name = "stillturning",
        mixinStandardHelpOptions = true,
        versionProvider = Stillturning.Version.class,
        scope = ScopeType.INHERIT,
        description =
                "Compares electrical architectures for a light aircraft whose engine stops without"
                        + " electricity: after this failure, is the propeller still turning, for how"
                        + " long, and what must the pilot do about it?",
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:fine",
            "1:a hard requirement is missed (decide, explain: by the first in the ranking, so by"
                    + " every candidate; check: the engine does not run with nothing wrong; size: a"
                    + " limit is broken; any: a protector lets its wire burn)",
            "2:bad input: arguments, study, or a file in the way",
            "3:internal error"
        },
        footerHeading = "%nExamples:%n",
        footer = {
            "  stillturning new my-aircraft",
            "  stillturning check my-aircraft",
            "  stillturning break my-aircraft --failure \"main bus\"",
            "  stillturning break my-aircraft --pairs",
            "  stillturning run-up my-aircraft",
            "  stillturning ground-test my-aircraft",
            "  stillturning record my-aircraft --candidate one-bus --form bench.yaml",
            "  stillturning suggest my-aircraft --candidate one-bus",
            "  stillturning decide my-aircraft",
            "  stillturning explore my-aircraft",
            "  stillturning explain my-aircraft",
            "  stillturning size my-aircraft",
            "  stillturning desktop my-aircraft",
            "  stillturning guide",
            "  stillturning schema candidate",
            "",
            "STUDY is a folder with a study.yaml; a bare name is also looked for in architectures/."
        })
final class Stillturning implements Runnable {

    @Spec CommandSpec spec = CommandSpec.create();

    @Option(
            names = "--stacktrace",
            scope = ScopeType.INHERIT,
            description = "Show where in the program an error arose.")
    boolean stacktrace;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "a command is missing: one of " + String.join(", ", spec.subcommands().keySet()));
    }

    /** Says which version this is. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {ProgramVersion.words()};
        }
    }
}
