package stillturning.timeline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.device.Device;
import stillturning.device.Situation;
import stillturning.model.Procedure;
import stillturning.story.Happening;
import stillturning.story.Pilot;

/** A pilot who carries out one procedure, once, some time after one of its cues. */
final class ProcedureDevice implements Device {

    private final Procedure procedure;
    private final List<CueDevice> cues;
    private final Set<CueDevice> known = new HashSet<>();
    private final Pilot pilot;
    private final Situation now;
    private double deadline = NO_DEADLINE;
    private boolean begun;
    private boolean done;

    ProcedureDevice(Procedure procedure, List<CueDevice> cues, Pilot pilot, Situation now) {
        this.procedure = procedure;
        this.cues = List.copyOf(cues);
        this.pilot = pilot;
        this.now = now;
    }

    boolean done() {
        return done;
    }

    @Override
    public double margin() {
        if (begun) {
            return NOTHING_TO_WATCH;
        }
        for (CueDevice cue : cues) {
            if (cue.shows() && !known.contains(cue)) {
                return NOW;
            }
        }
        return NOT_NOW;
    }

    @Override
    public void cross() {
        begun = true;
        deadline = now.seconds + pilot.responseSeconds(procedure.responseSeconds());
    }

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        deadline = NO_DEADLINE;
        done = true;
        List<String> words = new ArrayList<>();
        procedure
                .moves()
                .forEach(
                        (lever, position) -> {
                            now.levers.put(lever, position);
                            words.add(lever + " " + position);
                        });
        if (!procedure.sheds().isEmpty()) {
            now.shed.addAll(procedure.sheds());
            words.add("sheds " + String.join(", ", procedure.sheds()));
        }
        now.log(
                Happening.Kind.PILOT,
                procedure.name(),
                String.join("; ", words),
                now.journal.latestOf(procedure.when()));
    }

    /** A cue that showed in normal flight tells nothing new; the others still do. */
    @Override
    public void adopt(Device healthy) {
        cues.stream().filter(CueDevice::shows).forEach(known::add);
    }

    @Override
    public boolean belongsToPilot() {
        return true;
    }
}
