package stillturning.timeline;

import java.util.Locale;
import stillturning.element.Cell;
import stillturning.model.Circuit.Placed;
import stillturning.network.BranchLaw;
import stillturning.network.Open;
import stillturning.network.Storage;

/**
 * A battery's chemistry: a charge that moves along the straight pieces of its open-circuit curve,
 * so that each piece can be crossed exactly at its end.
 */
final class CellDevice implements Placing, Stateful {

    private final Placed placed;
    private final Cell cell;
    private final int branch;
    private final Situation now;
    private double charge;
    private int piece;
    private boolean empty;
    private boolean disconnected;

    CellDevice(Placed placed, Cell cell, int branch, Situation now) {
        this.placed = placed;
        this.cell = cell;
        this.branch = branch;
        this.now = now;
        this.charge = cell.chargeAtStart();
        this.piece = cell.openCircuit().curve().pieceAt(charge);
    }

    Placed placed() {
        return placed;
    }

    Cell cell() {
        return cell;
    }

    boolean disconnected() {
        return disconnected;
    }

    void disconnect() {
        disconnected = true;
    }

    double volts() {
        return now.voltsBetween(placed.from(), placed.to());
    }

    double dischargeAmps() {
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
        double volts = cell.openCircuit().voltsOn(piece, charge);
        return new Storage(
                volts, cell.ohms(), cell.acceptAmps(charge), empty ? 0 : Double.POSITIVE_INFINITY);
    }

    @Override
    public double margin() {
        if (disconnected || empty) {
            return NOTHING_TO_WATCH;
        }
        double down = charge - cell.openCircuit().curve().pieceStart(piece);
        double up = cell.openCircuit().curve().pieceEnd(piece) - charge;
        return dischargeAmps() >= 0 ? down : up;
    }

    @Override
    public void cross() {
        if (dischargeAmps() < 0) {
            piece = Math.min(piece + 1, cell.openCircuit().curve().pieces() - 1);
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

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof CellDevice then) {
            charge = then.charge;
            piece = then.piece;
            empty = then.empty;
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

    @Override
    public boolean quick() {
        return false;
    }
}
