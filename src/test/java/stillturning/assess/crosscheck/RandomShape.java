package stillturning.assess.crosscheck;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.parts.Load;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Tolerance;
import stillturning.parts.joining.Connector;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.switching.Switch;

/**
 * A small candidate drawn by lot: parts of every kind between a few joints of the supply side
 * ({@code p}) and of the return side ({@code m}), levers anywhere, a pilot and an automatic.
 */
final class RandomShape {

    private static final int SUPPLY_JOINTS = 6;
    private static final int RETURN_JOINTS = 2;

    private final SplittableRandom random;
    private final Bench bench = new Bench();
    private final Map<String, List<Terminal>> joints = new TreeMap<>();
    private final List<String> levers = new ArrayList<>();

    final Study study;

    RandomShape(long seed) {
        random = new SplittableRandom(seed);
        at("ground.stud:m");
        sources();
        for (int i = 3 + random.nextInt(6); i > 0; i--) {
            part("part-" + i);
        }
        loads();
        crew();
        joints.values().forEach(this::join);
        study = bench.study();
    }

    private void sources() {
        List<Double> ampHours = List.of(0.2, 2.0, 20.0);
        bench.part(Shelf.lead("battery-a", one(ampHours), between(0.01, 0.3), 1));
        at("battery-a.plus:p battery-a.minus:m");
        if (random.nextInt(3) > 0) {
            bench.part(new GroundPoint(Bench.tag("ground-2"), true, 1e-4));
            at("ground-2.stud:m");
            if (random.nextBoolean()) {
                bench.part(Shelf.lead("battery-b", one(ampHours), between(0.01, 0.3), 1));
            } else {
                double most = between(0.5, 20);
                bench.part(Shelf.lithium("battery-b", 5, 0.9, Shelf.limits(8, 15, most, 0.1)));
            }
            at("battery-b.plus:p battery-b.minus:m");
        }
        if (random.nextBoolean()) {
            WithoutBattery then = one(List.of(WithoutBattery.values()));
            Alone alone = new Alone(then, 0.5, 40, random.nextBoolean() ? 0 : 0.3);
            bench.part(Shelf.alternator("alternator", 14.2, between(2, 40), 14.2, alone));
            at("alternator.output:p alternator.field:p alternator.case:m");
        }
    }

    private void part(String id) {
        switch (random.nextInt(12)) {
            case 0 -> bench.wire(id, 2, between(0.005, 0.5));
            case 1 -> bench.diode(id);
            case 2, 3 -> bench.part(new Connector(Bench.tag(id), 3, 1e-3));
            case 4 -> bench.contactor(id);
            case 5 -> bench.bus(id, "one", "two");
            case 6 -> {
                bench.part(Shelf.controller(id, 2, 10, random.nextBoolean()));
                lever(id + ".1", "on", "off");
            }
            case 7 -> bench.part(Shelf.converter(id, between(1, 20)));
            case 8 -> {
                bench.part(new Switch(Bench.tag(id), 2, Switch.Throw.DOUBLE, 0.005));
                lever(id, "up", "down", "off");
            }
            case 9 -> {
                bench.breaker(id, between(1, 20));
                lever(id, "in", "pulled");
            }
            case 10 -> bench.part(Shelf.guard(id, 16, 0.05));
            default -> {
                bench.part(new Switch(Bench.tag(id), 2, Switch.Throw.SINGLE, 0.005));
                lever(id, "on", "off");
            }
        }
        bench.candidate()
                .part(id)
                .orElseThrow()
                .terminals()
                .forEach(t -> at(id + "." + t + side(t)));
    }

    /** Grounds and coil ends sit on the return side, as does a connector's last pin. */
    private static String side(String terminal) {
        boolean back = List.of("ground", "minus", "coil-minus", "3a", "3b").contains(terminal);
        return back ? ":m" : ":p";
    }

    private void lever(String lever, String... positions) {
        if (random.nextInt(4) > 0) {
            bench.lever(lever, one(List.of(positions)));
        }
        levers.add(lever);
    }

    private void loads() {
        List<EngineLogic> terms = new ArrayList<>();
        int loads = 1 + random.nextInt(3);
        for (int i = 0; i < loads; i++) {
            String id = "load-" + i;
            load(id, random.nextBoolean() ? List.of("plus") : List.of("a", "b"));
            terms.add(new EngineLogic.One(id));
        }
        if (random.nextBoolean()) {
            load("radio", List.of("plus"));
        }
        EngineLogic logic = new EngineLogic.AtLeast(1 + random.nextInt(loads), terms);
        bench.engine(new Engine(logic, between(0.05, 2), 2, random.nextBoolean(), 30));
    }

    private void load(String id, List<String> inputs) {
        double minimum = between(6, 11);
        Demand demand = new Demand(one(Shelf.DRAWING), between(0.5, 6), 12);
        Tolerance tolerance =
                new Tolerance(minimum, minimum + 0.5, 0.02, 0.3, between(16, 60), 0.1);
        bench.loadWithoutReturn(new Load(Bench.tag(id), demand, tolerance, inputs));
        inputs.forEach(input -> at(id + "." + input + ":p"));
        at(id + ".minus:m");
    }

    private void crew() {
        bench.cue("dark", new Cue.LoadStops("load-0"));
        Terminal plus = new Terminal("battery-a", "plus");
        bench.cue("low", new Cue.LowVolts(plus, between(9, 13), 1));
        for (String lever : levers) {
            if (random.nextBoolean()) {
                String to = one(List.of("on", "in", "up", "down", "off"));
                Optional<String> automatic =
                        random.nextInt(4) == 0 ? Optional.of("load-0") : Optional.empty();
                bench.procedure(
                        new Procedure(
                                "move " + lever,
                                List.of(random.nextBoolean() ? "dark" : "low"),
                                between(0, 10),
                                Map.of(lever, to),
                                List.of(),
                                new Procedure.Execution(automatic, 0)));
            }
        }
    }

    /** Puts terminals, each {@code part.name:side}, at joints of their side. */
    private void at(String terminals) {
        for (String text : terminals.split(" ", -1)) {
            int colon = text.lastIndexOf(':');
            int dot = text.indexOf('.');
            String side = text.substring(colon + 1);
            String joint = side + random.nextInt(side.equals("p") ? SUPPLY_JOINTS : RETURN_JOINTS);
            joints.computeIfAbsent(joint, j -> new ArrayList<>())
                    .add(new Terminal(text.substring(0, dot), text.substring(dot + 1, colon)));
        }
    }

    private void join(List<Terminal> all) {
        Terminal first = all.get(0);
        all.stream()
                .skip(1)
                .forEach(t -> bench.join(first.part(), first.name(), t.part(), t.name()));
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
