package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.model.Circuit;
import stillturning.parts.Load;
import stillturning.parts.element.Tolerance;
import stillturning.report.EventLines;
import stillturning.story.Snapshot;
import stillturning.story.StateBar.Activity;
import stillturning.story.WatchedStory;

/** What each load has at any instant of a story: its voltage, and what becomes of it. */
public final class LoadsNow {

    private final WatchedStory story;
    private final List<Watched> loads = new ArrayList<>();

    /** How well a load is supplied. */
    public enum LoadSupply {
        /** It works with what it needs. */
        ENOUGH("\u2714"),
        /** It goes on with less than its minimum: it rides through, or has a battery of its own. */
        LOW("\u25BD"),
        /** It works, and has more than it withstands for long. */
        TOO_MUCH("\u25B2"),
        STOPPED("\u2716"),
        /** Nobody wants it to work now. */
        OFF("\u25CB");

        private final String sign;

        LoadSupply(String sign) {
            this.sign = sign;
        }

        /** A sign that tells it apart without colour. */
        public String sign() {
            return sign;
        }
    }

    /**
     * A load at one instant.
     *
     * @param name what a person calls it
     * @param has its voltage against what it needs, in words
     * @param does what it does, and until when, in words
     */
    public record LoadNow(String name, LoadSupply supply, String has, String does) {}

    private record Watched(Load load, int plus, int minus, List<SupplyChange> changes) {
        double volts(Snapshot frame) {
            return frame.volts(plus) - frame.volts(minus);
        }
    }

    private record SupplyChange(double seconds, Activity doing) {}

    LoadsNow(PlayedFailure played, WatchedStory story) {
        this.story = story;
        Circuit circuit = played.candidate().circuit(played.failure().hits());
        for (Load load : played.candidate().loads().toList()) {
            circuit.placed().stream()
                    .filter(p -> p.part().equals(load.id()) && isWork(p))
                    .findFirst()
                    .ifPresentOrElse(
                            work -> watch(load, work.from(), work.to()),
                            () ->
                                    watch(
                                            load,
                                            circuit.net(load.id(), load.entry()),
                                            circuit.net(load.id(), load.exit())));
        }
    }

    private static boolean isWork(Circuit.Placed placed) {
        return placed.element().name().equals(Load.WORK);
    }

    private void watch(Load load, int plus, int minus) {
        List<SupplyChange> changes = new ArrayList<>();
        Optional<Activity> before = Optional.empty();
        for (Snapshot frame : story.frames()) {
            Activity now = frame.doing(load.id());
            if (before.isEmpty() || before.get() != now) {
                changes.add(new SupplyChange(frame.seconds(), now));
                before = Optional.of(now);
            }
        }
        loads.add(new Watched(load, plus, minus, changes));
    }

    /** Each load at a time (s), in the order of the study. */
    public List<LoadNow> at(double seconds) {
        Snapshot frame = story.at(seconds);
        return loads.stream().map(load -> at(load, frame, seconds)).toList();
    }

    private static LoadNow at(Watched of, Snapshot frame, double seconds) {
        double volts = of.volts(frame);
        LoadSupply supply = supply(of.load.tolerance(), frame.doing(of.load.id()), volts);
        String has =
                String.format(
                        Locale.ROOT,
                        "%.1f V, needs %.1f V",
                        volts,
                        of.load.tolerance().minimumVolts());
        String does = does(frame.doing(of.load.id()), supply) + next(of, seconds);
        return new LoadNow(of.load.tag().label(), supply, has, does);
    }

    private static LoadSupply supply(Tolerance tolerance, Activity doing, double volts) {
        return switch (doing) {
            case WORKS ->
                    volts > tolerance.withstandVolts()
                            ? LoadSupply.TOO_MUCH
                            : byItself(tolerance, volts) ? LoadSupply.LOW : LoadSupply.ENOUGH;
            case STARVED -> LoadSupply.LOW;
            case SWITCHED_OFF -> LoadSupply.OFF;
            case RUNS, FALTERS, STOPPED -> LoadSupply.STOPPED;
        };
    }

    private static boolean byItself(Tolerance tolerance, double volts) {
        return tolerance.ownBattery().isPresent() && volts < tolerance.minimumVolts();
    }

    private static String does(Activity doing, LoadSupply supply) {
        return switch (supply) {
            case ENOUGH -> "works";
            case LOW -> doing == Activity.STARVED ? "rides through" : "works on its own battery";
            case TOO_MUCH -> "works, with more than it withstands for long";
            case STOPPED -> "has stopped";
            case OFF -> "switched off";
        };
    }

    /** What comes next; nothing for what stays as it is to the end of the story. */
    private static String next(Watched of, double seconds) {
        return of.changes.stream()
                .filter(change -> change.seconds > seconds)
                .findFirst()
                .map(change -> coming(change) + EventLines.time(change.seconds - seconds))
                .orElse("");
    }

    private static String coming(SupplyChange change) {
        return switch (change.doing) {
            case RUNS, WORKS -> ", works again in ";
            case STARVED -> ", falls below its minimum in ";
            case FALTERS, STOPPED -> ", stops in ";
            case SWITCHED_OFF -> ", is switched off in ";
        };
    }
}
