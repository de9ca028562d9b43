package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import stillturning.quantity.Formats;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Check;
import stillturning.reliability.runup.RefusedCheck;
import stillturning.reliability.runup.SeenDifference;
import stillturning.reliability.runup.SeenDifference.What;
import stillturning.report.Spoken;
import stillturning.story.AdverseEffect;
import stillturning.story.PilotView;
import stillturning.story.PilotView.EngineSound;

/** What a pilot does and sees in a check, in plain words. */
record CheckWords(Spoken spoken) {

    private static final int WHILE_HELD = 1;

    /** Levers moved, in their order: {@code "master off, pull pump 1 breaker"}. */
    String moves(Map<String, String> moves) {
        List<String> words = new ArrayList<>();
        moves.forEach((lever, position) -> words.add(spoken.move(lever, position)));
        return String.join(", ", words);
    }

    /** Nothing wrong. */
    String expected(Check check) {
        List<String> words = new ArrayList<>();
        words.add("engine " + check.expected().engine().words());
        add(" shows", " show", more(check.expected().cues(), check.before().cues()), words);
        add(" goes out", " go out", more(check.before().cues(), check.expected().cues()), words);
        add(" stops", " stop", more(check.expected().stopped(), check.before().stopped()), words);
        add(
                " works again",
                " work again",
                more(check.before().stopped(), check.expected().stopped()),
                words);
        add(
                " goes over to its own battery",
                " go over to their own batteries",
                more(check.expected().onTheirOwn(), check.before().onTheirOwn()),
                words);
        boolean same = words.size() == 1;
        boolean runs = check.expected().engine() == PilotView.EngineSound.RUNS;
        return same && runs ? words.get(0) + ", nothing else changes" : String.join("; ", words);
    }

    private static Set<String> more(Set<String> those, Set<String> than) {
        Set<String> more = new TreeSet<>(those);
        more.removeAll(than);
        return more;
    }

    private void add(String one, String several, Collection<String> who, List<String> words) {
        if (!who.isEmpty()) {
            words.add(spoken.all(who) + (who.size() == 1 ? one : several));
        }
    }

    /** Setting back, and what to wait for then. */
    String back(Check check, Card card) {
        double settles = check.levers().settleSeconds();
        String wait =
                settles > card.pace().heldSeconds()
                        ? "; wait until all is as before, about " + Formats.duration(settles)
                        : "";
        return moves(check.back()) + wait;
    }

    /**
     * What is seen of a failure: all that differs while the levers stand so, and what differs once
     * they are back only where nothing does before. Of an engine that stops the rest follows.
     */
    String instead(List<SeenDifference> seen) {
        boolean atOnce = seen.stream().anyMatch(d -> d.step() == WHILE_HELD);
        int step = atOnce ? WHILE_HELD : WHILE_HELD + 1;
        List<SeenDifference> then = seen.stream().filter(d -> d.step() == step).toList();
        String lead = atOnce ? "" : "once all is set back, ";
        boolean stops = then.stream().anyMatch(d -> d.what() == What.ENGINE_STOPS);
        if (stops) {
            return lead + "engine " + EngineSound.STOPS.words();
        }
        return lead + String.join(", ", then.stream().map(this::words).toList());
    }

    private String words(SeenDifference seen) {
        return switch (seen.what()) {
            case ENGINE_STOPS -> "engine " + EngineSound.STOPS.words();
            case ENGINE_FALTERS -> "engine " + EngineSound.FALTERS.words();
            case ENGINE_RUNS -> "engine " + EngineSound.RUNS.words();
            case LOAD_STOPS -> spoken.of(seen.name()) + " stops";
            case LOAD_WORKS -> spoken.of(seen.name()) + " goes on working";
            case LOAD_ON_ITS_OWN -> spoken.of(seen.name()) + " goes over to its own battery";
            case LOAD_FED -> spoken.of(seen.name()) + " does not go over to its own battery";
            case CUE_SHOWS -> spoken.of(seen.name()) + " shows";
            case CUE_DARK -> spoken.of(seen.name()) + " does not show";
        };
    }

    /** Why moves are no check: {@code "master off: alternator loses its battery …"}. */
    String refusal(RefusedCheck refusal) {
        return moves(refusal.moves()) + ": " + why(refusal.why());
    }

    private String why(RefusedCheck.Reason why) {
        return why.fold(
                far ->
                        "not in reach, or nobody says that it is: "
                                + String.join(
                                        ", ", far.levers().stream().map(spoken::lever).toList()),
                order -> "in whatever order, harm is done on the way: " + harm(order.harm()),
                lingers ->
                        (lingers.cues().isEmpty() ? "something" : spoken.all(lingers.cues()))
                                + " is not as before "
                                + Formats.duration(lingers.seconds())
                                + " after setting back");
    }

    private String harm(AdverseEffect harm) {
        return "after "
                + spoken.lever(harm.lever())
                + ", "
                + spoken.of(harm.event().part())
                + " "
                + spoken.sentence(harm.event().words());
    }
}
