package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.UsualProtection;

/** A protector of a run one usual rating higher or lower, or of the other speed. */
final class OtherProtector implements Finder {

    private static final Pattern PROTECTOR =
            Pattern.compile(
                    "(?<word>breaker|fuse) (?<amps>[0-9.]+) A(?<type> class (?<class>[a-z-]+))?");

    @Override
    public Stream<Move> in(Drawn drawn) {
        return drawn.outline().runs().stream().flatMap(run -> of(drawn, run).stream());
    }

    private static List<Move> of(Drawn drawn, OutlineRun run) {
        List<Move> moves = new ArrayList<>();
        Matcher found = PROTECTOR.matcher(run.line().text());
        while (found.find()) {
            double amps = Double.parseDouble(found.group("amps"));
            for (Optional<String> rating :
                    List.of(UsualProtection.above(amps), UsualProtection.below(amps))) {
                rating.ifPresent(
                        r ->
                                moves.add(
                                        move(
                                                run,
                                                found.start("amps"),
                                                found.end("amps") + " A".length(),
                                                r,
                                                "Take " + r + " for the " + word(found, run))));
            }
            if (found.group("word").equals("breaker")) {
                boolean fast =
                        Optional.ofNullable(found.group("class"))
                                .or(() -> usual(drawn))
                                .filter("fast"::equals)
                                .isPresent();
                String other = fast ? "ordinary" : "fast";
                moves.add(
                        move(
                                run,
                                found.end("amps") + " A".length(),
                                found.end(),
                                " class " + other,
                                "Take a breaker of the class " + other + " in " + run.key()));
            }
        }
        return moves;
    }

    private static Optional<String> usual(Drawn drawn) {
        return drawn.loads().written().under("classes").text("breaker");
    }

    private static String word(Matcher found, OutlineRun run) {
        return found.group("word") + " of " + run.key();
    }

    private static Move move(OutlineRun run, int from, int to, String by, String words) {
        List<String> touches = new ArrayList<>(run.makes());
        touches.add(Runs.from(run));
        String text = run.line().text();
        String line = text.substring(0, from) + by + text.substring(to);
        return new Move(MoveKind.PROTECTOR, words, touches, pen -> pen.run(run.path(), line));
    }
}
