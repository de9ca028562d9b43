package stillturning.story.timeline.stride;

import java.util.function.Supplier;
import stillturning.network.NodalSolver;
import stillturning.story.device.Device;
import stillturning.story.device.Watch;

/** The margins of all devices, read together. */
public final class MarginTable {

    private final Device[] devices;
    private final Supplier<NodalSolver> network;
    private final Watch[] watched;
    private final double[] margins;

    private final int[] ofVolts;
    private final int[] from;
    private final int[] to;
    private final boolean[] eitherWay;
    private final double[] sign;
    private final double[] limitVolts;
    private final double[] volts;
    private int voltages;

    private final int[] ofAmps;
    private final int[] branch;
    private final double[] perAmp;
    private final double[] amps;
    private int currents;

    private final int[] own;
    private int owns;
    private final int[] followed;
    private int follows;

    /**
     * Of these devices, nothing known of their states.
     *
     * @param network where voltages and currents are read
     */
    public MarginTable(Device[] devices, Supplier<NodalSolver> network) {
        int most = devices.length;
        this.devices = devices;
        this.network = network;
        watched = new Watch[most];
        margins = new double[most];
        ofVolts = new int[most];
        from = new int[most];
        to = new int[most];
        eitherWay = new boolean[most];
        sign = new double[most];
        limitVolts = new double[most];
        volts = new double[most];
        ofAmps = new int[most];
        branch = new int[most];
        perAmp = new double[most];
        amps = new double[most];
        own = new int[most];
        followed = new int[most];
    }

    /** How many devices there are. */
    int count() {
        return devices.length;
    }

    /** Takes over what each device watches now; to be done whenever something has happened. */
    public void renew() {
        voltages = 0;
        currents = 0;
        owns = 0;
        for (int i = 0; i < devices.length; i++) {
            Watch watch = devices[i].watch();
            watched[i] = watch;
            if (watch instanceof Watch.OfAmps of) {
                ofAmps[currents] = i;
                branch[currents] = of.branch();
                perAmp[currents++] = of.perAmp();
            } else if (watch instanceof Watch.OfVolts of) {
                add(i, of);
            } else if (watch instanceof Watch.Plain plain) {
                add(i, plain);
            }
        }
    }

    private void add(int device, Watch.Plain watch) {
        switch (watch) {
            case NOTHING -> margins[device] = Device.NOTHING_TO_WATCH;
            case OWN -> own[owns++] = device;
        }
    }

    /** Whether every device still watches what was taken over last. */
    public boolean isCurrent() {
        for (int i = 0; i < devices.length; i++) {
            if (devices[i].watch() != watched[i]) {
                throw new AssertionError(devices[i] + " watches something else unasked");
            }
        }
        return true;
    }

    private void add(int device, Watch.OfVolts watch) {
        ofVolts[voltages] = device;
        from[voltages] = watch.from();
        to[voltages] = watch.to();
        eitherWay[voltages] = watch.eitherWay();
        sign[voltages] = watch.sign();
        limitVolts[voltages++] = watch.limitVolts();
    }

    /** Reads them at the present operating point; what devices must be asked for, too. */
    double[] read() {
        return readAsking(own, owns);
    }

    private double[] readAsking(int[] which, int count) {
        readVoltsAndAmps();
        for (int i = 0; i < count; i++) {
            margins[which[i]] = devices[which[i]].margin();
        }
        assert agree();
        return margins;
    }

    /** From here on nothing happens: what is a matter of yes or no stays what was read last. */
    void follow() {
        follows = 0;
        for (int i = 0; i < owns; i++) {
            double margin = margins[own[i]];
            if (margin != Device.NOT_NOW && margin != Device.NOTHING_TO_WATCH) {
                followed[follows++] = own[i];
            }
        }
    }

    /** Reads them while nothing happens. */
    double[] readFollowed() {
        return readAsking(followed, follows);
    }

    /** The lowest of all. */
    public double lowest() {
        double lowest = Double.POSITIVE_INFINITY;
        for (double margin : read()) {
            lowest = Math.min(lowest, margin);
        }
        return lowest;
    }

    /** Reads those that can be read together; a device that must be asked has none (NaN). */
    public double[] readTogether() {
        readVoltsAndAmps();
        for (int i = 0; i < owns; i++) {
            margins[own[i]] = Double.NaN;
        }
        return margins;
    }

    private void readVoltsAndAmps() {
        NodalSolver solver = network.get();
        solver.volts(from, to, voltages, volts);
        for (int i = 0; i < voltages; i++) {
            double across = eitherWay[i] ? Math.abs(volts[i]) : volts[i];
            margins[ofVolts[i]] = sign[i] * (across - limitVolts[i]);
        }
        solver.amps(branch, currents, amps);
        for (int i = 0; i < currents; i++) {
            margins[ofAmps[i]] = 1 - Math.abs(amps[i]) * perAmp[i];
        }
    }

    /** Whether every device says the same of its margin. */
    private boolean agree() {
        for (int i = 0; i < devices.length; i++) {
            double margin = devices[i].margin();
            if (margin != margins[i] && !(Double.isNaN(margin) && Double.isNaN(margins[i]))) {
                throw new AssertionError(
                        "device " + i + ", " + devices[i] + ": " + margin + ", not " + margins[i]);
            }
        }
        return true;
    }
}
