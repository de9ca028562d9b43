package stillturning.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.model.Candidate.Hit;
import stillturning.model.Phase;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.wiring.Ampacity;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.sizing.CurrentSurvey.TooLate;
import stillturning.sizing.result.Carried;
import stillturning.sizing.result.ContactSize;
import stillturning.sizing.result.CrankingSupply;
import stillturning.sizing.result.LoadAnalysis;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizeFinding.Mend;
import stillturning.sizing.result.SizingReport.Devices;
import stillturning.sizing.result.WireSchedule;
import stillturning.sizing.result.WireSchedule.LoadCircuit;
import stillturning.sizing.result.WireSchedule.MainCircuit;
import stillturning.sizing.result.WireSize;
import stillturning.story.SteadyState;

/** Compares every number with its limit. */
final class SizeFindings {

    /** Ratings that fuses and breakers are made in (A). Common practice, no published source. */
    static final List<Double> RATINGS =
            List.of(
                    1.0, 2.0, 3.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 50.0, 60.0,
                    70.0, 80.0, 100.0, 125.0, 150.0);

    private static final double ROUNDING_AMPS = 0.005;

    /** Nearer than this to where the returns meet, a wire drives no short (V). */
    private static final double GROUNDED_VOLTS = 1;

    /** Behind a protector that has opened a load has less (V). */
    private static final double CUT_OFF_VOLTS = 0.5;

    /** The starter's highest current and the steady one differ by less. A guess. */
    private static final double MOST_OF_IT = 0.9;

    /** How a protector fails that opens although nothing asks for it. */
    private static final String OPENED = ": opens for no reason";

    private final Subject subject;
    private final List<SizeFinding> findings = new ArrayList<>();
    private final Map<String, WireSize> wires = new HashMap<>();
    private final List<WireSize> hotIfSlow = new ArrayList<>();

    /** What the starter takes as stated (A); 0 where there is none. */
    private double starterAmps;

    SizeFindings(Subject subject) {
        this.subject = subject;
    }

    /** All of them, gravest first, in the order of the parts. */
    List<SizeFinding> of(
            WireSchedule schedule,
            Devices devices,
            LoadAnalysis loads,
            List<CrankingSupply> cranking) {
        starterAmps =
                cranking.stream()
                        .filter(c -> !c.hard())
                        .mapToDouble(CrankingSupply::starterAmps)
                        .max()
                        .orElse(0);
        schedule.wires().forEach(w -> wires.put(w.wire().id(), w));
        schedule.wires().forEach(this::wire);
        hotIfSlow();
        schedule.circuits().forEach(this::circuit);
        schedule.mains().forEach(this::main);
        devices.protectors().forEach(this::protector);
        devices.contacts().forEach(this::contact);
        findings.addAll(new SourceFindings(subject).of(loads));
        cranking.forEach(this::cranking);
        return findings.stream().sorted(Comparator.comparing(SizeFinding::rule)).toList();
    }

    private void add(Rule rule, String part, double found, double allowed, Carried when) {
        findings.add(new SizeFinding(rule, part, "", found, allowed, when, Optional.empty()));
    }

    private void wire(WireSize size) {
        if (size.worst().amps() > size.can().amps() + ROUNDING_AMPS) {
            findings.add(
                    new SizeFinding(
                            Rule.AMPACITY,
                            size.wire().id(),
                            "",
                            size.worst().amps(),
                            size.can().amps(),
                            size.worst(),
                            thicker(size)));
        }
        size.guard().filter(g -> !g.suits()).ifPresent(g -> unsuitable(size, g));
        shorted(size);
    }

    private void unsuitable(WireSize size, WireSize.WireGuard guard) {
        double best = Ampacity.inBestPlace(size.wire().cable());
        boolean burns = guard.inLine() && guard.ratedAmps() > best;
        findings.add(
                new SizeFinding(
                        burns ? Rule.PROTECTS_NOTHING : Rule.CHART,
                        size.wire().id(),
                        guard.part(),
                        guard.ratedAmps(),
                        burns ? best : guard.largestAmps().orElse(0.0),
                        Carried.NOTHING,
                        thicker(size)));
    }

    /**
     * The part whose short drives a current through a wire at the voltage of the returns: that a
     * wire like this chafes itself drives nothing. Empty for any other wire.
     */
    private String driving(Carried shorted, String wire) {
        if (!isGrounded(wire, subject.study().goals().failurePhase())) {
            return "";
        }
        return FailureCatalogue.singlesOf(subject.candidate()).stream()
                .filter(failure -> failure.name().equals(shorted.failure()))
                .flatMap(failure -> failure.hits().stream())
                .map(Hit::part)
                .filter(part -> !part.equals(wire))
                .findFirst()
                .orElse("");
    }

    private boolean isGrounded(String wire, Phase phase) {
        SteadyState flow = subject.survey().rest(phase);
        return subject.candidate().part(wire).stream()
                .flatMap(part -> part.terminals().stream())
                .map(at -> flow.voltsAt(wire, at))
                .allMatch(v -> v.isPresent() && Math.abs(v.getAsDouble()) < GROUNDED_VOLTS);
    }

    private void shorted(WireSize size) {
        String id = size.wire().id();
        String guard = size.guard().map(WireSize.WireGuard::part).orElse("");
        Carried shorted = subject.survey().shorted(id);
        TooLate late = subject.survey().tooLate(id);
        if (shorted.amps() > size.can().amps()) {
            Rule bare = bare(size, shorted);
            boolean opens =
                    late.opened().contains(guard) && late.carried().amps() >= shorted.amps();
            findings.add(
                    new SizeFinding(
                            opens ? Rule.HEAT : bare,
                            id,
                            opens || bare != Rule.UNPROTECTED_BY_CUSTOM
                                    ? guard
                                    : driving(shorted, id),
                            shorted.amps(),
                            size.can().amps(),
                            shorted,
                            Optional.empty()));
        } else if (subject.survey().tooLateIfSlow(id).opened().contains(guard)) {
            hotIfSlow.add(size);
        }
    }

    /** What it is called where nothing opens. */
    private Rule bare(WireSize size, Carried shorted) {
        if (custom(size)) {
            return Rule.UNPROTECTED_BY_CUSTOM;
        }
        String id = size.wire().id();
        boolean grounded =
                subject.study().aircraft().phases().stream().allMatch(p -> isGrounded(id, p));
        boolean own = grounded && driving(shorted, id).isEmpty();
        return own ? Rule.STRAY_RETURN : Rule.UNPROTECTED;
    }

    /** One for all such wires, since all hang on one thing: the class of the protectors. */
    private void hotIfSlow() {
        hotIfSlow.stream()
                .max(Comparator.comparingDouble(w -> ifSlow(w).amps() / w.can().amps()))
                .ifPresent(
                        worst ->
                                findings.add(
                                        new SizeFinding(
                                                Rule.HEAT_IF_SLOW,
                                                worst.wire().id(),
                                                worst.guard()
                                                        .map(WireSize.WireGuard::part)
                                                        .orElse(""),
                                                ifSlow(worst).amps(),
                                                hotIfSlow.size(),
                                                ifSlow(worst),
                                                Optional.empty())));
    }

    private Carried ifSlow(WireSize size) {
        return subject.survey().tooLateIfSlow(size.wire().id()).carried();
    }

    private static Optional<Mend> thicker(WireSize size) {
        return size.smallest().map(c -> new Mend.Gauge(size.wire().id(), c.awg()));
    }

    /**
     * Battery leads go without protector by custom, and the main circuit of the starter: what ends
     * at it, and what carries all of its current with nothing wrong, there or back.
     *
     * @see "14 CFR 23.1357 for starter mains, read in a second source; battery leads common
     *     practice, no published source"
     */
    private boolean custom(WireSize size) {
        List<Part> ends =
                List.of(size.ends().fromPart(), size.ends().toPart()).stream()
                        .flatMap(id -> subject.candidate().part(id).stream())
                        .toList();
        boolean lead =
                ends.stream().anyMatch(SizeFindings::isBattery)
                        && ends.stream().allMatch(Part::endsBatteryLead);
        return lead
                || ends.stream().anyMatch(p -> subject.phases().isStarter(p.id()))
                || carriesTheStarter(size.normal().amps());
    }

    private boolean carriesTheStarter(double amps) {
        return starterAmps > 0 && amps > MOST_OF_IT * starterAmps;
    }

    private static boolean isBattery(Part part) {
        return part.elements().stream().anyMatch(Cell.class::isInstance);
    }

    private void circuit(LoadCircuit circuit) {
        if (!circuit.drop().within() && !circuit.wires().isEmpty()) {
            WireSize thinnest = thinnest(circuit.wires());
            findings.add(
                    new SizeFinding(
                            Rule.DROP,
                            circuit.name(),
                            thinnest.wire().id(),
                            circuit.drop().volts(),
                            circuit.drop().limitVolts(),
                            Carried.NOTHING,
                            thicker(thinnest)));
        }
        if (circuit.supply().volts() < circuit.supply().minimumVolts()) {
            add(
                    Rule.MINIMUM,
                    circuit.name(),
                    circuit.supply().volts(),
                    circuit.supply().minimumVolts(),
                    new Carried(circuit.amps(), circuit.supply().phase(), ""));
        }
        if (!circuit.supply().without().isEmpty()) {
            add(
                    Rule.OFF,
                    circuit.name(),
                    0,
                    circuit.supply().minimumVolts(),
                    new Carried(circuit.amps(), circuit.supply().without(), ""));
        }
    }

    private WireSize thinnest(List<String> ids) {
        return ids.stream()
                .map(id -> Optional.ofNullable(wires.get(id)).orElseThrow())
                .min(Comparator.comparingDouble(w -> w.wire().cable().circularMils()))
                .orElseThrow();
    }

    private void main(MainCircuit main) {
        if (!main.drop().within() && !main.wires().isEmpty()) {
            WireSize thinnest = thinnest(main.wires());
            findings.add(
                    new SizeFinding(
                            Rule.MAIN_POWER,
                            main.source(),
                            main.bus(),
                            main.drop().volts(),
                            main.drop().limitVolts(),
                            new Carried(main.amps(), "", ""),
                            thicker(thinnest)));
        }
    }

    private void protector(ProtectorSize size) {
        double rated = size.ratedAmps();
        boolean engine = subject.survey().stopsEngine(size.name() + OPENED);
        double advised = PublishedLimits.PROTECTOR_SHARE * rated;
        if (size.normal().amps() > rated) {
            Rule rule = engine ? Rule.ENGINE_DUTY : Rule.DUTY;
            larger(rule, size, size.normal().amps(), rated, size.normal());
        } else if (engine && size.normal().amps() > advised + ROUNDING_AMPS) {
            larger(Rule.ENGINE_MARGIN, size, size.normal().amps(), rated, size.normal());
        } else if (size.worst().amps() > rated && !size.passes().start().opens()) {
            add(Rule.DUTY_AFTER_FAILURE, size.name(), size.worst().amps(), rated, size.worst());
        }
        if (size.passes().start().opens()) {
            add(
                    Rule.CRANKING_DUTY,
                    size.name(),
                    size.passes().start().amps(),
                    size.passes().start().letsThroughAmps(),
                    Carried.NOTHING);
        }
        if (size.passes().inrush().opens()) {
            larger(
                    Rule.INRUSH,
                    size,
                    size.passes().inrush().amps(),
                    size.passes().inrush().letsThroughAmps(),
                    Carried.NOTHING);
        }
        OptionalDouble amps = size.fault().amps();
        OptionalDouble can = size.fault().canInterruptAmps();
        if (size.fault().tooMuch()) {
            add(
                    Rule.INTERRUPT,
                    size.name(),
                    amps.getAsDouble(),
                    can.getAsDouble(),
                    Carried.NOTHING);
        } else if (can.isEmpty() && size.kind() != ProtectorSize.ProtectorKind.CHANNEL) {
            amps.ifPresent(a -> add(Rule.UNRATED, size.name(), a, 0, Carried.NOTHING));
        }
    }

    private void larger(Rule rule, ProtectorSize size, double found, double allowed, Carried when) {
        double share = size.passes().inrush().letsThroughAmps() / size.ratedAmps();
        Optional<Mend> mend =
                size.kind() == ProtectorSize.ProtectorKind.CHANNEL
                        ? Optional.empty()
                        : RATINGS.stream()
                                .filter(r -> r >= size.normal().amps() && r > size.ratedAmps())
                                .filter(r -> size.passes().inrush().amps() <= share * r)
                                .filter(r -> rule != Rule.ENGINE_MARGIN || leavesRoom(size, r))
                                .findFirst()
                                .map(r -> new Mend.Rating(size.name(), r));
        findings.add(new SizeFinding(rule, size.name(), "", found, allowed, when, mend));
    }

    private static boolean leavesRoom(ProtectorSize size, double ratedAmps) {
        return size.normal().amps() <= PublishedLimits.PROTECTOR_SHARE * ratedAmps;
    }

    private void contact(ContactSize size) {
        if (size.ratedAmps().isEmpty()) {
            add(Rule.UNRATED, size.name(), size.neededAmps(), 0, size.carried());
        } else if (size.neededAmps() > size.ratedAmps().getAsDouble()) {
            add(
                    Rule.CONTACT,
                    size.name(),
                    size.neededAmps(),
                    size.ratedAmps().getAsDouble(),
                    size.carried());
        }
    }

    private void cranking(CrankingSupply cranking) {
        Rule rule = cranking.hard() ? Rule.CRANKING_COLD : Rule.CRANKING;
        Carried when = new Carried(cranking.starterAmps(), cranking.conditions(), "");
        String opened = cranking.opened().stream().findFirst().orElse("");
        cranking.loads().stream()
                .filter(CrankingSupply.Fed::stops)
                .map(f -> finding(rule, f, opened, when))
                .forEach(findings::add);
    }

    private static SizeFinding finding(
            Rule rule, CrankingSupply.Fed fed, String opened, Carried when) {
        return new SizeFinding(
                rule,
                fed.load(),
                fed.volts() < CUT_OFF_VOLTS ? opened : "",
                fed.volts(),
                fed.minimumVolts(),
                when,
                Optional.empty());
    }
}
