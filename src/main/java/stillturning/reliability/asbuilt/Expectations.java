package stillturning.reliability.asbuilt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.GroundTest;
import stillturning.reliability.groundtest.InstrumentReading;
import stillturning.reliability.groundtest.Stage;
import stillturning.reliability.groundtest.TestStep;
import stillturning.story.Moment;
import stillturning.story.Spell;
import stillturning.story.Spell.HeldCondition;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Everything that is predicted of a candidate and can be measured. */
public final class Expectations {

    /** Where less is lost nobody looks for it first (V). A guess. */
    private static final double WORTH_VOLTS = 0.02;

    private static final int MOST_PATHS = 12;
    private static final double SETTLED_SECONDS = 10;

    private final Study study;
    private final Candidate candidate;
    private final Openness open;

    /** How far off a stated value may be. */
    @FunctionalInterface
    public interface Openness {
        /**
         * The share of it, to either side.
         *
         * @param key of the value, in the word of the files
         */
        double share(String part, String key);
    }

    public Expectations(Study study, Candidate candidate, Openness open) {
        this.study = study;
        this.candidate = candidate;
        this.open = open;
    }

    /** Of each battery its capacity and its resistance. */
    public List<Expectation> batteries() {
        List<Expectation> all = new ArrayList<>();
        for (Part part : candidate.parts()) {
            cell(part)
                    .ifPresent(
                            cell -> {
                                double aged = open.share(part.id(), "health");
                                all.add(
                                        expected(
                                                Measurand.of(MeasurandKind.CAPACITY, part.id()),
                                                cell.capacity().coulombs(),
                                                open.share(part.id(), "capacity") + aged));
                                all.add(
                                        expected(
                                                Measurand.of(MeasurandKind.BATTERY_OHMS, part.id()),
                                                cell.ohms(),
                                                open.share(part.id(), "resistance") + aged));
                            });
        }
        return all;
    }

    /** The battery inside a part, if it is one. */
    public static Optional<Cell> cell(Part part) {
        return part.elements().stream()
                .filter(Cell.class::isInstance)
                .map(Cell.class::cast)
                .findFirst();
    }

    /** What each load draws at its nominal voltage. */
    public List<Expectation> loads() {
        return study.aircraft().loads().stream()
                .filter(load -> !load.selfPowered())
                .map(this::load)
                .toList();
    }

    private Expectation load(LoadNeed load) {
        return expected(
                Measurand.of(MeasurandKind.LOAD_AMPS, load.id()),
                load.demand().amps(),
                open.share(load.id(), "draws"));
    }

    /** The resistance of everything that is one wire, contact or protector. */
    public List<Expectation> paths() {
        return candidate.parts().stream()
                .flatMap(part -> ohms(part).map(ohms -> path(part, ohms)).stream())
                .toList();
    }

    private Expectation path(Part part, double ohms) {
        String key = part.role() == Part.Role.WIRE ? "length" : "resistance";
        return expected(
                Measurand.of(MeasurandKind.PATH_OHMS, part.id()), ohms, open.share(part.id(), key));
    }

    /** Resistance of a part that is nothing else (ohm). */
    public static Optional<Double> ohms(Part part) {
        List<Element> elements = part.elements();
        if (elements.size() != 1 || part.role() == Part.Role.BUS) {
            return Optional.empty();
        }
        return Stream.of(
                        of(elements, Conductor.class, Conductor::ohms),
                        of(elements, Contact.class, Contact::ohms),
                        of(elements, Protector.class, Protector::ohms))
                .flatMap(found -> found)
                .findFirst();
    }

    private static <T> Stream<Double> of(
            List<Element> elements, Class<T> kind, Function<T, Double> ohms) {
        return elements.stream().filter(kind::isInstance).map(kind::cast).map(ohms);
    }

    /**
     * Of those, the ones over which most is lost in flight, in the candidate's order.
     *
     * @throws UntoldStory if it has no steady state with nothing wrong
     */
    public List<Expectation> mainPaths() throws UntoldStory {
        Spell flown =
                Timeline.quick(study, candidate, Moment.heldIn(study.goals().failurePhase().name()))
                        .hold(
                                List.of(
                                        new HeldCondition(
                                                "flies",
                                                List.of(),
                                                Map.of(),
                                                Set.of(),
                                                SETTLED_SECONDS)))
                        .get(0);
        Set<String> worth =
                paths().stream()
                        .filter(path -> drop(path, flown) >= WORTH_VOLTS)
                        .sorted(
                                Comparator.comparingDouble((Expectation p) -> drop(p, flown))
                                        .reversed())
                        .limit(MOST_PATHS)
                        .map(path -> path.subject().at())
                        .collect(Collectors.toSet());
        return paths().stream().filter(path -> worth.contains(path.subject().at())).toList();
    }

    private double drop(Expectation path, Spell flown) {
        String id = path.subject().at();
        String element = candidate.part(id).orElseThrow().elements().get(0).name();
        return Math.abs(flown.flow().amps(id, element)) * path.predicted();
    }

    /** What the steps of a plan must bring, in its order. */
    public static List<Expectation> of(GroundTest plan) {
        List<Expectation> all = new ArrayList<>();
        for (Configuration configuration : Configuration.values()) {
            plan.stages().stream()
                    .filter(stage -> stage.configuration() == configuration)
                    .findFirst()
                    .map(Stage::readings)
                    .ifPresent(r -> all.addAll(read(StepKey.before(configuration), r)));
            StepKey.steps(plan).entrySet().stream()
                    .filter(e -> e.getKey().startsWith(StepKey.configuration(configuration) + "/"))
                    .forEach(e -> all.addAll(step(e.getKey(), e.getValue())));
        }
        return all;
    }

    private static List<Expectation> step(String key, TestStep step) {
        List<Expectation> all = new ArrayList<>();
        all.add(
                new Expectation(
                        new Measurand(MeasurandKind.HAPPENED, key, step.hand().part()), 1, 1, 1));
        all.addAll(read(key, step.readings()));
        return all;
    }

    private static List<Expectation> read(String step, List<InstrumentReading> readings) {
        return readings.stream()
                .map(
                        r ->
                                new Expectation(
                                        new Measurand(kind(r.of()), step, r.at()),
                                        r.predicted(),
                                        r.low(),
                                        r.high()))
                .toList();
    }

    private static MeasurandKind kind(InstrumentReading.MeasuredQuantity of) {
        return switch (of) {
            case VOLTS -> MeasurandKind.VOLTS;
            case AMPS -> MeasurandKind.AMPS;
            case OUT_SECONDS -> MeasurandKind.OUT_SECONDS;
        };
    }

    private static Expectation expected(Measurand subject, double value, double share) {
        double open = subject.kind().allowance(value) + share * Math.abs(value);
        return new Expectation(subject, value, Math.max(0, value - open), value + open);
    }
}
