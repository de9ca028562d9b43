package stillturning.reliability.combined;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Study.Aircraft;
import stillturning.model.failure.Failure;
import stillturning.parts.Alteration;
import stillturning.parts.Alteration.Added;
import stillturning.parts.Alteration.Put;
import stillturning.parts.Alteration.Removed;
import stillturning.parts.Part;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard;
import stillturning.reliability.combined.Condition.Changed;
import stillturning.reliability.combined.Condition.Dark;
import stillturning.reliability.combined.Condition.Idle;
import stillturning.reliability.combined.Condition.LeverElsewhere;

/**
 * Brings sets of events to the fewest changes that have the same effect.
 *
 * <ul>
 *   <li>An opening counts as the opening of its chain, at whichever place; and what is changed in
 *       place in an opened chain counts nothing. Neither holds where something else in the set
 *       touches a net inside the chain, since then it matters on which side of the opening.
 *   <li>A protector that cannot open, a contact welded as it stands, a guard that will not act are
 *       asleep until their part is called on; and so is an opening in a chain with a load that does
 *       not run, until it does, unless something else touches the chain.
 *   <li>A dead lamp is asleep until what it should show comes.
 * </ul>
 *
 * <p>Numbers stand for changes, in the order in which they are first met among the events.
 */
final class Conditions {

    private final Candidate candidate;
    private final Chains chains;
    private final Set<String> conducting;
    private final Set<String> idle;
    private final Map<Integer, Integer> awake = new HashMap<>();
    private final List<Condition> known = new ArrayList<>();
    private final Map<Condition, Integer> numbers = new HashMap<>();
    private final List<int[]> ofEvent = new ArrayList<>();
    private final List<Set<Integer>> touched = new ArrayList<>();
    private final List<Integer> chainOf = new ArrayList<>();
    private final Map<Integer, Integer> opening = new HashMap<>();

    private static final int NO_CHAIN = -1;

    /**
     * What holds in normal flight.
     *
     * @param conducting names of the elements that carry current
     * @param idle loads that do not run
     */
    record Flight(Set<String> conducting, Set<String> idle) {}

    Conditions(Aircraft aircraft, Candidate candidate, List<Event> events, Flight flight) {
        this.candidate = candidate;
        this.chains = new Chains(aircraft, candidate);
        this.conducting = flight.conducting;
        this.idle = flight.idle;
        for (Event event : events) {
            ofEvent.add(numbersOf(event));
        }
    }

    /** The changes that these events come to; empty if they cannot happen together. */
    Optional<int[]> of(int[] events) {
        Set<Integer> all = new HashSet<>();
        for (int event : events) {
            for (int number : ofEvent.get(event)) {
                all.add(number);
            }
        }
        return contradicting(all) ? Optional.empty() : Optional.of(reduced(all));
    }

    /** Loads that do not run in normal flight. */
    Set<String> idle() {
        return idle;
    }

    /** The change of this number. */
    Condition get(int number) {
        return known.get(number);
    }

    private int[] reduced(Set<Integer> all) {
        Set<Integer> touchedInside = new HashSet<>();
        all.forEach(number -> touchedInside.addAll(touched.get(number)));
        Set<Integer> opened = new HashSet<>();
        for (int number : all) {
            if (opens(number) && !touchedInside.contains(chainOf.get(number))) {
                opened.add(chainOf.get(number));
            }
        }
        return all.stream()
                .mapToInt(
                        number -> {
                            int chain = chainOf.get(number);
                            if (touchedInside.contains(chain)) {
                                return awake.getOrDefault(number, number);
                            }
                            return opened.contains(chain)
                                    ? opening.getOrDefault(chain, number)
                                    : number;
                        })
                .sorted()
                .distinct()
                .toArray();
    }

    private boolean opens(int number) {
        return known.get(number) instanceof Changed changed
                && changed.alteration() instanceof Removed
                && chainOf.get(number) != NO_CHAIN;
    }

    private boolean contradicting(Set<Integer> all) {
        Map<String, String> levers = new HashMap<>();
        for (int number : all) {
            if (known.get(number) instanceof LeverElsewhere lever) {
                String other = levers.put(lever.lever(), lever.position());
                if (other != null && !other.equals(lever.position())) {
                    return true;
                }
            }
        }
        return false;
    }

    private int[] numbersOf(Event event) {
        List<Integer> found = new ArrayList<>();
        if (event.kind() == Event.EventKind.IDLE_PILOT) {
            found.add(number(new Idle()));
        }
        Failure failure = event.failure();
        for (Hit hit : failure.hits()) {
            Part part = candidate.part(hit.part()).orElseThrow();
            for (Alteration alteration : hit.mode().alterations()) {
                found.add(number(changed(part, alteration)));
            }
        }
        failure.dark().forEach(cue -> found.add(number(new Dark(cue))));
        failure.levers()
                .forEach(
                        (lever, position) ->
                                found.add(number(new LeverElsewhere(lever, position))));
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    private int number(Condition condition) {
        Integer before = numbers.get(condition);
        return before != null ? before : newNumber(condition);
    }

    private int newNumber(Condition condition) {
        int number = known.size();
        known.add(condition);
        numbers.put(condition, number);
        chainOf.add(NO_CHAIN);
        touched.add(Set.of());
        if (condition instanceof Changed changed) {
            place(number, changed);
            lull(number, changed);
        }
        return number;
    }

    /** Puts what opens an idle chain to sleep, and keeps a number for it awake. */
    private void lull(int number, Changed changed) {
        int chain = chainOf.get(number);
        if (chain == NO_CHAIN || !changed.sleepsIn().isEmpty()) {
            return;
        }
        chains.idleIn(chain, idle)
                .ifPresent(
                        load -> {
                            known.set(
                                    number,
                                    new Changed(changed.part(), changed.alteration(), load));
                            awake.put(number, known.size());
                            known.add(changed);
                            chainOf.add(NO_CHAIN);
                            touched.add(Set.of());
                        });
    }

    private void place(int number, Changed changed) {
        String part = changed.part();
        if (changed.alteration() instanceof Removed removed) {
            chains.openedBy(part, removed.element())
                    .ifPresent(
                            chain -> {
                                chainOf.set(number, chain);
                                opening.computeIfAbsent(chain, c -> number);
                            });
        } else if (changed.alteration() instanceof Put put && staysInPlace(part, put.element())) {
            chains.openedBy(part, put.element().name())
                    .ifPresent(chain -> chainOf.set(number, chain));
        } else if (changed.alteration() instanceof Put put) {
            touched.set(number, chainsAt(part, put.element()));
        } else if (changed.alteration() instanceof Added added) {
            touched.set(number, chainsAt(part, added.element()));
        }
    }

    private Set<Integer> chainsAt(String part, Element element) {
        Set<Integer> found = new HashSet<>();
        chains.around(part, element.from()).ifPresent(found::add);
        chains.around(part, element.to()).ifPresent(found::add);
        chains.openedBy(part, element.name()).ifPresent(found::add);
        return found;
    }

    private boolean staysInPlace(String part, Element now) {
        return before(part, now.name())
                .filter(e -> e.from().equals(now.from()) && e.to().equals(now.to()))
                .isPresent();
    }

    private Optional<Element> before(String part, String element) {
        return candidate.part(part).stream()
                .flatMap(p -> p.elements().stream())
                .filter(e -> e.name().equals(element))
                .findFirst();
    }

    private Changed changed(Part part, Alteration alteration) {
        boolean sleeps =
                alteration.<Boolean>fold(
                        removed ->
                                before(part.id(), removed.element())
                                        .filter(Conditions::waitsToShort)
                                        .isPresent(),
                        put -> staysAsItIs(part.id(), put.element()),
                        added -> false);
        return new Changed(part.id(), alteration, sleeps ? part.id() : "");
    }

    /** Metal in place of what conducts anyway, until it is asked not to. */
    private boolean staysAsItIs(String part, Element now) {
        return before(part, now.name()).filter(e -> e.isStuckUnseen(conducts(part, e))).isPresent();
    }

    private boolean conducts(String part, Element element) {
        return conducting.contains(part + "/" + element.name());
    }

    private static boolean waitsToShort(Element element) {
        return element instanceof Guard guard && guard.trip().action() == Guard.Action.SHORTS;
    }
}
