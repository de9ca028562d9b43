package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Role;
import stillturning.report.drawing.MarkState;
import stillturning.story.Snapshot;

/**
 * How the nets of a circuit look.
 *
 * <p>A net is on backup where at least half of the current that arrives there comes from a source
 * that gave none, or through a part that carried none to this net, while nothing was wrong. Where
 * no current arrives, it is as the net that it is joined to.
 */
final class NetStates {

    /**
     * A net below this is dark (V): no relay holds and no electronics runs on it, while a shorted
     * bus still has some tenths.
     */
    static final double DEAD_VOLTS = 3;

    /** Less is no current (A). */
    private static final double NO_AMPS = 1e-3;

    /** Of a current, what carried less than this share of it before is a new way for it. */
    private static final double NEW_SHARE = 0.1;

    /** Nets that are joined and carry nothing differ by less (V). */
    private static final double ONE_VOLTAGE = 0.5;

    private static final double UNKNOWN = -1;

    private final Circuit circuit;
    private final Withstand withstand;
    private final List<Way> ways = new ArrayList<>();
    private final double[] voltsBefore;
    private final double[] arrivedBefore;

    /**
     * An element that takes current from one net to another.
     *
     * @param sign of a current in that direction
     * @param source whether a current against that direction is made there
     * @param passes whether its ends have one voltage while no current flows
     * @param before what it carried in that direction with nothing wrong (A)
     */
    private record Way(
            String name,
            int from,
            int to,
            int sign,
            boolean source,
            boolean passes,
            double before) {
        double amps(Snapshot frame) {
            return sign * frame.amps(name);
        }
    }

    NetStates(Circuit circuit, Withstand withstand, Snapshot before) {
        this.circuit = circuit;
        this.withstand = withstand;
        this.voltsBefore = new double[circuit.nets()];
        this.arrivedBefore = new double[circuit.nets()];
        for (int net = 0; net < before.nets(); net++) {
            voltsBefore[net] = before.volts(net);
        }
        for (Placed placed : circuit.placed()) {
            addWays(placed, before);
        }
        for (Way way : ways) {
            int to = way.before > 0 ? way.to : way.from;
            arrivedBefore[to] += Math.abs(way.before);
        }
    }

    private void addWays(Placed placed, Snapshot before) {
        Element element = placed.element();
        String name = placed.name();
        boolean source = element.role().isSource();
        boolean passes = !source && element.role() != Role.CONVERTER;
        ways.add(new Way(name, placed.from(), placed.to(), 1, source, passes, before.amps(name)));
        if (element instanceof Conversion conversion) {
            String output = Snapshot.output(name);
            int plus = circuit.net(placed.part(), conversion.output().plus());
            double amps = -before.amps(output);
            ways.add(new Way(output, placed.from(), plus, -1, false, false, amps));
        }
    }

    MarkState[] at(Snapshot frame) {
        double[] backup = backup(frame);
        MarkState[] looks = new MarkState[circuit.nets()];
        for (int net = 0; net < looks.length; net++) {
            looks[net] = look(net, frame, backup[net]);
        }
        return looks;
    }

    private MarkState look(int net, Snapshot frame, double backup) {
        double volts = Math.abs(frame.volts(net));
        if (volts < DEAD_VOLTS) {
            boolean returns = Math.abs(voltsBefore[net]) < DEAD_VOLTS;
            return returns && backup != UNKNOWN ? MarkState.LIVE : MarkState.DARK;
        } else if (withstand.exceeded(net, volts)) {
            return MarkState.OVER_VOLTAGE;
        }
        return backup >= 0.5 ? MarkState.ON_BACKUP : MarkState.LIVE;
    }

    /** Share of what arrives at each net that is backup; {@link #UNKNOWN} where nothing does. */
    private double[] backup(Snapshot frame) {
        double[] amps = new double[ways.size()];
        for (int i = 0; i < amps.length; i++) {
            amps[i] = ways.get(i).amps(frame);
        }
        double[] shares = new double[circuit.nets()];
        boolean changed = true;
        for (int sweep = 0; changed && sweep < circuit.nets(); sweep++) {
            double[] next = mixed(amps, shares);
            changed = !Arrays.equals(next, shares);
            shares = next;
        }
        spread(frame, shares);
        return shares;
    }

    private double[] mixed(double[] ampsOf, double[] shares) {
        double[] arrives = new double[shares.length];
        double[] backup = new double[shares.length];
        for (int i = 0; i < ampsOf.length; i++) {
            Way way = ways.get(i);
            double amps = ampsOf[i];
            if (Math.abs(amps) >= NO_AMPS) {
                int to = amps > 0 ? way.to : way.from;
                int from = amps > 0 ? way.from : way.to;
                arrives[to] += Math.abs(amps);
                backup[to] += Math.abs(amps) * share(way, amps, to, shares[from]);
            }
        }
        for (int net = 0; net < shares.length; net++) {
            backup[net] = arrives[net] > 0 ? backup[net] / arrives[net] : UNKNOWN;
        }
        return backup;
    }

    private double share(Way way, double amps, int to, double upstream) {
        double before = Math.signum(amps) * way.before;
        boolean isNew = before < NEW_SHARE * Math.abs(amps);
        if (way.source && amps < 0) {
            return isNew ? 1 : 0;
        }
        boolean anotherWay = isNew && arrivedBefore[to] >= NEW_SHARE * Math.abs(amps);
        return anotherWay ? 1 : Math.max(0, upstream);
    }

    /** Nets at which no current arrives are as what they hang on. */
    private void spread(Snapshot frame, double[] shares) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (Way way : ways) {
                boolean known = shares[way.from] != UNKNOWN;
                if (known != (shares[way.to] != UNKNOWN) && joins(way, frame)) {
                    shares[known ? way.to : way.from] = shares[known ? way.from : way.to];
                    changed = true;
                }
            }
        }
    }

    private static boolean joins(Way way, Snapshot frame) {
        return way.passes
                && !frame.lacks(way.name)
                && !frame.open(way.name)
                && Math.abs(frame.volts(way.from) - frame.volts(way.to)) < ONE_VOLTAGE;
    }
}
