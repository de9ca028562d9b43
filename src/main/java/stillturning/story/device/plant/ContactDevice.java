package stillturning.story.device.plant;

import java.util.Optional;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Contact;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/** A pair of contacts that follows its lever or its coil. */
final class ContactDevice implements BranchDevice {

    private final Placed placed;
    private final Contact contact;
    private final int branch;
    private final Situation now;
    private final Optional<CoilDevice> coil;
    private final BranchLaw metal;
    private int leversSeen = -1;
    private boolean pulled;
    private boolean closed;

    ContactDevice(
            Placed placed, Contact contact, int branch, Optional<CoilDevice> coil, Situation now) {
        this.placed = placed;
        this.contact = contact;
        this.branch = branch;
        this.now = now;
        this.coil = coil;
        this.metal = new Resistive(contact.ohms());
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return closed() ? metal : Open.CIRCUIT;
    }

    @Override
    public boolean acts() {
        return false;
    }

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public void adopt(Device healthy) {}

    private boolean closed() {
        boolean pulls = coil.isPresent() && coil.get().pulled();
        if (leversSeen != now.levers.changes() || pulls != pulled) {
            leversSeen = now.levers.changes();
            pulled = pulls;
            String position = now.levers.at(placed.part());
            closed = contact.control().closes(position == null ? "" : position, pulls);
        }
        return closed;
    }
}
