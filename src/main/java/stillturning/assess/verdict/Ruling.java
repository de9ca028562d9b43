package stillturning.assess.verdict;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a failure comes to with one kind of pilot.
 *
 * @param remarks what a pilot has to know beside it, the gravest first
 */
public record Ruling(Outcome outcome, List<Remark> remarks) {
    public Ruling {
        remarks = List.copyOf(remarks);
    }

    /** The same with one remark more. */
    Ruling noting(Remark more) {
        return new Ruling(
                outcome,
                Stream.concat(remarks.stream(), Stream.of(more))
                        .sorted(Comparator.comparing(Remark::topic))
                        .toList());
    }
}
