package stillturning.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Phase;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Element.Role;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.LoadAnalysis.ChargeStep;
import stillturning.sizing.result.LoadAnalysis.PhaseBalance;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.story.SteadyState;

/** What is not as it should be with alternators, and with how they charge the batteries. */
final class SourceFindings {

    /** A charge that falls by less over a flight is level. */
    private static final double LEVEL = 0.01;

    /** With less charge a battery is empty. */
    private static final double EMPTY = 0.01;

    /** A battery that gives less is neither charged nor discharged (A). */
    private static final double LEVEL_AMPS = 0.1;

    private final Subject subject;
    private final List<SizeFinding> findings = new ArrayList<>();

    SourceFindings(Subject subject) {
        this.subject = subject;
    }

    List<SizeFinding> of(LoadAnalysis loads) {
        loads.phases().forEach(p -> balance(p, loads));
        charge(loads);
        guards();
        setPoints();
        subject.survey()
                .greedy()
                .forEach(
                        g ->
                                add(
                                        Rule.CHARGE_CURRENT,
                                        g.battery(),
                                        g.amps(),
                                        g.allowedAmps(),
                                        new Carried(0, g.phase(), "")));
        return findings;
    }

    private void add(Rule rule, String part, double found, double allowed, Carried when) {
        findings.add(new SizeFinding(rule, part, "", found, allowed, when, Optional.empty()));
    }

    private void balance(PhaseBalance balance, LoadAnalysis loads) {
        if (!isDriven(balance.phase())) {
            return;
        }
        Carried when = new Carried(0, balance.phase().name(), "");
        double taken = balance.average().joinedAmps();
        double given = balance.average().generatedAmps();
        double advised = PublishedLimits.ALTERNATOR_SHARE * balance.alternatorAmps();
        if (taken - given > LEVEL_AMPS) {
            add(
                    balance.setPointHeld() ? Rule.ALTERNATOR_HELD : Rule.ALTERNATOR,
                    "",
                    taken,
                    given,
                    when);
        } else if (taken > advised && !loads.monitored()) {
            add(Rule.ALTERNATOR_SHARE, "", taken, advised, when);
        }
    }

    /** Whether the engine turns an alternator, and not the starter the engine. */
    private boolean isDriven(Phase phase) {
        return !subject.phases().starting(phase) && subject.phases().availableAmps(phase) > 0;
    }

    private void charge(LoadAnalysis loads) {
        Map<String, Double> starts = new HashMap<>();
        Map<String, ChargeStep> lasts = new LinkedHashMap<>();
        for (ChargeStep step : loads.charge()) {
            starts.putIfAbsent(step.battery(), step.start());
            lasts.put(step.battery(), step);
        }
        lasts.forEach(
                (battery, last) -> {
                    double start = starts.getOrDefault(battery, last.start());
                    if (last.end() < start - LEVEL) {
                        Rule rule = falling(battery, last.end(), loads);
                        add(rule, battery, last.end(), start, Carried.NOTHING);
                    }
                });
    }

    /** With little on it, a bus comes up to what its alternator holds. */
    private void guards() {
        Circuit circuit = subject.circuit();
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Guard guard) {
                double held = heldAt(circuit.net(placed.part(), guard.sense()));
                if (guard.trip().volts() <= held) {
                    add(Rule.GUARD_LOW, placed.part(), guard.trip().volts(), held, Carried.NOTHING);
                }
            }
        }
    }

    /** What is full and on a bus is held at its set point for hours, flight after flight. */
    private void setPoints() {
        Circuit circuit = subject.circuit();
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Cell cell) {
                double held = heldAt(placed.from());
                if (held > cell.mostChargingVolts()) {
                    add(
                            Rule.OVERCHARGED,
                            placed.part(),
                            held,
                            cell.mostChargingVolts(),
                            Carried.NOTHING);
                }
            }
        }
    }

    /** The highest voltage that an alternator holds at a net; 0 where none does (V). */
    private double heldAt(int net) {
        Circuit circuit = subject.circuit();
        SteadyState flow = subject.survey().rest(subject.study().goals().failurePhase());
        double held = 0;
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Generator generator
                    && AlternatorReach.metal(circuit, flow, placed).contains(net)) {
                held = Math.max(held, generator.regulation().setVolts());
            }
        }
        return held;
    }

    private Rule falling(String battery, double end, LoadAnalysis loads) {
        if (!charged(battery)) {
            return end < EMPTY ? Rule.EMPTIED : Rule.CHARGE_APART;
        }
        List<PhaseBalance> driven =
                loads.phases().stream().filter(b -> isDriven(b.phase())).toList();
        return !driven.isEmpty() && driven.stream().allMatch(PhaseBalance::setPointHeld)
                ? Rule.CHARGE_HELD
                : Rule.CHARGE;
    }

    private boolean charged(String battery) {
        Phase phase = subject.study().goals().failurePhase();
        AlternatorReach reach =
                new AlternatorReach(
                        subject.candidate(), subject.circuit(), subject.survey().rest(phase));
        return subject.circuit().placed().stream()
                .filter(p -> p.part().equals(battery) && p.element().role() == Role.BATTERY)
                .anyMatch(reach::charges);
    }
}
