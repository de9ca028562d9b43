package stillturning.story.device.plant;

import stillturning.model.Circuit.Placed;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.parts.element.Conversion;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.Watch;

/** A DC–DC converter's input side; {@link OutputSide} is its other branch. */
final class ConversionDevice implements BranchDevice {

    private final Placed placed;
    private final Conversion conversion;
    private final int branch;
    private final Situation now;
    private final BranchLaw drawing;
    private final Watch feeds;
    private final Watch starts;
    private boolean runs = true;
    private boolean resting;

    ConversionDevice(
            Placed placed, Conversion conversion, int branch, int outputBranch, Situation now) {
        this.placed = placed;
        this.conversion = conversion;
        this.branch = branch;
        this.now = now;
        this.drawing =
                new ConverterInput(
                        outputBranch,
                        conversion.efficiency(),
                        conversion.input().idleWatts(),
                        conversion.input().minimumVolts());
        int from = placed.from();
        int to = placed.to();
        this.feeds = Watch.OfVolts.atLeast(from, to, conversion.input().minimumVolts());
        this.starts = Watch.OfVolts.atMost(from, to, conversion.input().restartVolts());
    }

    @Override
    public int branch() {
        return branch;
    }

    @Override
    public BranchLaw law() {
        return runs ? drawing : Open.CIRCUIT;
    }

    @Override
    public double margin() {
        if (resting) {
            return NOTHING_TO_WATCH;
        }
        double volts = now.voltsBetween(placed.from(), placed.to());
        return runs
                ? volts - conversion.input().minimumVolts()
                : conversion.input().restartVolts() - volts;
    }

    @Override
    public Watch watch() {
        if (resting) {
            return Watch.Plain.NOTHING;
        }
        return runs ? feeds : starts;
    }

    @Override
    public void cross() {
        runs = !runs;
        now.log(
                runs ? StoryEvent.Kind.SOURCE_STARTS : StoryEvent.Kind.SOURCE_STOPS,
                placed.part(),
                (runs ? "delivers again: " : "stops delivering: ")
                        + EventWords.volts(now.voltsBetween(placed.from(), placed.to()))
                        + " at its input");
    }

    @Override
    public void adopt(Device healthy) {
        if (healthy instanceof ConversionDevice then) {
            runs = then.runs;
            resting = then.resting;
        }
    }

    @Override
    public int blameRank() {
        return 3;
    }

    @Override
    public String remedy() {
        return "an input that sags less when it delivers (a stiffer source, a shorter or"
                + " thicker feed), or a restart voltage further above its minimum";
    }

    @Override
    public void giveUp() {
        resting = true;
        runs = false;
    }

    /** The branch that delivers. */
    static final class Output implements BranchDevice {
        private final ConversionDevice input;
        private final int branch;
        private final BranchLaw delivering;

        Output(ConversionDevice input, int branch) {
            this.input = input;
            this.branch = branch;
            Conversion.OutputSide output = input.conversion.output();
            this.delivering =
                    new LimitedSource(output.setVolts(), output.droopOhms(), output.limitAmps());
        }

        @Override
        public int branch() {
            return branch;
        }

        @Override
        public BranchLaw law() {
            return input.runs ? delivering : Open.CIRCUIT;
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
}
