package stillturning.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stillturning.report.json.JsonReport;

/** Compares and ranks the candidates of a study. */
@Command(
        name = "decide",
        description =
                "Rank the candidates: hard requirements first, then by visible criteria, with the"
                        + " reasons and with how firmly the first one stands.",
        footer = {
            "  stillturning decide sandpiper",
            "  stillturning decide architectures/sandpiper --json > ranking.json"
        })
final class DecideCommand implements Callable<Integer> {

    private final Surroundings around;
    @Mixin private StudyArgument asked = new StudyArgument();

    DecideCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        FoundStudy found = FoundStudy.sound(asked.study, around);
        Assessed assessed = Assessed.of(found.study(), around);
        Output out = new Output(around);
        if (asked.json) {
            out.raw(JsonReport.decide(assessed.assessment()));
        } else {
            assessed.comparison(out);
            out.caution();
        }
        return assessed.exitCode();
    }
}
