package stillturning.structure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.Study.Aircraft;
import stillturning.model.Zone;
import stillturning.model.Zone.FirewallSide;
import stillturning.model.Zone.Hazard;
import stillturning.structure.SharedPlaces.CommonPlaceKind;
import stillturning.structure.SharedPlaces.HotFeed;
import stillturning.structure.SharedPlaces.SharedPlace;

/** Invented candidates whose feeds meet where it can be seen by eye. */
class SharedPlacesTest {

    private static final Odds NOTHING_KNOWN = new Odds(Map.of(), List.of(), Map.of());

    /** Two batteries in the cabin feed a computer there by two wires. */
    private static Rig twoFeeds() {
        return new Rig()
                .in("cabin")
                .battery("battery-a")
                .battery("battery-b")
                .ground("ground")
                .wire("battery-feed")
                .wire("backup-feed")
                .load("computer-a", "a", "b")
                .allOf("computer-a")
                .join("battery-a.plus", "battery-feed.a")
                .join("battery-feed.b", "computer-a.a")
                .join("battery-b.plus", "backup-feed.a")
                .join("backup-feed.b", "computer-a.b")
                .join("battery-a.minus", "battery-b.minus", "computer-a.minus", "ground.stud");
    }

    private static SharedPlaces found(Rig rig, Odds odds) {
        Aircraft bare = rig.aircraft();
        List<Zone> zones =
                List.of(
                        new Zone("cabin", "cabin", FirewallSide.COLD, Set.of(Hazard.WATER), 25),
                        new Zone(
                                "engine",
                                "engine zone",
                                FirewallSide.HOT,
                                Set.of(Hazard.CHAFE, Hazard.HEAT),
                                70));
        Aircraft aircraft =
                new Aircraft(
                        bare.nominalVolts(), bare.loads(), bare.engine(), bare.phases(), zones);
        return SharedPlaces.of(aircraft, rig.candidate(), odds);
    }

    private static Odds routed(String... wires) {
        List<String> route = List.of("cabin", "engine", "cabin");
        return new Odds(
                Map.of(),
                List.of(),
                wires.length == 1
                        ? Map.of(wires[0], route)
                        : Map.of(wires[0], route, wires[1], route));
    }

    private static List<SharedPlace> of(SharedPlaces found, CommonPlaceKind kind) {
        return found.shared().stream().filter(s -> s.place().kind() == kind).toList();
    }

    @Test
    void feedsThatBothPassTheHotSideAreNamedWithItsHazards() {
        SharedPlaces found = found(twoFeeds(), routed("battery-feed", "backup-feed"));
        SharedPlace hot = of(found, CommonPlaceKind.ZONE).get(1);
        assertEquals(
                "both feeds of computer-a pass engine zone (hot side; heat, chafe): battery-feed"
                        + " and backup-feed; neither has another way; wiring is kept away from"
                        + " the side of exhaust and turbocharger where it can be (common practice,"
                        + " no published source)",
                hot.words());
        assertTrue(hot.neitherElsewhere());
        assertFalse(hot.necessary());
        assertEquals(List.of("battery-feed"), hot.one().parts());
        assertEquals(List.of("backup-feed"), hot.other().parts());
        assertEquals(List.of(Hazard.HEAT, Hazard.CHAFE), hot.place().hazards());
        SharedPlace crossing = of(found, CommonPlaceKind.CROSSING).get(0);
        assertEquals("cabin to engine zone", crossing.place().name());
        assertEquals(1, of(found, CommonPlaceKind.CROSSING).size());
    }

    @Test
    void feedsThatOnlyHaveTheirEndsInOneZoneCannotButMeetThere() {
        SharedPlaces found = found(twoFeeds(), NOTHING_KNOWN);
        assertEquals(1, found.shared().size(), found.toString());
        assertTrue(found.shared().get(0).necessary());
        assertEquals(List.of(), found.hotSide());
    }

    @Test
    void aFeedAroundTheHotSideLeavesTheOtherItsWay() {
        SharedPlaces found = found(twoFeeds(), routed("backup-feed"));
        assertEquals(List.of(), of(found, CommonPlaceKind.CROSSING));
        assertEquals(1, of(found, CommonPlaceKind.ZONE).size());
        HotFeed hot = found.hotSide().get(0);
        assertEquals(1, found.hotSide().size());
        assertFalse(hot.endsThere());
        assertEquals("battery-b", hot.source());
        assertEquals(
                "the feed of input b of computer-a from battery-b crosses engine zone (hot side;"
                        + " heat, chafe) although neither of its ends is there: backup-feed; wiring"
                        + " is kept away from the side of exhaust and turbocharger where it can be"
                        + " (common practice, no published source)",
                hot.words());
    }

    @Test
    void aLoadOnTheHotSideIsFedThereOfNecessity() {
        SharedPlaces found =
                found(
                        new Rig()
                                .in("cabin")
                                .battery("battery")
                                .ground("ground")
                                .wire("feed")
                                .in("engine")
                                .load("coils", "plus")
                                .allOf("coils")
                                .join("battery.plus", "feed.a")
                                .join("feed.b", "coils.plus")
                                .join("battery.minus", "coils.minus", "ground.stud"),
                        new Odds(Map.of(), List.of(), Map.of("feed", List.of("cabin", "engine"))));
        assertEquals(1, found.hotSide().size());
        assertTrue(found.hotSide().get(0).endsThere());
        assertEquals(List.of(), found.shared());
    }

    @Test
    void whatTheBuilderSaysIsSharedIsFound() {
        for (Sharing sharing : List.of(Sharing.HOLE, Sharing.BUNDLE, Sharing.MOUNT)) {
            Shared both =
                    new Shared(
                            sharing,
                            "x7",
                            List.of("battery-feed", "backup-feed"),
                            Optional.empty());
            Shared one = new Shared(sharing, "x8", List.of("backup-feed"), Optional.empty());
            SharedPlaces found =
                    found(twoFeeds(), new Odds(Map.of(), List.of(one, both), Map.of()));
            List<SharedPlace> there = of(found, CommonPlaceKind.valueOf(sharing.name()));
            assertEquals(1, there.size(), found.toString());
            assertEquals("x7", there.get(0).place().name());
            assertTrue(there.get(0).neitherElsewhere());
            assertTrue(there.get(0).words().contains("x7 (water): battery-feed and backup-feed"));
        }
    }

    @Test
    void alternativeLoadsShareConnectorsAndGroundsOfTheirReturns() {
        Rig rig =
                new Rig()
                        .in("cabin")
                        .battery("battery-a")
                        .battery("battery-b")
                        .ground("ground")
                        .ground("pumps-ground")
                        .connector("j1", 2)
                        .load("pump-1", "plus")
                        .load("pump-2", "plus")
                        .anyOf("pump-1", "pump-2")
                        .join("battery-a.plus", "j1.1a")
                        .join("j1.1b", "pump-1.plus")
                        .join("battery-b.plus", "j1.2a")
                        .join("j1.2b", "pump-2.plus")
                        .join("pump-1.minus", "pump-2.minus", "pumps-ground.stud")
                        .join("battery-a.minus", "battery-b.minus", "ground.stud");
        SharedPlaces found = found(rig, NOTHING_KNOWN);
        assertEquals(
                List.of(
                        "the feeds of pump-1 at plus and of pump-2 at plus pass the connector j1"
                                + " (water): j1; neither has another way"),
                of(found, CommonPlaceKind.CONNECTOR).stream().map(SharedPlace::words).toList());
        assertEquals(
                List.of("ground", "pumps-ground"),
                of(found, CommonPlaceKind.GROUND).stream().map(s -> s.place().name()).toList());
        assertEquals("pump-1 or pump-2", found.shared().get(0).function());
        rig.allOf("pump-1", "pump-2");
        assertEquals(List.of(), found(rig, NOTHING_KNOWN).shared());
    }

    @Test
    void findingsRepeat() {
        Odds odds = routed("battery-feed", "backup-feed");
        assertEquals(found(twoFeeds(), odds), found(twoFeeds(), odds));
    }
}
