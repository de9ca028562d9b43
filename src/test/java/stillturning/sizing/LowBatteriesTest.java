package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Installation;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.UntoldStory;

/**
 * What an alternator drives into a battery that comes nearly empty: all that it can give and the
 * loads do not take, since the battery's voltage at rest is volts below the set point. Event
 * 20170702X73412 (NTSB) tells of a battery that disconnected itself so.
 */
class LowBatteriesTest {

    private static final double LOAD_AMPS = 5;

    private static Bench flying(double alternatorAmps, double allowedAmps, double charge) {
        Management lenient = Shelf.LENIENT;
        Management limited =
                new Management(
                        lenient.underVolts(),
                        lenient.overVolts(),
                        lenient.overAmps(),
                        new Limit(allowedAmps, 5),
                        Optional.empty(),
                        lenient.reconnection());
        return new Bench()
                .part(Shelf.lithium("battery", 10, charge, limited))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, LOAD_AMPS, Bench.HARDY)
                .join("engine-needs", "plus", "bus", "bar")
                .part(Shelf.alternator("alternator", 14.2, alternatorAmps, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar");
    }

    private static List<SizeFinding> greedy(Bench bench) throws UntoldStory {
        return Sizing.of(bench.study(), bench.candidate(), Installation.USUAL).findings().stream()
                .filter(f -> f.rule() == Rule.CHARGE_CURRENT)
                .toList();
    }

    @Test
    void whatTheLoadsLeaveOfTheAlternatorIsMoreThanTheManagementAllows() throws UntoldStory {
        List<SizeFinding> found = greedy(flying(45, 20, 0.9));
        assertEquals(1, found.size());
        assertEquals(20, found.get(0).allowed(), 1e-9);
        double field = 14.2 / 4;
        assertEquals(45 - LOAD_AMPS - field, found.get(0).found(), 2);
    }

    /** However full it is when the study has it: the one that comes low is another day's. */
    @Test
    void itIsAskedOfAFullBatteryToo() throws UntoldStory {
        assertEquals(1, greedy(flying(45, 20, 1)).size());
    }

    @Test
    void aSmallAlternatorCannotDriveSoMuch() throws UntoldStory {
        assertEquals(List.of(), greedy(flying(24, 20, 0.9)));
    }

    @Test
    void aManagementThatAllowsMoreThanTheAlternatorGivesHasNothingToFear() throws UntoldStory {
        assertEquals(List.of(), greedy(flying(45, 50, 0.9)));
    }
}
