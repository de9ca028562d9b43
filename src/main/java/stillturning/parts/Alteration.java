package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import stillturning.element.Element;

/** One change that a failure makes to a part's elements. */
public sealed interface Alteration {

    /** The element does nothing any more. */
    record Removed(String element) implements Alteration {
        @Override
        public List<Element> on(List<Element> elements) {
            return elements.stream().filter(e -> !e.name().equals(element)).toList();
        }
    }

    /** An element takes the place of the one of the same name, or is new. */
    record Put(Element element) implements Alteration {
        @Override
        public List<Element> on(List<Element> elements) {
            List<Element> changed = new ArrayList<>(elements);
            for (int i = 0; i < changed.size(); i++) {
                if (changed.get(i).name().equals(element.name())) {
                    changed.set(i, element);
                    return List.copyOf(changed);
                }
            }
            changed.add(element);
            return List.copyOf(changed);
        }
    }

    /** The elements after the change. Applying it twice is applying it once. */
    List<Element> on(List<Element> elements);
}
