package stillturning.story.device.plant;

import java.util.Locale;
import stillturning.story.MotorStart;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/** Switches on a load that runs now and then: its inrush, one run, then its average as before. */
final class StartDevice implements Device {

    private enum State {
        WAITS,
        COMES_UP,
        RUNS,
        OVER
    }

    private final SupplyDevice supply;
    private final Situation now;
    private State state = State.WAITS;
    private double deadline;

    StartDevice(SupplyDevice supply, MotorStart.Of start, Situation now) {
        this.supply = supply;
        this.now = now;
        this.deadline = start.atSeconds();
    }

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        switch (state) {
            case WAITS -> {
                now.fieldsStand = true;
                supply.start();
                log("starts at the worst moment: " + asks());
                enter(State.COMES_UP, supply.inrush().seconds());
            }
            case COMES_UP -> {
                log("has started, with " + EventWords.volts(supply.volts()) + " left to it");
                now.fieldsStand = false;
                supply.run();
                enter(State.RUNS, supply.runSeconds());
            }
            case RUNS -> {
                supply.rest();
                state = State.OVER;
                deadline = NO_DEADLINE;
            }
            case OVER -> deadline = NO_DEADLINE;
        }
    }

    private String asks() {
        double inrush = supply.inrush().amps();
        String first =
                inrush > 0
                        ? EventWords.amps(inrush)
                                + " for "
                                + EventWords.milliseconds(supply.inrush().seconds())
                                + ", then "
                        : "";
        return first
                + EventWords.amps(supply.fullAmps())
                + String.format(Locale.ROOT, " for %s s", EventWords.figures(supply.runSeconds()));
    }

    private void log(String words) {
        now.log(StoryEvent.Kind.LOAD_STARTS, supply.part(), words);
    }

    private void enter(State next, double seconds) {
        state = next;
        deadline += seconds;
    }

    @Override
    public void adopt(Device healthy) {}

    /** Its milliseconds belong to what goes on; its run is a matter of the flight. */
    @Override
    public boolean isSlow() {
        return state != State.COMES_UP;
    }
}
