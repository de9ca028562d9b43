package stillturning.model.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Chances;
import stillturning.model.Chances.Beta;
import stillturning.model.Chances.ExposureTimes;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Per;
import stillturning.model.Chances.Rate;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.model.EngineLogic;
import stillturning.model.Study.Aircraft;
import stillturning.model.Zone;
import stillturning.model.Zone.Hazard;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.parts.element.Demand;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;

/** Every number here is invented. */
class CommonCausesTest {

    private static final Rate HOLE = new Rate(4e-10, 5, Per.SECOND, "invented");
    private static final Rate HEAT = new Rate(1e-9, 3, Per.SECOND, "invented");
    private static final Rate STOPS = new Rate(2e-9, 10, Per.SECOND, "invented");

    /** A computer with two inputs, fed by two wires, and a second computer that nobody needs. */
    private static Bench twoFeeds() {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .part(Shelf.fuse("fuse-a", 10))
                .part(Shelf.fuse("fuse-b", 10))
                .wire("feed-a", 2, 0.04)
                .wire("feed-b", 2, 0.04)
                .load(Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, 2))
                .load(Shelf.twoInputs("spare", Demand.DemandKind.CONSTANT_POWER, 2))
                .join("bus", "bar", "fuse-a", "in")
                .join("bus", "bar", "fuse-b", "in")
                .join("fuse-a", "out", "feed-a", "a")
                .join("fuse-b", "out", "feed-b", "a")
                .join("feed-a", "b", "computer", "a")
                .join("feed-b", "b", "computer", "b")
                .engine(new EngineLogic.One("computer"), false);
    }

    private static Chances chances(List<Shared> shared, Map<String, List<String>> routes) {
        Map<Mode, Rate> rates =
                Map.of(
                        new Mode("computer", "stops working"),
                        STOPS,
                        new Mode("spare", "stops working"),
                        STOPS.times(0.5, "invented"));
        return new Chances(
                new ExposureTimes(3600, 36000),
                Map.of(Hazard.HEAT, HEAT),
                Map.of(Sharing.HOLE, HOLE),
                new Rate(0, 1, Per.FLIGHT, ""),
                new Rate(0, 1, Per.NEED, ""),
                Map.of("bench", new Odds(rates, shared, routes)));
    }

    private static Shared shared(Sharing sharing, String name, String... parts) {
        Optional<Beta> beta =
                sharing.goesByBeta() ? Optional.of(new Beta(0.1, "invented")) : Optional.empty();
        return new Shared(sharing, name, List.of(parts), beta);
    }

    private static List<Cause> causes(Bench bench, Chances chances, Zone... zones) {
        Aircraft as = bench.study().aircraft();
        Aircraft zoned =
                new Aircraft(
                        as.nominalVolts(), as.loads(), as.engine(), as.phases(), List.of(zones));
        return CommonCauses.of(zoned, bench.candidate(), chances);
    }

    private static Zone zone(String name, Hazard... hazards) {
        return new Zone(name, name, Zone.FirewallSide.COLD, Set.of(hazards), 25);
    }

    private static List<String> names(List<Cause> causes) {
        return causes.stream().map(Cause::name).toList();
    }

    private static Set<String> hit(Cause cause) {
        return cause.failure().hits().stream()
                .map(h -> h.part() + ": " + h.mode().name())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Cause named(String name, List<Cause> causes) {
        return causes.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void twoFeedsThroughOneHoleAreLostTogetherWhereEachAloneIsNot() throws UntoldStory {
        Bench bench = twoFeeds();
        Chances chances =
                chances(List.of(shared(Sharing.HOLE, "firewall", "feed-a", "feed-b")), Map.of());
        List<Cause> causes = causes(bench, chances);
        assertEquals(
                List.of("hole firewall: all open", "hole firewall: all to ground"), names(causes));
        assertEquals(names(causes), names(causes(bench, chances)));
        for (String alone : List.of("feed-a: open", "feed-b: open")) {
            assertTrue(
                    bench.timeline()
                                    .tell(bench.failure(alone), Pilot.NEVER)
                                    .engine()
                                    .endurance()
                                    .seconds()
                            > 3600);
        }
        for (Cause cause : causes) {
            assertEquals(CauseKind.HOLE, cause.kind());
            assertTrue(
                    bench.timeline()
                                    .tell(cause.failure(), Pilot.NEVER)
                                    .engine()
                                    .endurance()
                                    .seconds()
                            < 60,
                    cause.name());
            // two ends share the rate of the event evenly
            assertEquals(2e-10, cause.rate().orElseThrow().median(), 1e-22);
            assertEquals(5, cause.rate().orElseThrow().errorFactor());
        }
    }

    @Test
    void aZoneReachesWhatSitsInItAndEveryWireThatPassesIt() {
        Bench bench = twoFeeds();
        Chances chances =
                chances(
                        List.of(),
                        Map.of(
                                "feed-a", List.of("bench", "pylon", "tail"),
                                "feed-b", List.of("bench", "pylon")));
        List<Cause> causes =
                causes(
                        bench,
                        chances,
                        zone("pylon", Hazard.CHAFE, Hazard.HEAT),
                        zone("tail", Hazard.CHAFE),
                        zone("bench"));
        // only one wire passes the tail, which is no common cause
        assertEquals(
                List.of(
                        "heat in pylon",
                        "chafe in pylon: all open",
                        "chafe in pylon: all to ground"),
                names(causes));
        assertEquals(
                Set.of("feed-a: chafed to ground", "feed-b: chafed to ground"), hit(causes.get(0)));
        assertEquals(Set.of("feed-a: open", "feed-b: open"), hit(causes.get(1)));
        assertEquals(Optional.of(HEAT), causes.get(0).rate());
        assertEquals(Optional.empty(), causes.get(1).rate());
    }

    @Test
    void loadsWithoutWhichTheEngineStopsHoweverItIsWiredAreLeftOutWithTheirLeads() {
        List<Cause> causes =
                causes(twoFeeds(), chances(List.of(), Map.of()), zone("bench", Hazard.IMPACT));
        Cause torn = named("impact in bench: all open", causes);
        assertEquals(
                Set.of(
                        "battery: disconnects itself",
                        "fuse-a: opens for no reason",
                        "fuse-b: opens for no reason",
                        "ground: open",
                        "spare: stops working"),
                hit(torn));
        assertTrue(torn.words().contains("left out are computer with"), torn.words());
        assertEquals(List.of("impact in bench: all open"), names(causes));
    }

    @Test
    void loadsOfWhichTheEngineCanLoseThoseInTheZoneAreReached() {
        Bench bench =
                twoFeeds()
                        .engine(
                                EngineLogic.anyOf(
                                        List.of(
                                                new EngineLogic.One("computer"),
                                                new EngineLogic.One("elsewhere"))),
                                false);
        Cause heat =
                named(
                        "heat in bench",
                        causes(bench, chances(List.of(), Map.of()), zone("bench", Hazard.HEAT)));
        assertTrue(hit(heat).contains("computer: stops working"));
        assertFalse(heat.words().contains("left out"));
    }

    @Test
    void theSameProgramStopsEveryUnitByTheBetaFactorOfTheWorst() {
        Cause hung =
                causes(
                                twoFeeds(),
                                chances(
                                        List.of(
                                                shared(
                                                        Sharing.FIRMWARE,
                                                        "lanes",
                                                        "spare",
                                                        "computer")),
                                        Map.of()))
                        .get(0);
        assertEquals("firmware lanes", hung.name());
        assertEquals(Set.of("computer: stops working", "spare: stops working"), hit(hung));
        // a tenth of 2e-9 /s: beta factor model, NUREG/CR-4780 (recalled, unverified)
        assertEquals(2e-10, hung.rate().orElseThrow().median(), 1e-22);
    }

    @Test
    void whatIsAlikeFailsInEachWayThatAllOfItCan() {
        List<Cause> causes =
                causes(
                        twoFeeds(),
                        chances(
                                List.of(shared(Sharing.ALIKE, "fuses", "fuse-a", "fuse-b")),
                                Map.of()));
        assertEquals(
                List.of(
                        "alike fuses: opens for no reason",
                        "alike fuses: does not open when it should"),
                names(causes));
        assertEquals(Optional.empty(), causes.get(0).rate());
    }

    @Test
    void whatHangsOnOneBracketIsTornOffTogether() {
        Cause mount =
                causes(
                                twoFeeds(),
                                chances(
                                        List.of(shared(Sharing.MOUNT, "shelf", "battery", "spare")),
                                        Map.of()))
                        .get(0);
        assertEquals(Set.of("battery: disconnects itself", "spare: stops working"), hit(mount));
    }

    @Test
    void whatIsSharedByAStrangerIsRefused() {
        Chances chances =
                chances(List.of(shared(Sharing.MOUNT, "shelf", "battery", "x")), Map.of());
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> causes(twoFeeds(), chances));
        assertEquals("shelf is shared by x, which is not in bench", refused.getMessage());
    }

    @Test
    void batteriesOfOneAgeAreProposedWhereNobodySaysWhatTheyShare() {
        Bench bench = new Bench().battery("one", 20, 0.02, 1).battery("other", 5, 0.02, 1);
        Rate worn = new Rate(6e-10, 10, Per.SECOND, "invented");
        Map<Mode, Rate> rates = Map.of(new Mode("one", "capacity lost"), worn);
        List<Cause> proposed =
                CommonCauses.of(
                        bench.study().aircraft(),
                        bench.candidate(),
                        chances(new Odds(rates, List.of(), Map.of())));
        assertEquals(1, proposed.size());
        assertEquals(2, proposed.get(0).failure().hits().size());
        assertEquals(6e-11, proposed.get(0).rate().orElseThrow().median(), 1e-20);
        Shared said =
                new Shared(
                        Sharing.ALIKE,
                        "batteries",
                        List.of("one", "other"),
                        Optional.of(new Chances.Beta(0, "of different makes")));
        List<Cause> own =
                CommonCauses.of(
                        bench.study().aircraft(),
                        bench.candidate(),
                        chances(new Odds(rates, List.of(said), Map.of())));
        assertTrue(own.stream().noneMatch(cause -> cause.name().contains("age of the batteries")));
    }

    private static Chances chances(Odds odds) {
        Chances none = Chances.NONE;
        return new Chances(
                none.exposure(),
                Map.of(),
                Map.of(),
                none.leftSwitch(),
                none.idlePilot(),
                Map.of("bench", odds));
    }
}
