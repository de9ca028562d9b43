package stillturning.story.device.plant;

import stillturning.story.Setting.Blocks;
import stillturning.story.device.Device;

/** Runs a load that is used now and then in one block, at full current. */
final class BlockDevice implements Device {

    private final SupplyDevice supply;
    private final Blocks blocks;
    private double deadline;

    BlockDevice(SupplyDevice supply, Blocks blocks) {
        this.supply = supply;
        this.blocks = blocks;
        this.deadline = blocks.fromSeconds();
        supply.pause(true);
    }

    @Override
    public double margin() {
        return NOTHING_TO_WATCH;
    }

    @Override
    public void cross() {}

    @Override
    public double deadline() {
        return deadline;
    }

    @Override
    public void expire() {
        boolean begins = deadline == blocks.fromSeconds();
        supply.pause(!begins);
        deadline = begins ? blocks.fromSeconds() + supply.duty() * blocks.ofSeconds() : NO_DEADLINE;
    }

    @Override
    public void adopt(Device healthy) {}

    @Override
    public boolean isSlow() {
        return true;
    }
}
