package stillturning.report.sizes;

import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Terminal;
import stillturning.report.page.Sleeves;
import stillturning.report.page.Sleeves.Sleeve;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WireSize;

/** The labels of every wire of a candidate, in the order of its wire list. */
public final class SleeveLabels {

    private SleeveLabels() {}

    /** Two for each wire: its name as the wire list has it, its size, this end and the other. */
    public static Sleeves of(SizingReport report) {
        return new Sleeves(
                report.candidate().title(),
                report.wires().wires().stream()
                        .flatMap(wire -> both(report.candidate(), wire))
                        .toList());
    }

    private static Stream<Sleeve> both(Candidate candidate, WireSize wire) {
        String name = wire.wire().id();
        String gauge = "AWG " + wire.wire().cable().awg();
        String from = place(candidate, wire.ends().from());
        String to = place(candidate, wire.ends().to());
        return Stream.of(new Sleeve(name, gauge, from, to), new Sleeve(name, gauge, to, from));
    }

    private static String place(Candidate candidate, Terminal at) {
        String part =
                candidate
                        .part(at.part())
                        .map(p -> p.tag().label())
                        .filter(label -> !label.isBlank())
                        .orElse(at.part());
        return part + ": " + at.name();
    }
}
