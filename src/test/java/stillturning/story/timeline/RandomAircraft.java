package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Join;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Tag;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Management.Temperatures;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.source.Battery;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;

/**
 * A small aircraft drawn by lot, with what goes wrong in it: batteries with and without management,
 * alternators, a latching contactor, a bus fed by a diode, protectors near their ratings, loads
 * that starve early, pilots and automatics. Batteries are small, so that stories are short.
 */
final class RandomAircraft {

    private static final Set<String> ALWAYS = Set.of("cruise", "descent");

    private final SplittableRandom random;
    private final Bench bench = new Bench();
    private final List<String> others = new ArrayList<>();

    final Study study;
    final Candidate candidate;
    final List<Failure> failures;
    final Setting setting;
    final Moment moment;

    RandomAircraft(long seed) {
        random = new SplittableRandom(seed);
        bench.bus("main-bus", "feed").bus("engine-bus").diode("diode");
        joined("main-bus.bar", "diode.in").joined("diode.out", "engine-bus.bar");
        mainBattery();
        auxBattery();
        for (int n = random.nextInt(3); n > 0; n--) {
            alternator("alternator-" + n);
        }
        loads();
        crew();
        bench.phases(
                        new Phase("cruise", between(60, 300), 60),
                        new Phase("descent", between(60, 300), between(20, 40)))
                .celsius(one(List.of(-10.0, 1.0, 25.0, 25.0, 45.0)));
        study = bench.study();
        candidate = bench.candidate();
        failures = List.of(single(), several());
        setting = Setting.with(one(List.of(Pilot.values())));
        moment =
                new Moment(
                        "cruise",
                        one(List.of(FlightSpan.values())),
                        one(List.of(Batteries.AS_STATED, Batteries.AS_STATED, Batteries.TIRED)));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    private RandomAircraft joined(String one, String other) {
        String[] from = one.split("\\.", -1);
        String[] to = other.split("\\.", -1);
        bench.join(from[0], from[1], to[0], to[1]);
        return this;
    }

    private void mainBattery() {
        bench.part(Shelf.lead("main-battery", between(0.3, 1.5), between(0.01, 0.06), 0.95))
                .part(Shelf.contactor("master", one(List.of(0.0, 0.015, 0.05))));
        joined("main-battery.minus", "ground.stud")
                .joined("main-battery.plus", "master.in")
                .joined("master.out", "main-bus.feed")
                .joined(one(List.of("main-bus.bar", "main-battery.plus")), "master.coil-plus")
                .joined("master.coil-minus", "ground.stud");
    }

    private void auxBattery() {
        boolean lithium = random.nextBoolean();
        double ampHours = between(0.2, 1);
        Optional<Management> management = lithium ? Optional.of(management()) : Optional.empty();
        bench.part(
                new Battery(
                        new Tag("aux-battery", "aux", "bench", new Tag.Burden(0.4, 0)),
                        new OpenCircuit(
                                lithium
                                        ? RestVoltage.LITHIUM_IRON_PHOSPHATE
                                        : RestVoltage.LEAD_ACID,
                                1),
                        lithium ? 4 : 6,
                        new Capacity(ampHours * 3600, lithium ? 1 : 20, between(1, 1.3)),
                        between(0.01, 0.1),
                        between(0.3, 1),
                        management));
        bench.part(Shelf.fuse("fuse", between(8, 20))).closedSwitch("tie", "off");
        joined("aux-battery.minus", "ground.stud")
                .joined("aux-battery.plus", "fuse.in")
                .joined("fuse.out", "engine-bus.bar")
                .joined("engine-bus.bar", "tie.in")
                .joined("tie.out", "main-bus.bar");
    }

    private Management management() {
        double overVolts = between(14, 15.5);
        return new Management(
                new Limit(between(10, 12.8), between(0, 1)),
                new Limit(overVolts, between(0, 1)),
                new Limit(between(8, 80), between(0, 0.1)),
                new Limit(one(List.of(5.0, 20.0, Double.POSITIVE_INFINITY)), between(0, 1)),
                random.nextBoolean()
                        ? Optional.empty()
                        : Optional.of(
                                new Temperatures(
                                        new Limit(between(46, 60), 1), new Limit(0, 1), 45.5)),
                new Reconnection(
                        new Limit(between(12.8, 13.5), between(0.1, 5)),
                        overVolts - between(0.1, 1.5),
                        between(1, 20),
                        random.nextInt(4)));
    }

    private void alternator(String id) {
        Alone alone = new Alone(one(List.of(WithoutBattery.values())), 0.5, 30, between(0, 0.4));
        double full = one(List.of(0.0, 14.2));
        bench.part(Shelf.alternator(id, between(13.8, 14.6), between(5, 40), full, alone));
        joined(id + ".case", "ground.stud").joined(id + ".field", "main-bus.bar");
        if (random.nextBoolean()) {
            bench.part(Shelf.guard(id + "-guard", 15.8, between(0.01, 0.1)));
            joined(id + "-guard.minus", "ground.stud")
                    .joined(id + ".output", id + "-guard.in")
                    .joined(id + "-guard.out", "main-bus.bar");
        } else {
            joined(id + ".output", "main-bus.bar");
        }
    }

    private void loads() {
        bench.load(Shelf.twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, between(1, 4)));
        joined("engine-bus.bar", "computer.a").joined("main-bus.bar", "computer.b");
        bench.use("computer", new LoadNeed.Use(ALWAYS, 1), 9);
        load("pump", between(2, 7), "engine-bus.bar");
        for (int n = 1 + random.nextInt(4); n > 0; n--) {
            String id = "load-" + n;
            others.add(id);
            double amps = between(1, 8);
            bench.breaker(id + "-breaker", amps * between(0.8, 2)).wire(id + "-wire", 2, 0.02);
            joined(one(List.of("main-bus.bar", "engine-bus.bar")), id + "-breaker.in")
                    .joined(id + "-breaker.out", id + "-wire.a");
            load(id, amps, id + "-wire.b");
        }
        bench.engine(
                EngineLogic.allOf(
                        List.of(new EngineLogic.One("computer"), new EngineLogic.One("pump"))),
                random.nextBoolean());
    }

    private void load(String id, double amps, String from) {
        double minimum = between(8, 12.5);
        Tolerance tolerance =
                new Tolerance(
                        minimum,
                        minimum + between(0.01, 1),
                        one(List.of(0.0, 0.02, 0.5, 5.0)),
                        between(0, 2),
                        between(15, 40),
                        between(0.05, 1));
        Demand demand = new Demand(one(Shelf.DRAWING), amps, 12);
        bench.load(new Load(Bench.tag(id), demand, tolerance, List.of("plus")))
                .use(id, new LoadNeed.Use(ALWAYS, one(List.of(1.0, 1.0, 0.3))), random.nextInt(9));
        joined(id + ".plus", from);
    }

    private void crew() {
        bench.cue("low", low(12.3)).cue("lower", low(11.8));
        bench.cue(new Cue("dark", new Cue.LoadStops("pump"), Optional.of(one(others))));
        bench.procedure(
                        new Procedure(
                                "shed",
                                List.of("low"),
                                between(1, 60),
                                Map.of(),
                                others,
                                new Procedure.Execution(
                                        one(List.of(Optional.empty(), Optional.of("computer"))),
                                        one(List.of(0.0, 5.0)))))
                .procedure("tie", List.of("lower", "dark"), between(1, 30), Map.of("tie", "on"));
    }

    private Cue.Sign low(double volts) {
        return new Cue.LowVolts(new Terminal("main-bus", "bar"), volts, between(0, 5));
    }

    private Failure single() {
        return one(FailureCatalogue.singlesOf(candidate));
    }

    private Failure several() {
        List<Hit> hits = new ArrayList<>();
        List.of(single(), single()).forEach(failure -> hits.addAll(failure.hits()));
        return new Failure("several", hits, Map.of("tie", one(List.of("on", "off"))));
    }

    /** Tells of this aircraft, going no further than this at once (s). */
    Timeline timeline(double longestStepSeconds) throws UntoldStory {
        return new Timeline(study, candidate, moment, longestStepSeconds);
    }

    private static Join turned(Join join) {
        Terminal first = join.other();
        return new Join(first, join.one());
    }

    /** Tells of the same aircraft with parts, joins and loads in another order. */
    Timeline shuffled(long seed) throws UntoldStory {
        Random order = new Random(seed);
        List<Part> parts = new ArrayList<>(candidate.parts());
        Collections.shuffle(parts, order);
        List<Join> joins = new ArrayList<>(candidate.joins());
        Collections.shuffle(joins, order);
        joins.replaceAll(join -> order.nextBoolean() ? join : turned(join));
        List<LoadNeed> needs = new ArrayList<>(study.aircraft().loads());
        Collections.shuffle(needs, order);
        Study.Aircraft aircraft = study.aircraft();
        Candidate other = new Candidate(candidate.id(), "", "", parts, joins, candidate.cockpit());
        Study same =
                new Study(
                        study.id(),
                        study.heading(),
                        new Study.Aircraft(
                                aircraft.nominalVolts(),
                                needs,
                                aircraft.engine(),
                                aircraft.phases(),
                                aircraft.zones()),
                        study.goals(),
                        List.of(other));
        return new Timeline(same, other, moment);
    }
}
