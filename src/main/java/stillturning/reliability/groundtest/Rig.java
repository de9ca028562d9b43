package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.Study.Aircraft;
import stillturning.reliability.groundtest.GroundTest.TestPace;
import stillturning.story.Moment;
import stillturning.story.Spell;
import stillturning.story.Spell.HeldCondition;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** A candidate in one configuration, to be tried and played. */
final class Rig {

    /** Longer than lamps, contactors and computers take to answer (s). A guess. */
    private static final double LEAST_HELD_SECONDS = 30;

    /** What is held longer than the longest start of a load (s). A guess. */
    private static final double BEYOND_BOOT_SECONDS = 5;

    /** Between putting something back and the next step, at least (s). A guess. */
    private static final double BACK_SECONDS = 10;

    private static final String AT_REST = "engine at rest on the ground";

    /** Long enough that no plan outlasts it (s). */
    private static final double DAY_SECONDS = 86_400;

    private final Configuration configuration;
    private final Timeline timeline;
    private final Set<String> off;
    private final TestPace pace;

    private Rig(Configuration configuration, Timeline timeline, Set<String> off, TestPace pace) {
        this.configuration = configuration;
        this.timeline = timeline;
        this.off = off;
        this.pace = pace;
    }

    /**
     * The candidate in a configuration.
     *
     * @throws UntoldStory if it has no steady state there
     */
    static Rig of(Study study, Candidate candidate, Configuration configuration)
            throws UntoldStory {
        Phase rest = new Phase(AT_REST, DAY_SECONDS, 0, true);
        Study steady = atRest(study.withLoads(load -> load.with(load.use().always())), rest);
        Phase phase =
                switch (configuration) {
                    case ENGINE_STOPPED -> rest;
                    case ENGINE_RUNNING -> study.goals().runUp();
                };
        return new Rig(
                configuration,
                Timeline.quick(steady, candidate, Moment.heldIn(phase.name())),
                off(study, steady, phase),
                pace(study));
    }

    private static TestPace pace(Study study) {
        double boot =
                study.aircraft().loads().stream()
                        .mapToDouble(load -> load.tolerance().bootSeconds())
                        .max()
                        .orElse(0);
        return new TestPace(
                Math.max(LEAST_HELD_SECONDS, boot + BEYOND_BOOT_SECONDS),
                Math.max(BACK_SECONDS, boot + BEYOND_BOOT_SECONDS));
    }

    /**
     * With a phase in which the engine stands and what runs where failures are asked about, runs.
     */
    private static Study atRest(Study study, Phase rest) {
        String asked = study.goals().failurePhase().name();
        Aircraft aircraft = study.aircraft();
        List<Phase> phases = new ArrayList<>(aircraft.phases());
        phases.add(rest);
        return study.with(
                        new Aircraft(
                                aircraft.nominalVolts(),
                                aircraft.loads(),
                                aircraft.engine(),
                                phases,
                                aircraft.zones(),
                                aircraft.moveSeconds()))
                .withLoads(load -> runs(load, asked) ? also(load, rest.name()) : load);
    }

    private static boolean runs(LoadNeed load, String phase) {
        return load.use().phases().contains(phase);
    }

    private static LoadNeed also(LoadNeed load, String phase) {
        Set<String> phases = new HashSet<>(load.use().phases());
        phases.add(phase);
        LoadNeed.Use use = load.use();
        return load.with(new LoadNeed.Use(phases, use.duty(), use.noticed(), use.inrush()));
    }

    /** What the pilot may shed and does not watch, and what runs now and then. */
    private static Set<String> off(Study study, Study steady, Phase phase) {
        Set<String> off = new LinkedHashSet<>();
        for (LoadNeed load : study.aircraft().loads()) {
            boolean spare = load.shedOrder().isPresent() && !load.noticed();
            boolean there =
                    steady.aircraft()
                            .load(load.id())
                            .filter(l -> runs(l, phase.name()))
                            .isPresent();
            if (there && (spare || load.use().nowAndThen())) {
                off.add(load.id());
            }
        }
        return off;
    }

    Configuration configuration() {
        return configuration;
    }

    /** Loads that are off at their own switches, in the study's order. */
    List<String> off() {
        return List.copyOf(off);
    }

    TestPace pace() {
        return pace;
    }

    /** Nothing opened, one of the loads that are off switched on. */
    HeldCondition intact(String words, Optional<String> on) {
        return condition(words, List.of(), Map.of(), on, pace.backSeconds());
    }

    /** A failure made by hand. */
    HeldCondition opened(Hand hand, Optional<String> on) {
        return condition(
                "opens " + hand.part(), hand.apart(), hand.levers(), on, pace.heldSeconds());
    }

    /** A failure as it comes by itself. */
    HeldCondition failed(Hit hit, Optional<String> on) {
        return condition(hit.part() + " fails", List.of(hit), Map.of(), on, pace.heldSeconds());
    }

    private HeldCondition condition(
            String words,
            List<Hit> apart,
            Map<String, String> levers,
            Optional<String> on,
            double seconds) {
        Set<String> still = new HashSet<>(off);
        on.ifPresent(still::remove);
        return new HeldCondition(words, apart, levers, still, seconds);
    }

    /**
     * Everything that a step does, in order.
     *
     * @param on load that is switched on for it
     */
    List<HeldCondition> conditions(Hand hand, Optional<String> on) {
        List<HeldCondition> all = new ArrayList<>();
        on.ifPresent(load -> all.add(intact("switches on " + load, on)));
        all.add(opened(hand, on));
        all.add(intact("puts it back", on));
        on.ifPresent(load -> all.add(intact("switches off " + load, Optional.empty())));
        return all;
    }

    /** Tries conditions quickly, each beginning where the last ended. */
    List<Spell> tried(List<HeldCondition> conditions) throws UntoldStory {
        return timeline.hold(conditions);
    }

    /** Plays conditions exactly, each held for a multiple of its time. */
    List<Spell> played(List<HeldCondition> conditions, double times) throws UntoldStory {
        return timeline.exact()
                .hold(
                        conditions.stream()
                                .map(
                                        c ->
                                                new HeldCondition(
                                                        c.words(),
                                                        c.apart(),
                                                        c.levers(),
                                                        c.off(),
                                                        times * c.seconds()))
                                .toList());
    }
}
