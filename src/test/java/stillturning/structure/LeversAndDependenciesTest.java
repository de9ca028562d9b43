package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.parts.switching.SelectorSwitch;
import stillturning.parts.switching.Switch.Throw;
import stillturning.structure.StructureFindings.SinglePoint;

/** Small invented candidates in which something must be fed or moved for something to conduct. */
class LeversAndDependenciesTest {

    /** The contactor's coil is fed through its own switch and returns at its own ground. */
    private static Rig contactorFed() {
        return new Rig()
                .battery("battery")
                .ground("ground")
                .ground("coil-ground")
                .contactor("contactor")
                .lever("master", Throw.SINGLE, 1, "on")
                .load("pump", "plus")
                .allOf("pump")
                .join("battery.minus", "pump.minus", "ground.stud")
                .join("battery.plus", "contactor.in", "master.in")
                .join("master.out", "contactor.coil-plus")
                .join("contactor.coil-minus", "coil-ground.stud")
                .join("contactor.out", "pump.plus");
    }

    @Test
    void whatFeedsTheCoilOfAnOnlyContactorIsASinglePoint() {
        StructureFindings found = contactorFed().findings();
        assertEquals(
                List.of(
                        new SinglePoint("battery", "the only source of pump"),
                        new SinglePoint("ground", "contactor depends on it, and pump on contactor"),
                        new SinglePoint(
                                "coil-ground", "contactor depends on it, and pump on contactor"),
                        new SinglePoint("contactor", "the only feed of pump"),
                        new SinglePoint("master", "contactor depends on it, and pump on contactor"),
                        new SinglePoint("pump", "the engine cannot run without it")),
                found.singlePoints());
    }

    @Test
    void anOpenSwitchThatNothingClosesFeedsNothingAndAProcedureCloses() {
        assertFalse(contactorFed().flight("master", "off").findings().engineSupplied());
        assertTrue(
                contactorFed()
                        .flight("master", "off")
                        .procedure("on", Map.of("master", "on"))
                        .findings()
                        .engineSupplied());
    }

    /** A selector takes the pump from one battery or from the other, never joining both. */
    private static Rig selector(String radioNeeded) {
        return new Rig()
                .battery("main")
                .battery("spare")
                .ground("ground")
                .wire("feed")
                .lever("selector", Throw.DOUBLE, 1, "up")
                .procedure("spare", Map.of("selector", "down"))
                .load("pump", "plus")
                .load("radio", "plus")
                .allOf(radioNeeded.split(" ", -1))
                .join("main.minus", "spare.minus", "pump.minus", "radio.minus", "ground.stud")
                .join("main.plus", "feed.a")
                .join("feed.b", "selector.up", "radio.plus")
                .join("spare.plus", "selector.down")
                .join("selector.common", "pump.plus");
    }

    @Test
    void aSelectorThatAProcedureMovesGivesTwoSourcesAndIsItselfTheSinglePoint() {
        StructureFindings found = selector("pump").findings();
        assertEquals(Set.of("selector", "pump"), Rig.singlePoints(found));
        assertEquals(List.of("selector"), found.loads().get(0).feed().shared());
    }

    @Test
    void noCurrentPassesASelectorFromOneThrowToTheOther() {
        StructureFindings found = selector("radio").findings();
        assertEquals(Set.of("main", "feed", "radio"), Rig.singlePoints(found));
        assertEquals(List.of("main", "feed"), found.loads().get(0).feed().shared());
        assertTrue(found.loads().get(0).feed().proven());
    }

    /** Standing at both it joins the batteries, so either is enough; at 1 the other is no use. */
    @Test
    void aSelectorSwitchAtBothFeedsFromEitherBattery() {
        assertEquals(Set.of("selector", "pump"), Rig.singlePoints(batteries("both")));
        assertEquals(Set.of("one", "selector", "pump"), Rig.singlePoints(batteries("1")));
        assertFalse(batteries("off").engineSupplied());
    }

    private static StructureFindings batteries(String position) {
        return new Rig()
                .battery("one")
                .battery("two")
                .ground("ground")
                .with(new SelectorSwitch(Bench.tag("selector"), 5e-4))
                .flight("selector", position)
                .load("pump", "plus")
                .allOf("pump")
                .join("one.minus", "two.minus", "pump.minus", "ground.stud")
                .join("one.plus", "selector.1")
                .join("two.plus", "selector.2")
                .join("selector.common", "pump.plus")
                .findings();
    }

    /** Down, the selector feeds coils but not pump; up, it feeds both, coils over the lead. */
    @Test
    void whatOnlyOnePositionOfALeverCanFeedIsNeededInThatPosition() {
        StructureFindings found =
                new Rig()
                        .battery("spare")
                        .battery("main")
                        .ground("ground")
                        .wire("lead")
                        .lever("selector", Throw.DOUBLE, 2, "up")
                        .procedure("spare", Map.of("selector", "down"))
                        .load("coils", "plus")
                        .load("pump", "plus")
                        .allOf("coils", "pump")
                        .join("main.minus", "spare.minus", "coils.minus", "pump.minus")
                        .join("spare.plus", "selector.down-1")
                        .join("main.plus", "lead.a", "selector.up-2")
                        .join("lead.b", "selector.up-1")
                        .join("selector.common-1", "coils.plus")
                        .join("selector.common-2", "pump.plus")
                        .findings();
        assertEquals(Set.of("main", "lead", "selector", "coils", "pump"), Rig.singlePoints(found));
        assertEquals(
                new SinglePoint(
                        "lead", "no position of the switches feeds all that is needed without it"),
                found.singlePoints().get(1));
    }

    @Test
    void aDefaultOpenChannelNeedsItsControllersGroundAndADefaultClosedOneDoesNot() {
        for (boolean closedByDefault : new boolean[] {false, true}) {
            StructureFindings found =
                    new Rig()
                            .battery("battery")
                            .ground("ground")
                            .ground("controller-ground")
                            .controller("controller", closedByDefault)
                            .load("pump", "plus")
                            .allOf("pump")
                            .join("battery.minus", "pump.minus", "ground.stud")
                            .join("battery.plus", "controller.supply")
                            .join("controller.ground", "controller-ground.stud")
                            .join("controller.out-1", "pump.plus")
                            .findings();
            assertEquals(
                    !closedByDefault,
                    Rig.singlePoints(found).contains("controller-ground"),
                    "closed by default: " + closedByDefault);
        }
    }

    @Test
    void aChannelSwitchedOffFeedsNothing() {
        Rig rig =
                new Rig()
                        .battery("battery")
                        .ground("ground")
                        .controller("controller", false)
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("battery.minus", "pump.minus", "controller.ground", "ground.stud")
                        .join("battery.plus", "controller.supply")
                        .join("controller.out-1", "pump.plus");
        assertTrue(rig.findings().engineSupplied());
        assertFalse(rig.flight("controller.1", "off").findings().engineSupplied());
    }

    @Test
    void anAlternatorOutlivesTheBatteryOnlyIfItNeedsNone() {
        for (boolean needsBattery : new boolean[] {false, true}) {
            StructureFindings found =
                    new Rig()
                            .battery("battery")
                            .alternator("alternator", needsBattery)
                            .ground("ground")
                            .load("pump", "plus")
                            .allOf("pump")
                            .join("battery.minus", "alternator.case", "pump.minus", "ground.stud")
                            .join(
                                    "battery.plus",
                                    "alternator.output",
                                    "alternator.field",
                                    "pump.plus")
                            .findings();
            assertEquals(
                    needsBattery
                            ? List.of(
                                    new SinglePoint(
                                            "battery",
                                            "alternator depends on it, and pump on alternator"),
                                    new SinglePoint("pump", "the engine cannot run without it"))
                            : List.of(new SinglePoint("pump", "the engine cannot run without it")),
                    found.singlePoints());
        }
    }

    @Test
    void aConverterNeedsItsOwnReturn() {
        StructureFindings found =
                new Rig()
                        .battery("battery")
                        .ground("ground")
                        .wire("return")
                        .converter("converter")
                        .load("computer", "plus")
                        .allOf("computer")
                        .join("battery.minus", "computer.minus", "ground.stud", "return.b")
                        .join("battery.plus", "converter.in")
                        .join("converter.minus", "return.a")
                        .join("converter.out", "computer.plus")
                        .findings();
        assertEquals(Set.of("battery", "return", "converter", "computer"), Rig.singlePoints(found));
    }

    @Test
    void aBreakerPulledInFlightIsOpenUnlessAProcedurePushesItIn() {
        assertTrue(behindBreaker("in").findings().engineSupplied());
        assertFalse(behindBreaker("pulled").findings().engineSupplied());
        assertTrue(
                behindBreaker("pulled")
                        .procedure("push", Map.of("breaker", "in"))
                        .findings()
                        .engineSupplied());
        assertTrue(
                behindBreaker("in")
                        .procedure("shed", Map.of("breaker", "pulled"))
                        .findings()
                        .engineSupplied());
    }

    private static Rig behindBreaker(String position) {
        return new Rig()
                .battery("battery")
                .ground("ground")
                .breaker("breaker")
                .flight("breaker", position)
                .load("pump", "plus")
                .allOf("pump")
                .join("battery.minus", "pump.minus", "ground.stud")
                .join("battery.plus", "breaker.in")
                .join("breaker.out", "pump.plus");
    }

    @Test
    void aChannelThatAProcedureOnlySwitchesOffIsOnInFlight() {
        StructureFindings found =
                new Rig()
                        .battery("battery")
                        .ground("ground")
                        .controller("controller", false)
                        .procedure("shed", Map.of("controller.1", "off"))
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("battery.minus", "pump.minus", "controller.ground", "ground.stud")
                        .join("battery.plus", "controller.supply")
                        .join("controller.out-1", "pump.plus")
                        .findings();
        assertTrue(found.engineSupplied());
    }

    @Test
    void findingsRepeat() {
        assertEquals(selector("pump radio").findings(), selector("pump radio").findings());
    }
}
