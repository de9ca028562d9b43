package stillturning.story.timeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import stillturning.model.Procedure;
import stillturning.story.Pilot;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * One procedure, carried out once, some time after one of its cues, if one is still there then:
 * move by move by the pilot's hands, then what is shed; all at once by an automatic.
 */
final class ProcedureDevice implements Device {

    private final Procedure procedure;
    private final List<CueDevice> cues;
    private final Set<CueDevice> known = new HashSet<>();
    private final Pilot pilot;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private boolean begun;
    private boolean started;
    private boolean done;
    private boolean pressed;
    private final BooleanSupplier works;
    private final MoveQueue hands;
    private final Deque<Map.Entry<String, String>> toMove;
    private final List<String> toShed;

    /**
     * @param works whether that does it which does it by itself
     */
    ProcedureDevice(
            Procedure procedure,
            List<CueDevice> cues,
            BooleanSupplier works,
            MoveQueue hands,
            Situation now) {
        this.procedure = procedure;
        this.cues = List.copyOf(cues);
        this.works = works;
        this.pilot = now.setting.pilot();
        this.now = now;
        this.hands = hands;
        this.toMove = new ArrayDeque<>(procedure.moves().entrySet());
        toMove.removeIf(move -> now.setting.keepsOn(move.getValue()));
        this.toShed = new ArrayList<>(procedure.sheds());
        if (procedure.execution().eachSeconds() > 0) {
            toShed.sort(Comparator.comparingInt(this::rank));
        }
    }

    private int rank(String load) {
        return now.aircraft.load(load).map(n -> n.shedOrder().orElse(Integer.MAX_VALUE)).orElse(0);
    }

    /** Whether the pilot has carried it out. */
    boolean done() {
        return done && !automatic();
    }

    @Override
    public double margin() {
        if (begun) {
            return NOTHING_TO_WATCH;
        }
        for (CueDevice cue : cues) {
            boolean told = automatic() ? cue.reports() : cue.shows();
            if (told && !known.contains(cue)) {
                return NOW;
            }
        }
        return NOT_NOW;
    }

    @Override
    public void cross() {
        begun = true;
        double planned = procedure.responseSeconds();
        deadline = now.seconds + (automatic() ? planned : pilot.responseSeconds(planned));
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        deadline = NO_DEADLINE;
        if (automatic() && !works.getAsBoolean()) {
            return;
        }
        if (!started && !stillCalledFor()) {
            begun = false;
            return;
        }
        if (!automatic() && !hands.free()) {
            deadline = hands.freeAt();
            return;
        }
        started = true;
        List<String> words = new ArrayList<>();
        if (automatic()) {
            while (!toMove.isEmpty()) {
                move(words);
            }
            shed(words);
        } else if (!toMove.isEmpty()) {
            move(words);
            goOn();
        } else {
            shed(words);
        }
        done |= toMove.isEmpty();
        if (!automatic() && toMove.isEmpty()) {
            now.moves++;
        }
        if (toMove.isEmpty() && procedure.execution().pressesStarter() && !pressed) {
            pressed = true;
            now.presses++;
        }
        if (!words.isEmpty()) {
            now.log(
                    automatic() ? StoryEvent.Kind.AUTOMATIC : StoryEvent.Kind.PILOT,
                    procedure.name(),
                    String.join("; ", words),
                    now.journal.latestOf(procedure.when()));
        }
    }

    private void move(List<String> words) {
        Map.Entry<String, String> move = toMove.removeFirst();
        String idle =
                move.getValue().equals(now.levers.at(move.getKey()))
                        ? ", where it stands: the move changes nothing now"
                        : "";
        if (automatic()) {
            now.levers.put(move.getKey(), move.getValue());
            words.add(EventWords.move(move.getKey(), move.getValue()) + idle);
        } else {
            words.add(hands.move(move.getKey(), move.getValue()) + idle);
        }
    }

    private void goOn() {
        boolean more = !toMove.isEmpty() || (!toShed.isEmpty() && sheds());
        deadline = more ? hands.freeAt() : NO_DEADLINE;
    }

    private boolean sheds() {
        return now.setting.shedding().asWritten();
    }

    /**
     * Sheds what is due: an automatic everything, a hand one load after the other at its own pace;
     * or the next by rank while there is still a reason.
     */
    private void shed(List<String> words) {
        if (!sheds() || toShed.isEmpty()) {
            return;
        }
        double each = procedure.execution().eachSeconds();
        if (each == 0 && automatic()) {
            now.shed.add(toShed);
            words.add("sheds " + String.join(", ", toShed));
            toShed.clear();
        } else if (each == 0 || stillCalledFor()) {
            String next = toShed.remove(0);
            now.shed.add(List.of(next));
            words.add("sheds " + next);
            if (!automatic()) {
                hands.busy(1);
            }
            double pause = each == 0 ? hands.freeAt() : now.seconds + each;
            deadline = toShed.isEmpty() ? NO_DEADLINE : pause;
        }
    }

    /** A warning that has gone out by the time of the response calls for nothing. */
    private boolean stillCalledFor() {
        return cues.stream()
                .filter(cue -> automatic() || cue.isLit())
                .anyMatch(cue -> cue.persists() && !known.contains(cue));
    }

    private boolean automatic() {
        return procedure.execution().automatic().isPresent();
    }

    /** A cue that showed in normal flight tells nothing new; the others still do. */
    @Override
    public void adopt(Device healthy) {
        cues.stream().filter(CueDevice::reports).forEach(known::add);
    }

    @Override
    public boolean isSlow() {
        return !automatic();
    }
}
