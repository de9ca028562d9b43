package stillturning.assess.crosscheck;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Engine;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.Study.Aircraft;
import stillturning.parts.AlteredPart;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Guard.GuardTrip;
import stillturning.parts.element.Tolerance;

/** A study and a candidate with some of what only stories know taken away. */
record IdealisedCandidate(Study study, Candidate candidate) {

    /** Share of what is drawn that strains nothing. */
    private static final double HARDLY = 1e-3;

    /** How much larger a battery is that never runs down. */
    private static final double NEVER_EMPTY = 1e6;

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
            case TIME -> with(new Lasting());
            case WEAK_SUPPLY -> with(new Light());
            case WAITING -> patient();
            case PILOT -> acting(procedure -> procedure.execution().automatic().isPresent());
            case AUTOMATIC -> acting(procedure -> procedure.execution().automatic().isEmpty());
            case MANAGEMENT -> with(new Unmanaged());
            case OVER_VOLTAGE -> with(new Hardened());
            case UNSTEADY -> with(new Steady());
            case RESTING_CONTACT -> with(new AlwaysClosed());
            case SNEAK_PATH, DEFAULT -> this;
        };
    }

    private IdealisedCandidate with(Unchanged change) {
        return new IdealisedCandidate(
                study, candidate.with((Part part) -> new AlteredPart(part, e -> e.accept(change))));
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
                new Aircraft(
                        now.nominalVolts(),
                        now.loads(),
                        patient,
                        now.phases(),
                        now.zones(),
                        now.moveSeconds()));
    }

    private IdealisedCandidate in(Aircraft aircraft) {
        return new IdealisedCandidate(study.with(aircraft), candidate);
    }

    private IdealisedCandidate acting(Predicate<Procedure> kept) {
        Cockpit now = candidate.cockpit();
        return new IdealisedCandidate(
                study, candidate.with(now.with(now.procedures().stream().filter(kept).toList())));
    }

    private static final class Lasting extends Unchanged {
        @Override
        public Element visit(Cell cell) {
            return cell.with(cell.capacity().times(NEVER_EMPTY), 1, cell.management());
        }
    }

    private static final class Unmanaged extends Unchanged {
        @Override
        public Element visit(Cell cell) {
            return cell.with(cell.capacity(), cell.chargeAtStart(), Optional.empty());
        }
    }

    private static final class Steady extends Unchanged {
        @Override
        public Element visit(Generator generator) {
            Alone now = generator.alone();
            return generator.alone(
                    new Alone(WithoutBattery.STEADY, now.steadying(), now.clampVolts(), 0));
        }
    }

    /** What is closed without its coil is closed with it too. */
    private static final class AlwaysClosed extends Unchanged {
        @Override
        public Element visit(Contact contact) {
            return contact.control()
                    .fold(
                            hand -> contact,
                            coil -> coil.closedWhenPulled() ? contact : metal(contact));
        }

        private static Element metal(Contact c) {
            return new Conductor(c.name(), c.from(), c.to(), c.ohms());
        }
    }

    /** Draws hardly anything, and is content with hardly any voltage. */
    private static final class Light extends Unchanged {
        @Override
        public Element visit(Consumer c) {
            return new Consumer(
                    c.name(), c.from(), c.to(), light(c.demand()), light(c.tolerance()));
        }

        @Override
        public Element visit(Coil c) {
            return new Coil(
                    c.name(),
                    c.from(),
                    c.to(),
                    c.ohms() / HARDLY,
                    2 * CONTENT_VOLTS,
                    CONTENT_VOLTS,
                    c.pullInSeconds(),
                    c.dropOutSeconds());
        }

        @Override
        public Element visit(Generator generator) {
            return generator.excitedFully();
        }

        @Override
        public Element visit(Conversion c) {
            Conversion.InputSide input =
                    new Conversion.InputSide(0, CONTENT_VOLTS, 2 * CONTENT_VOLTS);
            return new Conversion(c.name(), c.from(), c.to(), c.output(), c.efficiency(), input);
        }
    }

    /** Bears any voltage; a guard never acts. */
    private static final class Hardened extends Unchanged {
        @Override
        public Element visit(Consumer c) {
            return new Consumer(c.name(), c.from(), c.to(), c.demand(), hardened(c.tolerance()));
        }

        @Override
        public Element visit(Guard guard) {
            GuardTrip now = guard.trip();
            return guard.trippingAt(new GuardTrip(UNHARMED_VOLTS, now.seconds(), now.action()));
        }
    }

    private static Demand light(Demand demand) {
        return new Demand(demand.kind(), demand.amps() * HARDLY, demand.nominalVolts());
    }

    /** A battery of its own is no way by which anything is fed. */
    private static Tolerance light(Tolerance t) {
        return new Tolerance(
                CONTENT_VOLTS,
                2 * CONTENT_VOLTS,
                t.rideThroughSeconds(),
                t.bootSeconds(),
                t.withstandVolts(),
                t.withstandSeconds());
    }

    private static Tolerance hardened(Tolerance t) {
        return new Tolerance(
                t.minimumVolts(),
                t.restartVolts(),
                t.rideThroughSeconds(),
                t.bootSeconds(),
                UNHARMED_VOLTS,
                t.withstandSeconds(),
                t.ownBattery());
    }
}
