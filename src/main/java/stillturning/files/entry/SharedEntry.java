package stillturning.files.entry;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.quantity.Dimension;
import stillturning.quantity.field.Describes;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.notation.Given;

/** What parts share beside their joints, as written. */
@Describes(
        "What parts share beside their joints: write one of hole, bundle, mount, firmware, alike.")
public record SharedEntry(
        @Describes("Name of a hole in a bulkhead that wires go through.") Optional<String> hole,
        @Describes("Name of a bundle that wires are tied into.") Optional<String> bundle,
        @Describes("Name of a bracket or a cover.") Optional<String> mount,
        @Describes("Name of a program that runs in several units.") Optional<String> firmware,
        @Describes("Name of what is of one make, bought and aged together.") Optional<String> alike,
        @Describes("Parts that share it; a link's or a feed's name stands for all its wires.")
                List<String> parts,
        @Describes(
                        "Share of a unit's own failures that take the others along; the study's"
                                + " otherwise.")
                @OfDimension(value = Dimension.RATIO, least = "0 %", most = "100 %")
                Optional<Given> beta)
        implements NotInStories {

    public SharedEntry {
        long named =
                Stream.of(hole, bundle, mount, firmware, alike).filter(Optional::isPresent).count();
        if (named != 1) {
            throw new IllegalArgumentException(
                    (named == 0 ? "nothing says" : "more than one thing says")
                            + " what is shared; write one of hole, bundle, mount, firmware, alike,"
                            + " and a name for it");
        }
        if (beta.isPresent() && firmware.isEmpty() && alike.isEmpty()) {
            throw new IllegalArgumentException(
                    "beta goes with firmware and alike only; take it out");
        }
    }
}
