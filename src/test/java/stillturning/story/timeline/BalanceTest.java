package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.model.EngineLogic;
import stillturning.model.Returns;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.network.NodalSolver;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.parts.element.Demand;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.story.Balance;
import stillturning.story.Balance.Account;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.EventLog;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.stride.StepLimits;

/** Energy and charge over whole stories. */
class BalanceTest {

    /** A battery behind 50 mohm that a load of constant current empties. */
    private static Bench bench(double peukert) {
        return new Bench()
                .battery("battery", 20, 0.050, peukert)
                .bus("bus", "in", "out")
                .wire("feed", 1, 0.010)
                .join("battery", "plus", "feed", "a")
                .join("feed", "b", "bus", "in")
                .load("ecu", Demand.DemandKind.CONSTANT_CURRENT, 10, Bench.HARDY)
                .join("bus", "out", "ecu", "plus")
                .engine(new EngineLogic.One("ecu"), false);
    }

    private static Story story(Bench bench) throws UntoldStory {
        return bench.timeline().tell(Failure.levers("nothing", Map.of()), Pilot.NEVER);
    }

    @Test
    void whatABatteryGivesIsTheAreaUnderItsOpenCircuitCurve() throws UntoldStory {
        Balance balance = story(bench(1)).balance();
        // computed here, trapezoids under the rest voltages of electrical.md 7.3 (read in a second
        // source), below 10 % to the 10.5 V of 1.75 V a cell: volts times charge, 72,000 C
        double area =
                0.10 * (10.50 + 11.95) / 2
                        + 0.15 * (11.95 + 12.06) / 2
                        + 0.25 * (12.06 + 12.24) / 2
                        + 0.25 * (12.24 + 12.45) / 2
                        + 0.25 * (12.45 + 12.65) / 2;
        assertEquals(72_000 * area, balance.joules(Account.BATTERIES), 1e-6 * 72_000 * area);
        // 10 A for 7,200 s through 50 mohm times the mean of the curve's resistance over the charge
        RestVoltage curve = RestVoltage.LEAD_ACID;
        double times = 0;
        for (int n = 0; n < curve.pieces(); n++) {
            double from = curve.pieceStart(n);
            double to = curve.pieceEnd(n);
            times += (to - from) * (curve.resistanceOn(n, from) + curve.resistanceOn(n, to)) / 2;
        }
        assertEquals(36_000 * times, balance.joules(Account.LOST_IN_BATTERIES), 0.1);
        assertEquals(72_000, balance.charges().get(0).coulombs(), 0.01);
        assertEquals(1, balance.charges().get(0).used(), 1e-7);
        assertTrue(balance.residual() < StepLimits.EXACT.missing());
    }

    @Test
    void whatPeukertTakesIsLostInTheBattery() throws UntoldStory {
        Balance balance = story(bench(1.2)).balance();
        // computed here: rated at 1 A over 20 h, 10 A give (1/10)^0.2 of the charge (electrical.md
        // 7.4, the rule read)
        double given = 72_000 * Math.pow(0.1, 0.2);
        assertEquals(given, balance.charges().get(0).coulombs(), 1e-6 * given);
        assertEquals(1, balance.charges().get(0).used(), 1e-7);
        assertTrue(balance.joules(Account.LOST_IN_BATTERIES) > 0.3 * balance.given());
    }

    @Test
    void energyThatComesFromNowhereIsToldAndNamesTheBattery() throws Exception {
        Bench bench = bench(1);
        Study study = bench.study();
        BranchLayout layout = new BranchLayout(bench.candidate().circuit(), Optional.empty());
        BranchLaw[] laws = new BranchLaw[layout.from.length];
        Arrays.fill(laws, Open.CIRCUIT);
        Situation now =
                new Situation(
                        new NodalSolver(layout.topology, layout.from, layout.to, laws),
                        Returns.ON_STRUCTURE,
                        study.aircraft(),
                        study.goals().failurePhase(),
                        Setting.with(Pilot.NEVER),
                        part -> "",
                        new EventLog());
        Plant plant = new Plant(bench.candidate().circuit(), layout, now);
        plant.branchDevices().forEach(p -> now.solver.law(p.branch(), p.law()));
        now.solver.solve();
        EnergyMeter meter = new EnergyMeter(plant, layout, now, StepLimits.EXACT.missing());
        meter.read(0);
        // ten amperes flow for a minute, and the battery is as full as before
        meter.taken(60, new double[] {1});
        UntoldStory untold = assertThrows(UntoldStory.class, meter::balance);
        assertTrue(String.valueOf(untold.getMessage()).contains("at battery"), untold::getMessage);
    }
}
