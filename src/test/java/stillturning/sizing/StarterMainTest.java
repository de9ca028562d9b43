package stillturning.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Installation;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.parts.Cable;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/** The whole main circuit of a starter goes without protector by custom, there and back. */
class StarterMainTest {

    private static Wire wire(String id, String awg, double metres) {
        Cable cable = Cable.awg(awg).orElseThrow();
        return new Wire(Bench.tag(id), cable, metres, cable.ohmsPerMetre() * metres);
    }

    /** Battery, lead, main switch, second lead, solenoid, starter; back by a strap. */
    private static SizingReport sizes() throws UntoldStory {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.01, 1))
                        .bus("aft")
                        .join("battery", "minus", "aft", "bar")
                        .part(wire("strap", "4", 3))
                        .join("aft", "bar", "strap", "a")
                        .join("strap", "b", "ground", "stud")
                        .part(wire("lead", "4", 0.5))
                        .join("battery", "plus", "lead", "a")
                        .bus("bus")
                        .join("lead", "b", "bus", "bar")
                        .part(wire("start-lead", "4", 0.5))
                        .join("bus", "bar", "start-lead", "a")
                        .part(Shelf.contactor("solenoid", 0.015))
                        .join("start-lead", "b", "solenoid", "in")
                        .closedSwitch("button", "off")
                        .join("bus", "bar", "button", "in")
                        .part(wire("coil-wire", "22", 1))
                        .join("button", "out", "coil-wire", "a")
                        .join("coil-wire", "b", "solenoid", "coil-plus")
                        .join("solenoid", "coil-minus", "ground", "stud")
                        .load("starter", DemandKind.CONSTANT_CURRENT, 150, Bench.HARDY)
                        .use("starter", new LoadNeed.Use(Set.of("start"), 1), 1)
                        .join("starter", "plus", "solenoid", "out")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .use("computer", new LoadNeed.Use(Set.of("start", "cruise"), 1), 9)
                        .join("computer", "plus", "bus", "bar")
                        .starting(Map.of("button", "on"))
                        .engine(
                                new Engine(
                                        new EngineLogic.One("computer"),
                                        0.3,
                                        2,
                                        true,
                                        30,
                                        new Engine.EngineStarting(Optional.of("starter"), 0.5, 25)))
                        .phases(new Phase("start", 10, 0), new Phase("cruise", 1800, 60));
        return Sizing.of(bench.study(), bench.candidate(), Installation.USUAL);
    }

    @Test
    void whatCarriesTheStartersCurrentIsNoMistakeAndItsThinCoilWireIs() throws UntoldStory {
        List<SizeFinding> findings = sizes().findings();
        assertEquals(
                Set.of("lead", "strap", "start-lead"), named(findings, Rule.UNPROTECTED_BY_CUSTOM));
        assertEquals(Set.of("coil-wire"), named(findings, Rule.UNPROTECTED));
    }

    /** The strap lies at the structure's voltage: what it carries is of a short elsewhere. */
    @Test
    void aReturnIsToldWhoseShortItCarriesAndALeadItsOwn() throws UntoldStory {
        Map<String, String> driving =
                sizes().findings().stream()
                        .filter(f -> f.rule() == Rule.UNPROTECTED_BY_CUSTOM)
                        .collect(Collectors.toMap(SizeFinding::part, SizeFinding::other));
        assertEquals(Map.of("lead", "", "start-lead", "", "strap", "lead"), driving);
    }

    private static Set<String> named(List<SizeFinding> findings, Rule rule) {
        return findings.stream()
                .filter(f -> f.rule() == rule)
                .map(SizeFinding::part)
                .collect(Collectors.toSet());
    }
}
