package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.SeenDifference;
import stillturning.reliability.runup.SeenDifference.What;
import stillturning.story.PilotView;
import stillturning.story.Setting;

/** What a pilot does and sees in a check, in plain words. */
final class CheckWords {

    private static final int WHILE_HELD = 1;

    private CheckWords() {}

    /** Levers moved, {@code "master off, pull pump-1-breaker"}. */
    static String moves(Map<String, String> moves) {
        List<String> words = new ArrayList<>();
        moves.forEach(
                (lever, position) ->
                        words.add(
                                position.equals(Setting.PULLED)
                                        ? "pull " + lever
                                        : lever + " " + position));
        return String.join(", ", words);
    }

    /** Nothing wrong. */
    static String expected(Check check) {
        List<String> words = new ArrayList<>();
        words.add("the engine " + check.expected().engine().words());
        add(" shows", " show", more(check.expected().cues(), check.before().cues()), words);
        add(
                " no longer shows",
                " no longer show",
                more(check.before().cues(), check.expected().cues()),
                words);
        add(" stops", " stop", more(check.expected().stopped(), check.before().stopped()), words);
        add(
                " works again",
                " work again",
                more(check.before().stopped(), check.expected().stopped()),
                words);
        boolean same = words.size() == 1;
        boolean runs = check.expected().engine() == PilotView.Engine.RUNS;
        return same && runs ? words.get(0) + " and nothing else changes" : String.join("; ", words);
    }

    private static Set<String> more(Set<String> those, Set<String> than) {
        Set<String> more = new TreeSet<>(those);
        more.removeAll(than);
        return more;
    }

    private static void add(
            String one, String several, Collection<String> who, List<String> words) {
        if (!who.isEmpty()) {
            words.add(String.join(", ", who) + (who.size() == 1 ? one : several));
        }
    }

    /**
     * What is seen of a failure: all that differs while the levers stand so, and what differs once
     * they are back only where nothing does before. Of an engine that stops the rest follows.
     */
    static String instead(List<SeenDifference> seen) {
        boolean atOnce = seen.stream().anyMatch(d -> d.step() == WHILE_HELD);
        int step = atOnce ? WHILE_HELD : WHILE_HELD + 1;
        List<SeenDifference> then = seen.stream().filter(d -> d.step() == step).toList();
        String lead = atOnce ? "" : "once all is set back, ";
        boolean stops = then.stream().anyMatch(d -> d.what() == What.ENGINE_STOPS);
        if (stops) {
            return lead + "the engine stops";
        }
        return lead + String.join(", ", then.stream().map(SeenDifference::words).toList());
    }
}
