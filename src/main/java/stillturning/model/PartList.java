package stillturning.model;

import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Spliterator;
import org.jspecify.annotations.Nullable;
import stillturning.parts.Part;

/** An immutable list of parts in which one is found by its id without a search. */
final class PartList extends AbstractList<Part> implements RandomAccess {

    private final List<Part> parts;

    /** Made when first asked for: most candidates differ little, and many are never asked. */
    private @Nullable Map<String, Part> byId;

    private PartList(List<Part> parts) {
        this.parts = parts;
    }

    /** A copy, or the list itself where it is one already. */
    static PartList copyOf(List<Part> parts) {
        return parts instanceof PartList list ? list : new PartList(List.copyOf(parts));
    }

    /** The part of this id, the first where there are several. */
    Optional<Part> find(String id) {
        Map<String, Part> known = byId;
        if (known == null) {
            Map<String, Part> made = new HashMap<>();
            parts.forEach(part -> made.putIfAbsent(part.id(), part));
            // all its fields are final, so that it may be handed to other threads as it is
            known = Map.copyOf(made);
            byId = known;
        }
        return Optional.ofNullable(known.get(id));
    }

    @Override
    public Part get(int index) {
        return parts.get(index);
    }

    @Override
    public int size() {
        return parts.size();
    }

    @Override
    public Spliterator<Part> spliterator() {
        return parts.spliterator();
    }
}
