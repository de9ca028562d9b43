package stillturning.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import stillturning.parts.element.Element;

/** One change that a failure makes to a part's elements. */
public sealed interface Alteration {

    /** The answer for its kind. */
    <T> T fold(Function<Removed, T> removed, Function<Put, T> put, Function<Added, T> added);

    /** The element does nothing any more. */
    record Removed(String element) implements Alteration {
        @Override
        public List<Element> on(List<Element> elements) {
            return elements.stream().filter(e -> !e.name().equals(element)).toList();
        }

        @Override
        public <T> T fold(
                Function<Removed, T> removed, Function<Put, T> put, Function<Added, T> added) {
            return removed.apply(this);
        }
    }

    /**
     * An element takes the place of the one of the same name. Where that is gone, it stays gone:
     * what is burnt open does not come back by failing once more.
     */
    record Put(Element element) implements Alteration {
        @Override
        public List<Element> on(List<Element> elements) {
            return elements.stream()
                    .map(e -> e.name().equals(element.name()) ? element : e)
                    .toList();
        }

        @Override
        public <T> T fold(
                Function<Removed, T> removed, Function<Put, T> put, Function<Added, T> added) {
            return put.apply(this);
        }
    }

    /** An element that was not there before: a fault's metal. */
    record Added(Element element) implements Alteration {
        @Override
        public List<Element> on(List<Element> elements) {
            List<Element> changed = new ArrayList<>(elements);
            changed.removeIf(e -> e.name().equals(element.name()));
            changed.add(element);
            return List.copyOf(changed);
        }

        @Override
        public <T> T fold(
                Function<Removed, T> removed, Function<Put, T> put, Function<Added, T> added) {
            return added.apply(this);
        }
    }

    /** The elements after the change. Applying it twice is applying it once. */
    List<Element> on(List<Element> elements);

    /** The same with the element that it brings in changed. */
    default Alteration altered(UnaryOperator<Element> change) {
        return fold(
                removed -> removed,
                put -> new Put(change.apply(put.element())),
                added -> new Added(change.apply(added.element())));
    }
}
