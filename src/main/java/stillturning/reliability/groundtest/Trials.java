package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate.Hit;
import stillturning.reliability.groundtest.NotShown.Why;
import stillturning.story.PilotView.EngineSound;
import stillturning.story.Spell;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Everything that hands can open in one configuration, tried; and what failures do there. */
final class Trials {

    private static final double NO_AMPS = 0.01;
    private static final double SOME_AMPS = 0.05;

    private final Rig rig;
    private final Likeness likeness;
    private final Optional<String> on;
    private final List<String> engineLoads;
    private final Spell before;
    private final List<Trial> trials;

    /** What comes of something opened and put back; empty spells where it cannot be told. */
    private record Trial(Hand hand, List<Spell> spells) {
        private Spell open() {
            return spells.get(1);
        }

        private Spell back() {
            return spells.get(2);
        }
    }

    /** What was found of a failure: the hand that shows it, or why none does. */
    record FoundHand(Optional<Hand> hand, Why why, Optional<StoryEvent> harm) {
        static FoundHand by(Hand hand) {
            return new FoundHand(Optional.of(hand), Why.NO_HAND, Optional.empty());
        }

        static FoundHand not(Why why) {
            return new FoundHand(Optional.empty(), why, Optional.empty());
        }
    }

    /**
     * Tries them all.
     *
     * @param on load that is switched on beside those that are
     * @param engineLoads what the engine may need
     * @throws UntoldStory if nothing can be told even with nothing opened
     */
    Trials(
            Rig rig,
            Likeness likeness,
            List<Hand> hands,
            Optional<String> on,
            List<String> engineLoads)
            throws UntoldStory {
        this.rig = rig;
        this.likeness = likeness;
        this.on = on;
        this.engineLoads = List.copyOf(engineLoads);
        this.before = rig.tried(List.of(rig.intact("begins", on))).get(0);
        this.trials = hands.parallelStream().map(this::trial).toList();
    }

    private Trial trial(Hand hand) {
        try {
            return new Trial(
                    hand,
                    rig.tried(
                            List.of(
                                    rig.intact("begins", on),
                                    rig.opened(hand, on),
                                    rig.intact("puts it back", on))));
        } catch (UntoldStory e) {
            return new Trial(hand, List.of());
        }
    }

    /** With nothing opened. */
    Spell before() {
        return before;
    }

    /** The easiest way to show a failure that opens these elements of its part. */
    FoundHand of(Hit hit, Set<String> opened) {
        Spell failed;
        try {
            failed = rig.tried(List.of(rig.intact("begins", on), rig.failed(hit, on))).get(1);
        } catch (UntoldStory e) {
            return FoundHand.not(Why.UNTOLD);
        }
        if (likeness.unchanged(before, failed)) {
            return FoundHand.not(Why.NOTHING_CHANGES);
        }
        Optional<StoryEvent> harm = failed.damage().stream().findFirst();
        if (harm.isPresent()) {
            return new FoundHand(Optional.empty(), Why.HARMS, harm);
        }
        List<Trial> dead =
                trials.stream()
                        .filter(t -> !t.spells.isEmpty() && dead(t.open(), hit.part(), opened))
                        .sorted(Comparator.comparing(t -> t.hand.way()))
                        .toList();
        FoundHand found = of(dead.stream().filter(t -> likeness.same(t.open(), failed)).toList());
        return found.why != Why.NO_HAND || found.hand.isPresent()
                ? found
                : of(similar(dead, failed));
    }

    private List<Trial> similar(List<Trial> dead, Spell failed) {
        return dead.stream()
                .filter(t -> !likeness.looksAlike(before, t.open()))
                .filter(t -> likeness.similar(t.open(), failed))
                .toList();
    }

    private FoundHand of(List<Trial> same) {
        return same.stream()
                .filter(this::harmless)
                .findFirst()
                .map(t -> FoundHand.by(t.hand))
                .orElseGet(() -> refusal(same));
    }

    /** Whether a sign comes, or something no longer flows into what the engine may need. */
    boolean concernsTheEngine(Hand hand) {
        Spell open =
                trials.stream()
                        .filter(t -> t.hand.equals(hand) && !t.spells.isEmpty())
                        .findFirst()
                        .map(Trial::open)
                        .orElse(before);
        return !before.state().cuesShowing().equals(open.state().cuesShowing())
                || takesFromTheEngine(open);
    }

    private boolean takesFromTheEngine(Spell open) {
        return before.flow().amps().entrySet().stream()
                .filter(e -> engineLoads.contains(e.getKey().substring(0, e.getKey().indexOf('/'))))
                .filter(e -> Math.abs(e.getValue()) > SOME_AMPS)
                .anyMatch(
                        e -> Math.abs(open.flow().amps().getOrDefault(e.getKey(), 0.0)) < NO_AMPS);
    }

    private static boolean dead(Spell open, String part, Set<String> opened) {
        return opened.stream().allMatch(e -> Math.abs(open.flow().amps(part, e)) < NO_AMPS);
    }

    private boolean harmless(Trial trial) {
        return harm(trial).isEmpty()
                && trial.open().view().engine() != EngineSound.STOPS
                && likeness.isBack(before, trial.back());
    }

    private static Optional<StoryEvent> harm(Trial trial) {
        List<StoryEvent> all = new ArrayList<>();
        trial.spells.forEach(spell -> all.addAll(spell.damage()));
        return all.stream().findFirst();
    }

    private static FoundHand refusal(List<Trial> same) {
        if (same.isEmpty()) {
            return FoundHand.not(Why.NO_HAND);
        }
        Optional<StoryEvent> harm = same.stream().flatMap(t -> harm(t).stream()).findFirst();
        return harm.isPresent()
                ? new FoundHand(Optional.empty(), Why.HARMS, harm)
                : FoundHand.not(Why.LINGERS);
    }
}
