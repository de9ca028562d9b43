package stillturning.story.device;

import stillturning.network.BranchLaw;

/** A branch whose law never changes: metal, a diode. */
record MetalDevice(int branch, BranchLaw law) implements BranchDevice {

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public void adopt(Device healthy) {}
}
