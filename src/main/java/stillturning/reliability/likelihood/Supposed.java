package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.List;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.cutset.CutSets;

/** Says what is supposed, and on which side each supposition errs. */
final class Supposed {

    private static final String LOWER = "; the truth may be higher for it.";
    private static final String UPPER = "; the truth may be lower for it.";

    private final CombinedResult joint;
    private final Occurrences occurrences;
    private final List<String> sentences = new ArrayList<>();

    Supposed(CombinedResult joint, Occurrences occurrences) {
        this.joint = joint;
        this.occurrences = occurrences;
    }

    List<String> of(Study study, Chances chances, Counting counting) {
        search(study, counting);
        time(chances, counting.sets());
        people(counting);
        rates();
        return List.copyOf(sentences);
    }

    private void search(Study study, Counting counting) {
        CutSets found = joint.sets();
        say(
                "All events of a set are supposed to happen at the same moment of the phase "
                        + study.goals().failurePhase().name()
                        + ", so their order and the time between them do not count.");
        say("Sets of more than " + counted(found.order(), "event") + " are left out" + LOWER);
        sayIf(
                counting.sets().isEmpty(),
                "No set counts: that says how far was searched, and not that nothing can happen.");
        sayIf(!found.complete(), "The search was called off, and sets may be missing" + LOWER);
        sayIf(
                !found.doubted().isEmpty(),
                "Nobody could tell what "
                        + counted(found.doubted().size(), "set")
                        + " would do; counted as ending the engine"
                        + UPPER);
        sayIf(
                !found.healings().isEmpty(),
                "What one more event would undo ("
                        + counted(found.healings().size(), "case")
                        + ") counts as if nothing undid it"
                        + UPPER);
        sayIf(
                !counting.engineOwn().isEmpty(),
                "Left out: "
                        + counted(counting.engineOwn().size(), "set")
                        + " of the engine's own failures, which stop it whatever its supply and so"
                        + " in every candidate.");
    }

    private void time(Chances chances, List<List<Integer>> sets) {
        say("What shows is mended before the next flight.");
        say(
                "What nobody sees stays until the inspection every "
                        + Inspecting.hours(chances.exposure().inspectionSeconds())
                        + " finds it, unless the run-up reveals it; a common cause goes unseen if"
                        + " all that it brings would by itself.");
        long unseen =
                sets.stream().filter(set -> set.stream().allMatch(occurrences::latent)).count();
        sayIf(
                unseen > 0,
                "Without the run-up, "
                        + counted(unseen, "set")
                        + " of failures that nobody sees by themselves can count in many flights"
                        + " between two inspections, although the engine stops but once"
                        + UPPER);
    }

    private void people(Counting counting) {
        sayIf(
                !counting.neverFlown().isEmpty(),
                "Left out: "
                        + counted(counting.neverFlown().size(), "set")
                        + " of switches left so that the engine does not even run on the ground.");
        sayIf(
                has(counting.sets(), Event.EventKind.LEFT_SWITCH),
                "Any other switch counts as left wrong even where a run-up would show it" + UPPER);
        sayIf(
                has(counting.sets(), Event.EventKind.NEEDLESS_DRILL),
                "A drill is carried out needlessly as often as a switch is left wrong (a guess).");
        sayIf(
                has(counting.sets(), Event.EventKind.IDLE_PILOT),
                "A pilot who does nothing does nothing in all of one flight, and as often whatever"
                        + " he sees.");
    }

    private void rates() {
        sayIf(
                occurrences.shared(),
                "Of units of one make or program, the common cause carries its share of the rate of"
                        + " the one that fails most often, and each keeps the rest of its own.");
        say(
                "Failures and causes come independently of each other, at rates that do not change"
                        + " with age.");
        say(
                "Rates are mostly recalled or guessed, and none was counted in light aircraft;"
                        + " those of one kind of part with the same figures from the same words are"
                        + " wrong together.");
        say(
                "Inspections are as frequent as it takes for a hidden failure and the next one to"
                        + " end the engine no more than once in 10,000,000 flight hours, a tenth of the"
                        + " figure of AC 23.1309-1E for its class I (from memory, unverified): a"
                        + " yardstick.");
        say("It compares candidates, and certifies nothing.");
    }

    private boolean has(List<List<Integer>> sets, Event.EventKind kind) {
        return sets.stream()
                .flatMap(List::stream)
                .anyMatch(event -> joint.events().get(event).kind() == kind);
    }

    private void say(String sentence) {
        sentences.add(sentence);
    }

    private void sayIf(boolean holds, String sentence) {
        if (holds) {
            say(sentence);
        }
    }

    private static String counted(long number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
