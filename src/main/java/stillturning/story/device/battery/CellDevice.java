package stillturning.story.device.battery;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.GasPath;
import stillturning.network.law.Open;
import stillturning.network.law.Storage;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Management;
import stillturning.parts.element.curve.ByTemperature;
import stillturning.parts.element.curve.GasCurve;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.story.Balance.Account;
import stillturning.story.StoryEvent;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;

/**
 * A battery's chemistry: a charge that moves along the straight pieces of its open-circuit curve,
 * so that each piece can be crossed exactly at its end.
 */
public final class CellDevice implements Store {

    /** An empty battery that takes in less than this stays empty (A). */
    private static final double CHARGING_AMPS = 1e-6;

    /** A trial goes no further than this beyond empty and full. */
    private static final double FAR = 1;

    private final Placed placed;
    private final Cell cell;
    private final int branch;
    private final Situation now;
    private final double zoneCelsius;
    private final Optional<Warmth> warmth;
    private double charge;
    private int piece;
    private boolean empty;
    private boolean resting;
    private boolean disconnected;
    private boolean takesNoCharge;
    private final GasPath gas;
    private Storage storage;
    private double capacityCelsius;
    private Capacity capacity;

    public CellDevice(Placed placed, Cell cell, int branch, Situation now) {
        this.placed = placed;
        this.cell = cell;
        this.branch = branch;
        this.now = now;
        this.zoneCelsius = now.celsius(placed.part());
        this.warmth =
                cell.management()
                        .flatMap(Management::temperatures)
                        .filter(watched -> cell.kilograms() > 0)
                        .map(watched -> new Warmth(zoneCelsius, cell.kilograms(), this::lostWatts));
        GasCurve curve = cell.gas(now.setting.laws().overcharge(), zoneCelsius);
        this.gas = new GasPath(curve.volts(), curve.amps());
        this.charge = cell.chargeAtStart();
        this.piece = cell.openCircuit().curve().pieceAt(charge);
        this.capacityCelsius = zoneCelsius;
        this.capacity = cell.capacityAt(zoneCelsius);
        this.storage = storage();
    }

    @Override
    public Placed placed() {
        return placed;
    }

    public Cell cell() {
        return cell;
    }

    public boolean disconnected() {
        return disconnected;
    }

    void disconnect() {
        disconnected = true;
    }

    void reconnect() {
        disconnected = false;
    }

    boolean takesNoCharge() {
        return takesNoCharge;
    }

    /** Whether its management lets no charge in; it gives all the same. */
    void takeNoCharge(boolean none) {
        takesNoCharge = none;
    }

    /** Its temperature above that of its zone; followed only where a management watches it. */
    public Optional<Warmth> warmth() {
        return warmth;
    }

    @Override
    public List<Stateful> heats() {
        return warmth.<List<Stateful>>map(List::of).orElse(List.of());
    }

    /** Temperature (°C). */
    double celsius() {
        return warmth.isPresent() ? warmth.get().celsius() : zoneCelsius;
    }

    public double volts() {
        return now.voltsBetween(placed.from(), placed.to());
    }

    @Override
    public double dischargeAmps() {
        return -now.amps(branch);
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        if (disconnected) {
            return Open.CIRCUIT;
        }
        storage = storage();
        return storage;
    }

    private Storage storage() {
        double celsius = celsius();
        // a trial step may run far beyond an end of the curve
        double volts = Math.max(0, cell.openCircuit().voltsOn(piece, charge, celsius));
        double ohms = Math.max(cell.ohms() / 10, cell.ohmsOn(piece, charge, celsius));
        return new Storage(volts, ohms, intake(ohms), empty ? 0 : Double.POSITIVE_INFINITY);
    }

    private Storage.Intake intake(double ohms) {
        if (takesNoCharge) {
            return Storage.Intake.NONE;
        }
        double accept = cell.acceptAmps(charge);
        return new Storage.Intake(accept, ohms + cell.overVolts() / accept, gas);
    }

    /** Charging current that becomes gas (A). */
    double gassingAmps() {
        return disconnected ? 0 : storage.gassingAmps(volts());
    }

    /** What its resistances turn into heat, charging or discharging (W). */
    private double lostWatts() {
        return disconnected ? 0 : (volts() - storage.volts()) * now.amps(branch);
    }

    private Capacity capacity() {
        if (capacityCelsius != celsius()) {
            capacityCelsius = celsius();
            capacity = cell.capacityAt(capacityCelsius);
        }
        return capacity;
    }

    @Override
    public double margin() {
        if (disconnected || resting) {
            return NOTHING_TO_WATCH;
        }
        if (empty) {
            return dischargeAmps() + CHARGING_AMPS;
        }
        double down = charge - cell.openCircuit().curve().pieceStart(piece);
        double up = cell.openCircuit().curve().pieceEnd(piece) - charge;
        return dischargeAmps() >= 0 ? down : up;
    }

    @Override
    public void cross() {
        if (empty) {
            empty = false;
        } else if (dischargeAmps() < 0) {
            fill();
        } else if (piece > 0) {
            piece--;
        } else {
            empty = true;
            charge = 0;
            now.log(
                    StoryEvent.Kind.BATTERY_EMPTY,
                    placed.part(),
                    String.format(Locale.ROOT, "is empty, down to %s", EventWords.volts(volts())));
        }
    }

    private void fill() {
        if (piece < cell.openCircuit().curve().pieces() - 1) {
            piece++;
        } else {
            charge = 1;
        }
    }

    @Override
    public int blameRank() {
        return 1;
    }

    @Override
    public String remedy() {
        return "a source that does not come and go with its charge";
    }

    @Override
    public void giveUp() {
        resting = true;
        empty = true;
        charge = 0;
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof CellDevice then) {
            charge = then.charge;
            piece = then.piece;
            empty = then.empty;
            resting = then.resting;
            disconnected = then.disconnected;
            takesNoCharge = then.takesNoCharge;
            then.warmth.ifPresent(warm -> warmth.ifPresent(own -> own.value(warm.value())));
        }
    }

    @Override
    public double value() {
        return charge;
    }

    @Override
    public void value(double value) {
        // a trial step may run anywhere, even to no number; what is far out is far out
        charge = value >= -FAR ? Math.min(1 + FAR, value) : -FAR;
    }

    /** Puts it at a charge from 0 to 1, on the piece of the curve that belongs to it. */
    public void charge(double fraction) {
        charge = fraction;
        piece = cell.openCircuit().curve().pieceAt(fraction);
    }

    @Override
    public double way() {
        RestVoltage curve = cell.openCircuit().curve();
        return Math.max(
                0,
                dischargeAmps() >= 0
                        ? charge - curve.pieceStart(piece)
                        : curve.pieceEnd(piece) - charge);
    }

    @Override
    public double perSecond() {
        double amps = dischargeAmps();
        if (disconnected || empty) {
            return 0;
        }
        if (amps >= 0) {
            return -capacity().usedPerSecond(amps);
        }
        double stored = Math.max(0, -amps - gassingAmps());
        return charge >= 1 ? 0 : stored / capacity().coulombs();
    }

    /** By its voltage at rest. */
    @Override
    public double storingWatts() {
        return restVoltsAt(charge) * cell.capacity().coulombs() * perSecond();
    }

    /** On the present piece of the curve. */
    @Override
    public double joulesDownFrom(double before) {
        return restVoltsAt((before + charge) / 2) * cell.capacity().coulombs() * (before - charge);
    }

    /** At one temperature, so that what is stored hangs on the charge alone. */
    private double restVoltsAt(double fraction) {
        return cell.openCircuit().voltsOn(piece, fraction, ByTemperature.REFERENCE_CELSIUS);
    }

    @Override
    public Account account() {
        return Account.BATTERIES;
    }

    @Override
    public boolean quick() {
        return false;
    }
}
