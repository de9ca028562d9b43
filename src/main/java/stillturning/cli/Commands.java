package stillturning.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import picocli.CommandLine;
import stillturning.cli.breaking.BreakCommand;
import stillturning.cli.check.CheckCommand;
import stillturning.cli.decide.DecideCommand;
import stillturning.cli.decide.ExplainCommand;
import stillturning.cli.explore.ExploreCommand;
import stillturning.cli.groundtest.GroundTestCommand;
import stillturning.cli.joint.RunUpCommand;
import stillturning.cli.record.RecordCommand;
import stillturning.cli.size.SizeCommand;
import stillturning.cli.suggest.SuggestCommand;
import stillturning.cli.terminal.CommandContext;

/** The commands, in the order in which help lists them. */
final class Commands {

    /** The one that tells of all others. */
    private static final String WHOLE = "completion";

    private Commands() {}

    /**
     * The program with its commands below it; where the arguments begin with the name of one, with
     * that alone, since describing all of them takes longer than many a command runs.
     */
    static CommandLine under(CommandLine program, CommandContext context, String... args) {
        Map<String, Function<CommandContext, Object>> all = all();
        if (args.length > 0 && all.containsKey(args[0]) && !args[0].equals(WHOLE)) {
            all.keySet().retainAll(Set.of(args[0]));
        }
        all.values().forEach(command -> program.addSubcommand(command.apply(context)));
        return program;
    }

    private static Map<String, Function<CommandContext, Object>> all() {
        Map<String, Function<CommandContext, Object>> all = new LinkedHashMap<>();
        all.put("new", NewCommand::new);
        all.put("check", CheckCommand::new);
        all.put("decide", DecideCommand::new);
        all.put("explore", ExploreCommand::new);
        all.put("break", BreakCommand::new);
        all.put("run-up", RunUpCommand::new);
        all.put("ground-test", GroundTestCommand::new);
        all.put("record", RecordCommand::new);
        all.put("suggest", SuggestCommand::new);
        all.put("explain", ExplainCommand::new);
        all.put("size", SizeCommand::new);
        all.put("desktop", DesktopCommand::new);
        all.put("guide", GuideCommand::new);
        all.put("schema", SchemaCommand::new);
        all.put(WHOLE, CompletionCommand::new);
        return all;
    }
}
