package stillturning.parts;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Element;

/**
 * One way in which one part stops doing its job.
 *
 * @param key what rates and rules call it: the same for all that differ in one number or name only
 *     ({@code pin-open})
 * @param name unique in the part, in the trade's words ("pin 2 open")
 * @param alterations what becomes of its elements
 * @param causes damage that makes it fail so
 * @param traits what else is to be known of it
 */
public record FailureMode(
        String key, String name, List<Alteration> alterations, Set<Damage> causes, Traits traits) {

    /**
     * What else is to be known of a failure mode.
     *
     * @param whateverItsSupply whether the part is lost however well it is supplied, so that no
     *     electrical architecture can save it
     * @param alsoCalled what people call it besides its name
     * @param inspection how to look for it, where that is not as for everything else of the part
     */
    public record Traits(
            boolean whateverItsSupply, List<String> alsoCalled, Optional<String> inspection) {
        static final Traits NONE = new Traits(false, List.of(), Optional.empty());

        public Traits {
            alsoCalled = List.copyOf(alsoCalled);
        }
    }

    public FailureMode {
        alterations = List.copyOf(alterations);
        causes = Set.copyOf(causes);
    }

    /** A mode whose name is its key with blanks. */
    public static FailureMode of(String key, Alteration... alterations) {
        return of(key, key.replace('-', ' '), List.of(alterations));
    }

    /** A mode of a winding whose turns touch; its name is its key with blanks. */
    public static FailureMode shorted(String key, Coil coil) {
        return of(key, key.replace('-', ' '), Faults.shortedCoil(coil));
    }

    /** A mode of one of several alike things of a part. */
    public static FailureMode of(String key, String name, List<Alteration> alterations) {
        return new FailureMode(key, name, alterations, Set.of(), Traits.NONE);
    }

    /** The same mode, which damage causes. */
    public FailureMode by(Damage... damage) {
        return new FailureMode(key, name, alterations, Set.of(damage), traits);
    }

    /** The same mode of a part that is lost however well it is supplied. */
    public FailureMode whateverItsSupply() {
        return with(new Traits(true, traits.alsoCalled, traits.inspection));
    }

    /** The same mode, which people also call otherwise. */
    public FailureMode alsoCalled(String... words) {
        return with(new Traits(traits.whateverItsSupply, List.of(words), traits.inspection));
    }

    /** The same mode, which is looked for in a way of its own. */
    public FailureMode inspectedBy(String words) {
        return with(new Traits(traits.whateverItsSupply, traits.alsoCalled, Optional.of(words)));
    }

    private FailureMode with(Traits other) {
        return new FailureMode(key, name, alterations, causes, other);
    }

    /** Whether it joins the part to the aircraft's metal. */
    public boolean shortsToStructure() {
        return alterations.stream()
                .anyMatch(
                        a ->
                                a instanceof Alteration.Added added
                                        && List.of(added.element().from(), added.element().to())
                                                .contains(Element.STRUCTURE));
    }

    /** The same mode with other elements put and added. */
    FailureMode altered(UnaryOperator<Element> change) {
        return new FailureMode(
                key,
                name,
                alterations.stream().map(a -> a.altered(change)).toList(),
                causes,
                traits);
    }

    /** Its full name in the files: its words with hyphens between. */
    public String fullKey() {
        return name.replace(' ', '-');
    }

    /** The part's elements once this has happened. */
    public List<Element> on(List<Element> elements) {
        List<Element> changed = elements;
        for (Alteration alteration : alterations) {
            changed = alteration.on(changed);
        }
        return changed;
    }
}
