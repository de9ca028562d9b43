package stillturning.story.timeline;

import java.util.Arrays;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.device.Device;
import stillturning.story.device.Racer;
import stillturning.story.device.Situation;

/** Finds devices that flip without end, and the one to blame. */
final class Chatter {

    /** Flips of one device at one instant, and in one story, that count as chatter. */
    private static final int FLIPS_AT_ONCE = 20;

    private static final int FLIPS_IN_ALL = 60;

    /** Flips of all devices in one story, for each device, that no story gets to. */
    private static final int FLIPS_A_DEVICE = 400;

    /** A device to blame has flipped at least this part of what the worst one has. */
    private static final double SHARE = 0.25;

    private final String[] names;
    private final Device[] devices;
    private final Situation now;
    private final int[] inAll;
    private final int[] atOnce;
    private final FlipCycle cycle = new FlipCycle();
    private int inStory;
    private boolean tooMany;

    Chatter(String[] names, Device[] devices, Situation now) {
        this.names = names;
        this.devices = devices;
        this.now = now;
        inAll = new int[devices.length];
        atOnce = new int[devices.length];
    }

    void newInstant() {
        Arrays.fill(atOnce, 0);
    }

    void flipped(int device) {
        inStory++;
        // what grows warm passes its limits each time, and flips nothing
        if (!(devices[device] instanceof Racer)) {
            cycle.flipped(device, now.seconds);
        }
        tooMany |= ++atOnce[device] > FLIPS_AT_ONCE;
        if (!devices[device].onlyFollows()) {
            tooMany |= ++inAll[device] > FLIPS_IN_ALL;
        }
    }

    /**
     * Brings the device to rest that makes the others flip.
     *
     * @throws UntoldStory if there is none
     */
    void calm() throws UntoldStory {
        if (inStory > FLIPS_A_DEVICE * devices.length) {
            throw new UntoldStory(
                    "no end of events at " + now.seconds + " s: " + cycle.inWords(this::nameOf));
        }
        if (!tooMany) {
            return;
        }
        tooMany = false;
        int blamed = blamed();
        devices[blamed].giveUp();
        now.log(
                StoryEvent.Kind.CHATTER,
                part(names[blamed]),
                "flips to and fro without end ("
                        + cycle.inWords(this::nameOf)
                        + "); taken as given up for good"
                        + remedy(devices[blamed]));
        Arrays.fill(atOnce, 0);
        Arrays.fill(inAll, 0);
    }

    /** The one with the highest blame rank among those that flip much; the first of several. */
    private int blamed() throws UntoldStory {
        int worst = 0;
        for (int i = 1; i < devices.length; i++) {
            worst = inAll[i] > inAll[worst] ? i : worst;
        }
        int blamed = worst;
        for (int i = 0; i < devices.length; i++) {
            if (inAll[i] >= SHARE * inAll[worst]
                    && devices[i].blameRank() > devices[blamed].blameRank()) {
                blamed = i;
            }
        }
        if (devices[blamed].blameRank() == 0) {
            throw new UntoldStory(
                    names[worst]
                            + " flips without end at "
                            + now.seconds
                            + " s, which no steady state can follow: "
                            + cycle.inWords(this::nameOf));
        }
        return blamed;
    }

    private static String remedy(Device blamed) {
        return blamed.remedy().isEmpty() ? "" : "; what helps: " + blamed.remedy();
    }

    private String nameOf(int device) {
        return part(names[device]);
    }

    private static String part(String name) {
        int slash = name.indexOf('/');
        return slash < 0 ? name : name.substring(0, slash);
    }
}
