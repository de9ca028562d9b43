package stillturning.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Engine;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.Study.Aircraft;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.switching.Contactor;
import stillturning.parts.switching.Contactor.Winding;
import stillturning.parts.source.DcConverter;
import stillturning.parts.Load;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard.Trip;
import stillturning.parts.element.Management;
import stillturning.parts.element.Tolerance;

/** A study and a candidate with some of what only stories know taken away. */
record IdealisedCandidate(Study study, Candidate candidate) {

    /** Share of what is drawn that strains nothing. */
    private static final double HARDLY = 1e-3;

    /** How much larger a battery is that never runs down. */
    private static final double FOR_EVER = 1e6;

    private static final double UNHARMED_VOLTS = 1e5;

    /** What the easiest load asks for (V). */
    private static final double CONTENT_VOLTS = 0.5;

    IdealisedCandidate without(List<StoryOnlyFact> away) {
        IdealisedCandidate made = this;
        for (StoryOnlyFact difference : away) {
            made = made.without(difference);
        }
        return made;
    }

    private IdealisedCandidate without(StoryOnlyFact away) {
        return switch (away) {
            case TIME -> with(part -> part instanceof Battery b ? lasting(b) : part);
            case WEAK_SUPPLY -> with(IdealisedCandidate::light);
            case WAITING -> patient();
            case PILOT -> acting(procedure -> procedure.doing().automatic().isPresent());
            case AUTOMATIC -> acting(procedure -> procedure.doing().automatic().isEmpty());
            case MANAGEMENT -> with(part -> part instanceof Battery b ? unmanaged(b) : part);
            case OVER_VOLTAGE -> with(IdealisedCandidate::hardened);
            case UNSTEADY -> with(part -> part instanceof Alternator a ? steady(a) : part);
            case SNEAK_PATH, DEFAULT -> this;
        };
    }

    private IdealisedCandidate with(UnaryOperator<Part> change) {
        List<Part> parts = candidate.parts().stream().map(change).toList();
        return new IdealisedCandidate(
                study,
                new Candidate(
                        candidate.id(),
                        candidate.title(),
                        candidate.about(),
                        parts,
                        candidate.joins(),
                        candidate.cockpit()));
    }

    private IdealisedCandidate patient() {
        Aircraft now = study.aircraft();
        Engine engine = now.engine();
        Engine patient =
                new Engine(
                        engine.logic(),
                        Double.POSITIVE_INFINITY,
                        engine.restartSeconds(),
                        engine.windmills(),
                        engine.windmillRevsPerSecond(),
                        engine.starting());
        return in(
                new Aircraft(now.nominalVolts(), now.loads(), patient, now.phases(), now.zones()));
    }

    private IdealisedCandidate in(Aircraft aircraft) {
        return new IdealisedCandidate(
                new Study(study.id(), study.heading(), aircraft, study.goals(), study.candidates()),
                candidate);
    }

    private IdealisedCandidate acting(Predicate<Procedure> kept) {
        Cockpit now = candidate.cockpit();
        return new IdealisedCandidate(
                study,
                new Candidate(
                        candidate.id(),
                        candidate.title(),
                        candidate.about(),
                        candidate.parts(),
                        candidate.joins(),
                        new Cockpit(
                                now.flight(),
                                now.masterOff(),
                                now.starting(),
                                now.cues(),
                                now.procedures().stream().filter(kept).toList())));
    }

    private static Battery lasting(Battery b) {
        return battery(b, b.capacity().times(FOR_EVER), 1, b.management());
    }

    private static Battery unmanaged(Battery b) {
        return battery(b, b.capacity(), b.chargeAtStart(), Optional.empty());
    }

    private static Battery battery(
            Battery b, Capacity capacity, double charge, Optional<Management> management) {
        return new Battery(
                b.tag(), b.openCircuit(), b.cells(), capacity, b.ohms(), charge, management);
    }

    private static Alternator steady(Alternator a) {
        Alone alone = new Alone(WithoutBattery.STEADY, a.alone().clampVolts(), 0);
        return new Alternator(
                a.tag(), a.regulation(), a.output(), a.fieldOhms(), a.fullFieldVolts(), alone);
    }

    /** Draws hardly anything, and is content with hardly any voltage. */
    private static Part light(Part part) {
        if (part instanceof Load l) {
            return new Load(l.tag(), light(l.demand()), light(l.tolerance()), l.inputs());
        }
        if (part instanceof SolidStateController c) {
            return new SolidStateController(
                    c.tag(), c.outputs(), light(c.logicDemand()), light(c.logicTolerance()));
        }
        if (part instanceof Contactor c) {
            Winding winding =
                    new Winding(
                            c.winding().ohms() / HARDLY,
                            2 * CONTENT_VOLTS,
                            CONTENT_VOLTS,
                            c.winding().seconds());
            return new Contactor(c.tag(), winding, c.contactOhms());
        }
        if (part instanceof Alternator a) {
            double fieldOhms = a.fieldOhms() / HARDLY;
            return new Alternator(a.tag(), a.regulation(), a.output(), fieldOhms, 0, a.alone());
        }
        if (part instanceof DcConverter c) {
            Conversion.Input input = new Conversion.Input(0, CONTENT_VOLTS, 2 * CONTENT_VOLTS);
            return new DcConverter(c.tag(), c.rating(), c.efficiency(), input);
        }
        return part;
    }

    private static Demand light(Demand demand) {
        return new Demand(demand.kind(), demand.amps() * HARDLY, demand.nominalVolts());
    }

    private static Tolerance light(Tolerance t) {
        return new Tolerance(
                CONTENT_VOLTS,
                2 * CONTENT_VOLTS,
                t.rideThroughSeconds(),
                t.bootSeconds(),
                t.withstandVolts(),
                t.withstandSeconds());
    }

    /** Bears any voltage; a guard never acts. */
    private static Part hardened(Part part) {
        if (part instanceof Load l) {
            return new Load(l.tag(), l.demand(), hardened(l.tolerance()), l.inputs());
        }
        if (part instanceof SolidStateController c) {
            return new SolidStateController(
                    c.tag(), c.outputs(), c.logicDemand(), hardened(c.logicTolerance()));
        }
        if (part instanceof OvervoltageGuard g) {
            Trip never = new Trip(UNHARMED_VOLTS, g.trip().seconds(), g.trip().action());
            return new OvervoltageGuard(g.tag(), never, g.ohms());
        }
        return part;
    }

    private static Tolerance hardened(Tolerance t) {
        return new Tolerance(
                t.minimumVolts(),
                t.restartVolts(),
                t.rideThroughSeconds(),
                t.bootSeconds(),
                UNHARMED_VOLTS,
                t.withstandSeconds());
    }
}
