package stillturning.files.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.edit.CandidateOutline;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.Naming;
import stillturning.files.edit.RunLine;
import stillturning.files.edit.RunLine.NamedPart;

/** What moves ask of links and feeds, and how they write them again. */
final class Runs {

    private Runs() {}

    static boolean isLink(OutlineRun run) {
        return run.section().equals(CandidateOutline.LINKS);
    }

    /** The part that a run starts at; empty where the text names none. */
    static String from(OutlineRun run) {
        return end(run, "from").map(NamedPart::part).orElse("");
    }

    /** The part that a link ends at; the load of a feed. */
    static String to(OutlineRun run) {
        return isLink(run)
                ? end(run, "to").map(NamedPart::part).orElse("")
                : Naming.part(run.key());
    }

    private static Optional<NamedPart> end(OutlineRun run, String word) {
        return run.line().anchors().stream()
                .filter(a -> a.item() == 0 && a.word().equals(word))
                .findFirst();
    }

    /** Whether a run starts at this terminal of a part, which it need not name. */
    static boolean startsAtUsual(OutlineRun run, String terminal) {
        return isUsual(run, "from", terminal);
    }

    /** Whether a link ends at this terminal of a part, which it need not name. */
    static boolean endsAtUsual(OutlineRun run, String terminal) {
        return isUsual(run, "to", terminal);
    }

    private static boolean isUsual(OutlineRun run, String word, String terminal) {
        return end(run, word).flatMap(NamedPart::terminal).orElse(terminal).equals(terminal);
    }

    /** Parts that a run leads through, in order. */
    static List<String> through(OutlineRun run) {
        return run.line().anchors().stream()
                .filter(a -> a.word().equals("via"))
                .map(NamedPart::part)
                .toList();
    }

    /** Where a feed returns, if it says so. */
    static Optional<String> back(OutlineRun run) {
        return run.line().anchors().stream()
                .filter(a -> a.word().equals("return"))
                .map(NamedPart::part)
                .findFirst();
    }

    /** A run that starts elsewhere, at a place as runs write it. */
    static String startingAt(OutlineRun run, String place) {
        List<String> pieces = new ArrayList<>(run.line().pieces());
        int to = pieces.get(0).indexOf(" to ");
        pieces.set(0, "from " + place + (to < 0 ? "" : pieces.get(0).substring(to)));
        return String.join(",", pieces);
    }

    /** A link that ends elsewhere. */
    static String endingAt(OutlineRun run, String place) {
        List<String> pieces = new ArrayList<>(run.line().pieces());
        int to = pieces.get(0).indexOf(" to ");
        pieces.set(0, pieces.get(0).substring(0, to) + " to " + place);
        return String.join(",", pieces);
    }

    /** A run without some of its items, and with others behind it. */
    static String items(OutlineRun run, List<String> more, int... without) {
        List<String> pieces = new ArrayList<>(run.line().pieces());
        for (int i = without.length - 1; i >= 0; i--) {
            pieces.remove(without[i]);
        }
        more.forEach(item -> pieces.add(" " + item));
        return String.join(",", pieces);
    }

    /** The first word of each item, the ends of the run left out; index 0 stands for the ends. */
    static List<String> words(RunLine line) {
        return line.pieces().stream().map(piece -> piece.strip().split(" ", 2)[0]).toList();
    }
}
