package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.model.EngineLogic;
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
    }
}
