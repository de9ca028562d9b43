package stillturning.story.device.plant;

import stillturning.network.law.BranchLaw;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;

/** A branch whose law never changes: metal, a diode. */
record MetalDevice(int branch, BranchLaw law) implements BranchDevice {

    @Override
    public boolean changesLaw() {
        return false;
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
}
