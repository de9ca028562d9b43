package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.model.EngineLogic;
import stillturning.parts.Switch.Throw;
import stillturning.structure.StructureFindings.LoadWays;
import stillturning.structure.StructureFindings.SinglePoint;

/** Small invented candidates whose answer can be seen by eye. */
class StructureTest {

    /** One battery, one bus, one load. */
    private static Rig simple() {
        return new Rig()
                .battery("battery")
                .ground("ground")
                .wire("feed")
                .bus("bus", "stud")
                .breaker("breaker")
                .load("coils", "plus")
                .allOf("coils")
                .join("battery.plus", "feed.a")
                .join("feed.b", "bus.stud")
                .join("bus.bar", "breaker.in")
                .join("breaker.out", "coils.plus")
                .join("coils.minus", "ground.stud")
                .join("battery.minus", "ground.stud");
    }

    @Test
    void everyPartOfASingleWayIsASinglePointWithItsReason() {
        StructureFindings found = simple().findings();
        assertEquals(
                List.of(
                        new SinglePoint("battery", "the only source of coils"),
                        new SinglePoint("feed", "the only feed of coils"),
                        new SinglePoint("bus", "the only feed of coils"),
                        new SinglePoint("breaker", "the only feed of coils"),
                        new SinglePoint("coils", "the engine cannot run without it")),
                found.singlePoints());
        LoadWays coils = found.loads().get(0);
        assertEquals(
                List.of(List.of("battery", "feed", "bus", "breaker")), coils.feed().independent());
        assertEquals(
                "every way from a source to coils passes battery, feed, bus and breaker",
                coils.feed().words());
        assertEquals("from coils to a source there is no part between", coils.back().words());
        assertEquals(1, found.independentLoops());
        assertTrue(found.engineSupplied());
    }

    @Test
    void returnsThroughTheStructureNeedBothGroundPoints() {
        StructureFindings found =
                new Rig()
                        .battery("battery")
                        .ground("firewall")
                        .ground("engine")
                        .load("coils", "plus")
                        .load("injectors", "plus")
                        .allOf("coils", "injectors")
                        .join("battery.plus", "coils.plus", "injectors.plus")
                        .join("coils.minus", "injectors.minus", "engine.stud")
                        .join("battery.minus", "firewall.stud")
                        .findings();
        assertEquals(
                List.of(
                        new SinglePoint("battery", "the only source of coils and injectors"),
                        new SinglePoint("firewall", "the returns of coils and injectors"),
                        new SinglePoint("engine", "the returns of coils and injectors"),
                        new SinglePoint("coils", "the engine cannot run without it"),
                        new SinglePoint("injectors", "the engine cannot run without it")),
                found.singlePoints());
        assertEquals(List.of("engine", "firewall"), found.loads().get(0).back().shared());
    }

    /** Two computers, each with its own feed, through one bulkhead connector. */
    private static Rig twoComputers(int connectors) {
        Rig rig =
                new Rig()
                        .battery("battery-a")
                        .battery("battery-b")
                        .ground("ground")
                        .connector("j1", 2)
                        .connector("j2", 2)
                        .load("computer-a", "plus")
                        .load("computer-b", "plus")
                        .anyOf("computer-a", "computer-b")
                        .join(
                                "battery-a.minus",
                                "battery-b.minus",
                                "computer-a.minus",
                                "computer-b.minus",
                                "ground.stud");
        String second = connectors == 1 ? "j1.2" : "j2.1";
        return rig.join("battery-a.plus", "j1.1a")
                .join("j1.1b", "computer-a.plus")
                .join("battery-b.plus", second + "a")
                .join(second + "b", "computer-b.plus");
    }

    @Test
    void aSharedConnectorIsASinglePointAndTwoConnectorsAreNone() {
        assertEquals(
                List.of(new SinglePoint("j1", "both feeds of computer-a and computer-b pass it")),
                twoComputers(1).findings().singlePoints());
        assertEquals(List.of(), twoComputers(2).findings().singlePoints());
    }

    @Test
    void twoInputsOfOneComputerThroughOneConnectorAreNoIndependentWays() {
        StructureFindings found =
                new Rig()
                        .battery("battery-a")
                        .battery("battery-b")
                        .ground("ground")
                        .connector("j1", 2)
                        .load("computer", "a", "b")
                        .allOf("computer")
                        .join("battery-a.minus", "battery-b.minus", "computer.minus", "ground.stud")
                        .join("battery-a.plus", "j1.1a")
                        .join("battery-b.plus", "j1.2a")
                        .join("j1.1b", "computer.a")
                        .join("j1.2b", "computer.b")
                        .findings();
        LoadWays computer = found.loads().get(0);
        assertEquals(1, computer.feed().independent().size());
        assertEquals(List.of("j1"), computer.feed().cut());
        assertEquals("every way from a source to computer passes j1", computer.feed().words());
        assertEquals(List.of("battery-b", "j1"), computer.inputs().get(1).feed().shared());
        assertEquals(
                List.of(
                        new SinglePoint("j1", "both feeds of computer pass it"),
                        new SinglePoint("computer", "the engine cannot run without it")),
                found.singlePoints());
    }

    /** Two batteries on one bus, and a diode from each to a computer: no single way. */
    @Test
    void twoSeparateFeedsAreTwoWaysWithASmallestCutOfTwo() {
        StructureFindings found =
                new Rig()
                        .battery("battery-a")
                        .battery("battery-b")
                        .ground("ground")
                        .diode("diode-a")
                        .diode("diode-b")
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("battery-a.minus", "battery-b.minus", "pump.minus", "ground.stud")
                        .join("battery-a.plus", "diode-a.in")
                        .join("battery-b.plus", "diode-b.in")
                        .join("diode-a.out", "diode-b.out", "pump.plus")
                        .findings();
        var feed = found.loads().get(0).feed();
        assertEquals(
                List.of(List.of("battery-a", "diode-a"), List.of("battery-b", "diode-b")),
                feed.independent());
        assertEquals(2, feed.cut().size());
        assertEquals(List.of(), feed.shared());
        assertEquals(Set.of("pump"), Rig.singlePoints(found));
        assertEquals(
                "2 independent ways from a source to pump; without "
                        + feed.cut().get(0)
                        + " and "
                        + feed.cut().get(1)
                        + " there is none",
                feed.words());
    }

    @Test
    void aDiodeIsAWayInOneDirectionOnly() {
        Rig against =
                new Rig()
                        .battery("battery")
                        .ground("ground")
                        .diode("diode")
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("battery.minus", "pump.minus", "ground.stud")
                        .join("battery.plus", "diode.out")
                        .join("diode.in", "pump.plus");
        StructureFindings found = against.findings();
        assertFalse(found.engineSupplied());
        assertEquals(List.of("pump"), found.unsupplied());
        assertEquals(List.of(), found.singlePoints());
        assertEquals("no way from a source to pump", found.loads().get(0).feed().words());
    }

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
    void twoBatteriesInSeriesAreBothNeeded() {
        StructureFindings found =
                new Rig()
                        .battery("lower")
                        .battery("upper")
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("lower.plus", "upper.minus")
                        .join("upper.plus", "pump.plus")
                        .join("lower.minus", "pump.minus")
                        .findings();
        assertEquals(Set.of("lower", "upper", "pump"), Rig.singlePoints(found));
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
    void twoOfThreePumpsSurviveAnyOneOfThem() {
        Rig rig = new Rig().battery("battery").ground("ground").bus("bus", "stud");
        for (String id : List.of("one", "two", "three")) {
            rig.load(id, "plus").breaker("to-" + id);
            rig.join("bus.bar", "to-" + id + ".in").join("to-" + id + ".out", id + ".plus");
            rig.join("ground.stud", id + ".minus");
        }
        rig.join("battery.minus", "ground.stud").join("battery.plus", "bus.stud");
        List<EngineLogic> pumps =
                List.of(
                        new EngineLogic.One("one"),
                        new EngineLogic.One("two"),
                        new EngineLogic.One("three"));
        StructureFindings found = rig.needs(new EngineLogic.AtLeast(2, pumps)).findings();
        assertEquals(
                List.of(
                        new SinglePoint("battery", "the only source of one, two and three"),
                        new SinglePoint("bus", "all feeds of one, two and three pass it")),
                found.singlePoints());
        assertEquals(3, found.independentLoops());
    }

    /** A tie carries current backwards over a bus that has lost its feed; not over no bus. */
    @Test
    void aBusGoesWithItsBarWhereverItIsFed() {
        StructureFindings found =
                new Rig()
                        .battery("battery-a")
                        .battery("battery-b")
                        .ground("ground")
                        .bus("bus", "stud")
                        .breaker("breaker")
                        .load("pump", "plus")
                        .allOf("pump")
                        .join("battery-a.minus", "battery-b.minus", "pump.minus", "ground.stud")
                        .join("battery-a.plus", "bus.stud")
                        .join("battery-b.plus", "bus.bar", "breaker.in")
                        .join("breaker.out", "pump.plus")
                        .findings();
        assertEquals(Set.of("bus", "breaker", "pump"), Rig.singlePoints(found));
    }

    @Test
    void aLoadThatTheCandidateLacksIsUnsupplied() {
        StructureFindings found = simple().allOf("coils", "ghost").findings();
        assertEquals(List.of("ghost"), found.unsupplied());
        assertFalse(found.engineSupplied());
        assertEquals(List.of(), found.singlePoints());
        assertEquals(1, found.loads().size());
    }

    @Test
    void findingsRepeat() {
        assertEquals(simple().findings(), simple().findings());
        assertEquals(selector("pump radio").findings(), selector("pump radio").findings());
    }
}
