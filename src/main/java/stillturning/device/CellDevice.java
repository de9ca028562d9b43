package stillturning.device;

import java.util.Locale;
import stillturning.element.Cell;
import stillturning.element.RestVoltage;
import stillturning.model.Circuit.Placed;
import stillturning.network.BranchLaw;
import stillturning.network.Open;
import stillturning.network.Storage;
import stillturning.story.Happening;

/**
 * A battery's chemistry: a charge that moves along the straight pieces of its open-circuit curve,
 * so that each piece can be crossed exactly at its end.
 */
public final class CellDevice implements Placing, Stateful {

    /** An empty battery that takes in less than this stays empty (A). */
    private static final double CHARGING_AMPS = 1e-6;

    private final Placed placed;
    private final Cell cell;
    private final int branch;
    private final Situation now;
    private double charge;
    private int piece;
    private boolean empty;
    private boolean resting;
    private boolean disconnected;

    public CellDevice(Placed placed, Cell cell, int branch, Situation now) {
        this.placed = placed;
        this.cell = cell;
        this.branch = branch;
        this.now = now;
        this.charge = cell.chargeAtStart();
        this.piece = cell.openCircuit().curve().pieceAt(charge);
    }

    public Placed placed() {
        return placed;
    }

    public Cell cell() {
        return cell;
    }

    public boolean disconnected() {
        return disconnected;
    }

    public void disconnect() {
        disconnected = true;
    }

    public double volts() {
        return now.voltsBetween(placed.from(), placed.to());
    }

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
            return new Open();
        }
        // a trial step may run far beyond an end of the curve
        double volts = Math.max(0, cell.openCircuit().voltsOn(piece, charge));
        return new Storage(
                volts, cell.ohms(), cell.acceptAmps(charge), empty ? 0 : Double.POSITIVE_INFINITY);
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
                    Happening.Kind.BATTERY_EMPTY,
                    placed.part(),
                    String.format(Locale.ROOT, "is empty, down to %s", Say.volts(volts())));
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
    public int sway() {
        return 1;
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
        }
    }

    @Override
    public double value() {
        return charge;
    }

    @Override
    public void value(double value) {
        charge = value;
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
            return -cell.capacity().usedPerSecond(amps);
        }
        return charge >= 1 ? 0 : -amps / cell.capacity().coulombs();
    }

    /** Energy that it stores each second (W), below 0 while it gives, by its voltage at rest. */
    public double storingWatts() {
        double volts = cell.openCircuit().voltsOn(piece, charge);
        return volts * cell.capacity().coulombs() * perSecond();
    }

    /** Energy between a charge, on the present piece of the curve, and the present charge (J). */
    public double joulesDownFrom(double before) {
        double volts = cell.openCircuit().voltsOn(piece, (before + charge) / 2);
        return volts * cell.capacity().coulombs() * (before - charge);
    }

    @Override
    public boolean quick() {
        return false;
    }
}
