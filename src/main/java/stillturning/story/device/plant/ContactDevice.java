package stillturning.story.device.plant;

import java.util.Optional;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
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
    private final BranchLaw closed;

    ContactDevice(
            Placed placed, Contact contact, int branch, Optional<CoilDevice> coil, Situation now) {
        this.placed = placed;
        this.contact = contact;
        this.branch = branch;
        this.now = now;
        this.coil = coil;
        this.closed = new Resistive(contact.ohms());
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return closed() ? closed : new Open();
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
        if (contact.control() instanceof Control.ByHand hand) {
            String position = now.levers.get(placed.part());
            return position != null && hand.closedAt().contains(position);
        }
        boolean whenPulled = ((Control.ByCoil) contact.control()).closedWhenPulled();
        return coil.map(CoilDevice::pulled).orElse(false) == whenPulled;
    }
}
