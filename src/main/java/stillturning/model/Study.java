package stillturning.model;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.Preferences;
import stillturning.model.goal.UsualScales;
import stillturning.model.goal.ValueScale;

/**
 * One aircraft: what all candidates share, and the candidates.
 *
 * @param id folder name
 * @param aircraft what does not depend on the candidate
 * @param goals what is asked of a candidate
 */
public record Study(
        String id,
        StudyHeading heading,
        Aircraft aircraft,
        Goals goals,
        List<Candidate> candidates) {

    /**
     * What stands above the study.
     *
     * @param invented whether its data are made up
     * @param currency code of the prices
     * @param rationale what the builder says about the choice, paragraph by paragraph
     */
    public record StudyHeading(
            String title, String about, boolean invented, String currency, List<String> rationale) {
        /** A heading of a study about which the builder says nothing. */
        public StudyHeading(String title, String about, boolean invented, String currency) {
            this(title, about, invented, currency, List.of());
        }

        public StudyHeading {
            rationale = List.copyOf(rationale);
        }
    }

    /**
     * Nominal bus voltage (V), the loads, the engine, the flight, the places, and who flies.
     *
     * @param moveSeconds what a hand takes from one move to the next (s)
     */
    public record Aircraft(
            double nominalVolts,
            List<LoadNeed> loads,
            Engine engine,
            List<Phase> phases,
            List<Zone> zones,
            double moveSeconds) {

        /** From one switch to the next: look, reach, move, see it moved (s). A guess. */
        public static final double USUAL_MOVE_SECONDS = 2;

        public Aircraft {
            loads = List.copyOf(loads);
            phases = List.copyOf(phases);
            zones = List.copyOf(zones);
            if (!(moveSeconds > 0)) {
                throw new IllegalArgumentException(
                        moveSeconds + " s from one move to the next is not above 0");
            }
        }

        /** One with hands of the usual pace. */
        public Aircraft(
                double nominalVolts,
                List<LoadNeed> loads,
                Engine engine,
                List<Phase> phases,
                List<Zone> zones) {
            this(nominalVolts, loads, engine, phases, zones, USUAL_MOVE_SECONDS);
        }

        /** Temperature in a zone (°C); the usual one where the study has no such zone. */
        public double celsius(String zone) {
            return zones.stream()
                    .filter(z -> z.name().equals(zone))
                    .mapToDouble(Zone::celsius)
                    .findFirst()
                    .orElse(Zone.USUAL_CELSIUS);
        }

        /** The same aircraft with one temperature everywhere (°C). */
        public Aircraft at(double celsius) {
            List<Zone> same =
                    zones.stream()
                            .map(z -> new Zone(z.name(), z.label(), z.side(), z.hazards(), celsius))
                            .toList();
            return new Aircraft(nominalVolts, loads, engine, phases, same, moveSeconds);
        }

        /** The phase of this name, if there is one. */
        public Optional<Phase> phase(String name) {
            return phases.stream().filter(p -> p.name().equals(name)).findFirst();
        }

        /** Whether the engine is started in a phase. */
        public boolean isStarted(Phase phase) {
            return engine.starting()
                    .starter()
                    .flatMap(this::load)
                    .map(starter -> starter.use().phases().contains(phase.name()))
                    .orElse(false);
        }

        /** Loads whose stopping a pilot notices without a lamp. */
        public List<String> noticed() {
            return loads.stream().filter(LoadNeed::noticed).map(LoadNeed::id).toList();
        }

        /** The load of this id, if there is one. */
        public Optional<LoadNeed> load(String id) {
            return loads.stream().filter(l -> l.id().equals(id)).findFirst();
        }
    }

    /** The same study of another aircraft. */
    public Study with(Aircraft other) {
        return new Study(id, heading, other, goals, candidates);
    }

    /** The same study with other preferences. */
    public Study with(Preferences preferences) {
        return new Study(id, heading, aircraft, goals.with(preferences), candidates);
    }

    /** From where to where each criterion's values run, in the order of the weights. */
    public List<ValueScale> scales() {
        return goals.weights().stream()
                .map(weight -> UsualScales.of(this, weight.criterion()))
                .toList();
    }

    /** The same study with its loads changed. */
    public Study withLoads(UnaryOperator<LoadNeed> change) {
        return with(
                new Aircraft(
                        aircraft.nominalVolts,
                        aircraft.loads.stream().map(change).toList(),
                        aircraft.engine,
                        aircraft.phases,
                        aircraft.zones,
                        aircraft.moveSeconds));
    }

    /** What an engine must outlast after a failure. */
    public Landing landing() {
        double plan = aircraft.phases.stream().mapToDouble(Phase::seconds).sum();
        return new Landing(
                goals.countsFrom, goals.enoughSeconds, Math.max(goals.enoughSeconds, plan));
    }

    /**
     * What is asked of a candidate.
     *
     * @param failurePhase phase in which failures are injected
     * @param enoughSeconds endurance with which a failure no longer ends the engine: time to get
     *     down (s)
     * @param preferences how much each criterion counts, and from where to where its values run
     * @param baseline the candidate that others are departures from
     * @param cases failures that every candidate is asked about first, as a person calls them
     * @param runUp phase on the ground with the engine running, in which checks are made before
     *     take-off
     * @param countsFrom from when that time counts
     */
    public record Goals(
            Phase failurePhase,
            double enoughSeconds,
            List<Requirement> requirements,
            Preferences preferences,
            Optional<String> baseline,
            List<String> cases,
            Phase runUp,
            CountsFrom countsFrom) {
        /** Goals of which nobody says when checks are made: where failures happen. */
        public Goals(
                Phase failurePhase,
                double enoughSeconds,
                List<Requirement> requirements,
                List<Weight> weights,
                Optional<String> baseline,
                List<String> cases) {
            this(
                    failurePhase,
                    enoughSeconds,
                    requirements,
                    Preferences.of(weights),
                    baseline,
                    cases,
                    failurePhase,
                    CountsFrom.FIRST_SIGN);
        }

        /** The same goals with other preferences. */
        public Goals with(Preferences others) {
            return new Goals(
                    failurePhase,
                    enoughSeconds,
                    requirements,
                    others,
                    baseline,
                    cases,
                    runUp,
                    countsFrom);
        }

        /** Weight by criterion, in the study's order. */
        public List<Weight> weights() {
            return preferences.weights();
        }

        /** The requirement of a kind, if there is one. */
        public <T extends Requirement> Optional<T> required(Class<T> kind) {
            return requirements.stream().filter(kind::isInstance).map(kind::cast).findFirst();
        }

        /** The same goals, where nothing is the baseline. */
        public Goals withoutBaseline() {
            return new Goals(
                    failurePhase,
                    enoughSeconds,
                    requirements,
                    preferences,
                    Optional.empty(),
                    cases,
                    runUp,
                    countsFrom);
        }

        /** The same goals with other requirements. */
        public Goals requiring(List<Requirement> others) {
            return new Goals(
                    failurePhase,
                    enoughSeconds,
                    others,
                    preferences,
                    baseline,
                    cases,
                    runUp,
                    countsFrom);
        }

        public Goals {
            requirements = List.copyOf(requirements);
            cases = List.copyOf(cases);
        }
    }

    /** How much a criterion counts, against the others. */
    public record Weight(CriterionName criterion, double weight) {}

    public Study {
        candidates = List.copyOf(candidates);
    }

    /** The candidate of this id, if there is one. */
    public Optional<Candidate> candidate(String id) {
        return candidates.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
