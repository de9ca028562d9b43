package stillturning.story.device.battery;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Management.Temperatures;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;

/**
 * A battery's management system: disconnects it when a limit has been passed long enough, and
 * connects it again when what it waits for has come.
 */
public final class ManagementDevice implements Device {

    /** A battery too cold to be charged is warm enough again this much above the limit (K). */
    private static final double WARMER_KELVIN = 2;

    /** A current of which no management can tell which way it flows (A). A guess. */
    private static final double IDLE_AMPS = 1e-3;

    /** What a disconnected battery waits for. */
    private enum Awaits {
        NOTHING,
        A_CHARGER,
        LESS_VOLTAGE,
        A_PAUSE,
        COOLING
    }

    /** A limit of a connected battery, and what follows from it. */
    private record Guarding(DelayTimer overrun, Awaits then, Supplier<String> why) {}

    private final CellDevice cell;
    private final Management limits;
    private final Situation now;
    private final List<Guarding> connected = new ArrayList<>();
    private final DelayTimer charger;
    private final DelayTimer lessVoltage;
    private final DelayTimer cooling;
    private final DelayTimer cold;
    private final DelayTimer warm;
    private final DelayTimer never;
    private Awaits awaits = Awaits.NOTHING;
    private double pauseEnds = NO_DEADLINE;
    private int tried;

    public ManagementDevice(CellDevice cell, Management limits, Situation now) {
        this.cell = cell;
        this.limits = limits;
        this.now = now;
        never = new DelayTimer(() -> NOTHING_TO_WATCH, 0, now);
        Reconnection back = limits.reconnection();
        charger =
                new DelayTimer(
                        () -> back.chargerVolts().at() - cell.volts(),
                        back.chargerVolts().seconds(),
                        now);
        lessVoltage =
                new DelayTimer(
                        () -> cell.volts() - back.releaseVolts(),
                        limits.overVolts().seconds(),
                        now);
        guard(limits.overAmps(), Awaits.A_PAUSE, this::discharging, this::tooMuchDrawn);
        guard(limits.chargeAmps(), Awaits.A_PAUSE, this::charging, this::tooMuchTaken);
        guard(limits.underVolts(), Awaits.A_CHARGER, this::low, this::tooLow);
        guard(limits.overVolts(), Awaits.LESS_VOLTAGE, this::high, this::tooHigh);
        Temperatures watched =
                limits.temperatures()
                        .orElse(
                                new Temperatures(
                                        new Limit(Double.POSITIVE_INFINITY, 0),
                                        new Limit(Double.NEGATIVE_INFINITY, 0),
                                        Double.POSITIVE_INFINITY));
        double hot = watched.hotCelsius().at();
        double frost = watched.coldCelsius().at();
        guard(
                watched.hotCelsius(),
                Awaits.COOLING,
                () -> hot - cell.celsius(),
                () ->
                        EventWords.celsius(cell.celsius())
                                + " exceed its "
                                + EventWords.celsius(hot));
        cooling = new DelayTimer(() -> cell.celsius() - watched.cooledCelsius(), 0, now);
        cold =
                new DelayTimer(
                        () -> Math.max(cell.celsius() - frost, cell.dischargeAmps() + IDLE_AMPS),
                        watched.coldCelsius().seconds(),
                        now);
        warm = new DelayTimer(() -> frost + WARMER_KELVIN - cell.celsius(), 0, now);
    }

    private void guard(Limit limit, Awaits then, DoubleSupplier spare, Supplier<String> why) {
        connected.add(new Guarding(new DelayTimer(spare, limit.seconds(), now), then, why));
    }

    @Override
    public double margin() {
        if (cell.disconnected()) {
            return awaited().margin();
        }
        double spare = frost().margin();
        for (Guarding guarding : connected) {
            spare = Math.min(spare, guarding.overrun.margin());
        }
        return spare;
    }

    @Override
    public void cross() {
        if (cell.disconnected()) {
            awaited().cross();
            return;
        }
        frost().cross();
        connected.forEach(guarding -> guarding.overrun.cross());
    }

    @Override
    public double deadline() {
        if (cell.disconnected()) {
            return Math.min(awaited().deadline(), pauseEnds);
        }
        double earliest = frost().deadline();
        for (Guarding guarding : connected) {
            earliest = Math.min(earliest, guarding.overrun.deadline());
        }
        return earliest;
    }

    @Override
    public void expire() {
        if (cell.disconnected()) {
            reconnect();
            return;
        }
        if (frost().due()) {
            turnFrost();
        }
        connected.stream().filter(g -> g.overrun.due()).findFirst().ifPresent(this::disconnect);
    }

    private void disconnect(Guarding guarding) {
        write(
                Kind.BATTERY_DISCONNECTS,
                "disconnects itself: " + guarding.why.get(),
                guarding.overrun.ledBy());
        connected.forEach(other -> other.overrun.forget());
        cold.forget();
        cell.disconnect();
        awaits = guarding.then;
        if (awaits == Awaits.A_PAUSE) {
            boolean again = tried < limits.reconnection().tries();
            tried++;
            awaits = again ? Awaits.A_PAUSE : Awaits.NOTHING;
            pauseEnds = again ? now.seconds + limits.reconnection().pauseSeconds() : NO_DEADLINE;
        }
    }

    private void reconnect() {
        String why =
                switch (awaits) {
                    case A_CHARGER, LESS_VOLTAGE ->
                            EventWords.volts(cell.volts()) + " at its terminals";
                    case COOLING -> "down to " + EventWords.celsius(cell.celsius());
                    case A_PAUSE -> "try " + tried + " of " + limits.reconnection().tries();
                    case NOTHING -> throw new IllegalStateException(cell.placed().name());
                };
        int ledBy =
                awaits == Awaits.A_PAUSE
                        ? now.journal.latestOf(List.of(cell.placed().part()))
                        : awaited().ledBy();
        write(Kind.BATTERY_RECONNECTS, "connects itself again: " + why, ledBy);
        awaited().forget();
        pauseEnds = NO_DEADLINE;
        awaits = Awaits.NOTHING;
        cell.reconnect();
    }

    private void turnFrost() {
        boolean blocks = !cell.takesNoCharge();
        write(
                blocks ? Kind.CHARGING_BLOCKED : Kind.CHARGING_ALLOWED,
                (blocks ? "takes no charge: " : "takes charge again: ")
                        + EventWords.celsius(cell.celsius()),
                frost().ledBy());
        frost().forget();
        cell.takeNoCharge(blocks);
    }

    @Override
    public boolean yieldsWithin(double seconds) {
        if (cell.disconnected()) {
            return false;
        }
        for (Guarding guarding : connected) {
            if (guarding.overrun.runsOutWithin(seconds)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public int blameRank() {
        return 2;
    }

    @Override
    public String remedy() {
        return "a wider gap between where it disconnects and where it connects again, or a"
                + " smaller load on it";
    }

    @Override
    public void giveUp() {
        cell.disconnect();
        awaits = Awaits.NOTHING;
        pauseEnds = NO_DEADLINE;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof ManagementDevice then) {
            awaits = then.awaits;
            tried = then.tried;
        }
    }

    private DelayTimer awaited() {
        return switch (awaits) {
            case A_CHARGER -> charger;
            case LESS_VOLTAGE -> lessVoltage;
            case COOLING -> cooling;
            case A_PAUSE, NOTHING -> never;
        };
    }

    private DelayTimer frost() {
        return cell.takesNoCharge() ? warm : cold;
    }

    private void write(Kind kind, String words, int ledBy) {
        now.log(kind, cell.placed().part(), words, ledBy);
    }

    /** A battery that is being charged is let off, however low it is. */
    private double low() {
        return Math.max(cell.volts() - limits.underVolts().at(), -cell.dischargeAmps() - IDLE_AMPS);
    }

    private double high() {
        return limits.overVolts().at() - cell.volts();
    }

    private double discharging() {
        return limits.overAmps().at() - cell.dischargeAmps();
    }

    private double charging() {
        return limits.chargeAmps().at() + cell.dischargeAmps();
    }

    private String tooLow() {
        return EventWords.tooLittle(cell.volts(), limits.underVolts().at());
    }

    private String tooHigh() {
        return EventWords.volts(cell.volts())
                + " exceeds its "
                + EventWords.volts(limits.overVolts().at());
    }

    private String tooMuchDrawn() {
        return EventWords.amps(cell.dischargeAmps())
                + " exceeds its "
                + EventWords.amps(limits.overAmps().at());
    }

    private String tooMuchTaken() {
        return EventWords.amps(-cell.dischargeAmps())
                + " of charge exceeds its "
                + EventWords.amps(limits.chargeAmps().at());
    }
}
