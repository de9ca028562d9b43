package stillturning.files.move;

import java.util.List;

/** Every small change that can be made in a drawing. */
public final class Moves {

    private static final List<Finder> ALL =
            List.of(
                    new SecondPath(),
                    new OtherSource(),
                    new SplitBus(),
                    new OwnGround(),
                    new OwnWay(),
                    new AddedBattery(),
                    RemovedPart::batteries,
                    new OtherBattery(),
                    new ChargingPath(),
                    new OverVoltage(),
                    new AddedWarning(),
                    new AddedProtector(),
                    new OtherProtector(),
                    new OtherSwitching(),
                    new RemovedPart(),
                    new RemovedPath(),
                    new OtherActs());

    private Moves() {}

    /** Every move of a drawing, always in the same order. Not each of them can be made. */
    public static List<Move> of(Drawn drawn) {
        return ALL.stream().flatMap(finder -> finder.in(drawn)).toList();
    }
}
