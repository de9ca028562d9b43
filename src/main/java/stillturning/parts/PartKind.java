package stillturning.parts;

import java.util.Optional;

/**
 * What all parts of one kind have in common. Two of one word are the same kind.
 *
 * @param word in the files: {@code is: fuse}
 * @param name what people call one
 * @param plural what people call several
 * @param order where lists put it, low numbers first
 * @param values what a class in the catalogue gives and a candidate may override: a record of SI
 *     numbers that says the rest of each field by its marks; absent for what no candidate writes
 * @param inspection how to look for a failure that no check shows; common practice of the trade,
 *     with no published source
 * @param spareShare spares that have to be carried, as a share of those fitted
 */
public record PartKind(
        String word,
        String name,
        String plural,
        int order,
        Optional<Class<? extends PartValues>> values,
        String inspection,
        double spareShare) {

    /** A kind that candidates can write. */
    public PartKind(
            String word,
            String name,
            String plural,
            int order,
            Class<? extends PartValues> values,
            String inspection) {
        this(word, name, plural, order, Optional.of(values), inspection, 0);
    }

    /** The same kind, of which spares have to be carried. */
    public PartKind withSpares(double share) {
        return new PartKind(word, name, plural, order, values, inspection, share);
    }

    /** Puts a kind on the list of all kinds; each kind's file has one, found by its mark. */
    public interface Listed {
        PartKind kind();
    }
}
