package stillturning.assess.verdict;

import java.util.List;

/**
 * What a failure comes to with one kind of pilot.
 *
 * @param remarks what a pilot has to know beside it, the gravest first
 */
public record Ruling(Outcome outcome, List<Remark> remarks) {
    public Ruling {
        remarks = List.copyOf(remarks);
    }
}
