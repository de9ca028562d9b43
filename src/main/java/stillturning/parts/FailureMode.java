package stillturning.parts;

import java.util.List;
import stillturning.parts.element.Element;

/**
 * One way in which one part stops doing its job.
 *
 * @param name unique in the part, in the trade's words ("short to ground")
 * @param alterations what becomes of its elements
 * @param whateverItsSupply whether the part is lost however well it is supplied, so that no
 *     electrical architecture can save it
 */
public record FailureMode(String name, List<Alteration> alterations, boolean whateverItsSupply) {

    /** A failure whose effect the architecture decides. */
    public FailureMode(String name, List<Alteration> alterations) {
        this(name, alterations, false);
    }

    public FailureMode {
        alterations = List.copyOf(alterations);
    }

    static FailureMode of(String name, Alteration... alterations) {
        return new FailureMode(name, List.of(alterations));
    }

    static FailureMode whateverItsSupply(String name, Alteration... alterations) {
        return new FailureMode(name, List.of(alterations), true);
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
