package stillturning.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import stillturning.model.Candidate;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.LoadAnalysis.BatteryOnly;
import stillturning.sizing.result.LoadAnalysis.ChargeStep;
import stillturning.sizing.result.LoadAnalysis.LoadRow;
import stillturning.sizing.result.LoadAnalysis.PhaseBalance;
import stillturning.sizing.result.LoadAnalysis.Sum;
import stillturning.sizing.result.LoadAnalysis.Taken;
import stillturning.sizing.result.LoadAnalysis.Watts;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.SteadyState;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;
import stillturning.story.timeline.Timeline;

/** Adds up what loads take and sources give, and follows the batteries through the flight. */
final class LoadSums {

    private final Subject subject;
    private final Study study;
    private final Candidate candidate;

    LoadSums(Subject subject) {
        this.subject = subject;
        this.study = subject.study();
        this.candidate = subject.candidate();
    }

    /**
     * @throws UntoldStory if a state of the flight cannot be computed
     */
    LoadAnalysis analysis() throws UntoldStory {
        List<PhaseBalance> phases = new ArrayList<>();
        List<ChargeStep> steps = new ArrayList<>();
        Map<String, Double> charges = new HashMap<>();
        for (Phase phase : study.aircraft().phases()) {
            SteadyStates flows = new SteadyStates(study, carrying(charges), phase);
            phases.add(balance(phase, flows.rest()));
            SteadyState end = flows.atEnd();
            flows.rest().charges().forEach((b, c) -> steps.add(step(b, phase, c, end.charges())));
            charges.putAll(end.charges());
        }
        return new LoadAnalysis(rows(), phases, monitored(), steps);
    }

    private Candidate carrying(Map<String, Double> charges) {
        return Draws.charged(candidate, charges);
    }

    private static ChargeStep step(
            String battery, Phase phase, double start, Map<String, Double> end) {
        return new ChargeStep(battery, phase.name(), start, end.getOrDefault(battery, start));
    }

    private PhaseBalance balance(Phase phase, SteadyState average) throws UntoldStory {
        SteadyState full = subject.survey().rest(phase);
        return new PhaseBalance(
                phase,
                sum(average, load -> load.averageAmps(phase.name())),
                sum(full, load -> load.averageAmps(phase.name()) / load.use().duty()),
                subject.phases().availableAmps(phase),
                SetPoint.isHeld(subject.circuit(), average),
                subject.phases().starting(phase) ? new BatteryOnly(0, 0) : batteryOnly(phase));
    }

    private BatteryOnly batteryOnly(Phase phase) throws UntoldStory {
        Failure lost = FailureCatalogue.chargingLost(candidate);
        Timeline timeline = Timeline.quick(study, candidate, Moment.heldIn(phase.name()));
        return new BatteryOnly(
                timeline.tell(lost, Pilot.NEVER).engine().endurance().seconds(),
                timeline.tell(lost, Pilot.PLANNED).engine().endurance().seconds());
    }

    private Sum sum(SteadyState flow, ToDoubleFunction<LoadNeed> nameplate) {
        List<LoadNeed> fed =
                study.aircraft().loads().stream()
                        .filter(l -> candidate.part(l.id()).isPresent())
                        .toList();
        double loadAmps = 0;
        double sources = 0;
        double generated = 0;
        double discharged = 0;
        double apart = 0;
        AlternatorReach reach = new AlternatorReach(candidate, subject.circuit(), flow);
        double loads = 0;
        double equipment = 0;
        for (Placed placed : subject.circuit().placed()) {
            double amps = flow.amps(placed.part(), placed.element().name());
            double watts =
                    amps
                            * flow.volts(
                                    placed.part(), placed.element().from(), placed.element().to());
            switch (placed.element().role()) {
                case GENERATOR -> {
                    generated -= amps;
                    sources -= watts;
                }
                case BATTERY -> {
                    discharged -= amps;
                    apart -= reach.relieves(placed) ? 0 : amps;
                    sources -= watts;
                }
                case LOAD, COIL -> {
                    if (isWork(placed)) {
                        loadAmps += amps;
                        loads += watts;
                    } else {
                        equipment += watts;
                    }
                }
                case CAPACITOR, CONVERTER, PATH, ELECTRONICS -> {}
            }
        }
        return new Sum(
                fed.stream().mapToDouble(nameplate).sum(),
                loadAmps,
                generated + discharged,
                generated,
                apart,
                new Watts(sources, loads, equipment));
    }

    private boolean isWork(Placed placed) {
        return placed.element().name().equals(Load.WORK)
                && candidate.has(placed.part(), Part.Role.LOAD);
    }

    private List<LoadRow> rows() {
        List<LoadRow> rows = new ArrayList<>();
        for (LoadNeed need : study.aircraft().loads()) {
            Optional<Load> load =
                    candidate.loads().filter(l -> l.id().equals(need.id())).findFirst();
            load.ifPresent(l -> rows.add(row(need, l)));
        }
        return rows;
    }

    private LoadRow row(LoadNeed need, Load load) {
        Map<String, Taken> at = new LinkedHashMap<>();
        for (Phase phase : study.aircraft().phases()) {
            if (need.use().phases().contains(phase.name())) {
                SteadyState flow = subject.survey().rest(phase);
                at.put(
                        phase.name(),
                        new Taken(
                                flow.amps(load.id(), Load.WORK),
                                Circuits.volts(load, flow),
                                phase.seconds() * need.use().duty()));
            }
        }
        return new LoadRow(need.id(), need.label(), need.use().duty(), need.demand().amps(), at);
    }

    private boolean monitored() {
        return candidate.cockpit().cues().stream().anyMatch(cue -> cue.sign().warnsOfDischarge());
    }
}
