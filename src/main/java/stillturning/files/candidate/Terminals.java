package stillturning.files.candidate;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Terminal;
import stillturning.parts.Part;

/** Finds the terminals that a candidate's lines name. */
final class Terminals {

    private final Assembly assembly;
    private final CheckedStudy frame;
    private final ProblemCollector report;
    private final Map<String, Integer> arrived = new HashMap<>();

    Terminals(Assembly assembly, CheckedStudy frame, ProblemCollector report) {
        this.assembly = assembly;
        this.frame = frame;
        this.report = report;
    }

    /** Terminal at which a run starts. */
    Optional<Terminal> exit(NamedTerminal anchor, String path) {
        return part(anchor, path)
                .flatMap(
                        p ->
                                anchor.terminal().isPresent()
                                        ? named(p, anchor, path)
                                        : Optional.of(new Terminal(p.id(), p.exit())));
    }

    /** Terminal at which a run ends; each run to a bus bar ends at a stud of its own. */
    Optional<Terminal> entry(NamedTerminal anchor, String path) {
        return part(anchor, path)
                .flatMap(
                        p ->
                                anchor.terminal().isPresent()
                                        ? named(p, anchor, path)
                                        : Optional.of(new Terminal(p.id(), entryOf(p))));
    }

    private String entryOf(Part part) {
        return part.entry(arrived.merge(part.id(), 1, Integer::sum) - 1);
    }

    private Optional<Part> part(NamedTerminal anchor, String path) {
        Optional<Part> part = assembly.part(anchor.part());
        if (part.isEmpty() && !assembly.knows(anchor.part())) {
            Spot spot = new Spot(path, anchor.offset());
            if (frame.loadNames().contains(anchor.part())) {
                report.problem(
                        spot,
                        "the candidate leaves \"" + anchor.part() + "\" out",
                        "take this line out, or take the load off leaves-out");
            } else {
                report.unknown(spot, "part", anchor.part(), assembly.names());
            }
        }
        return part;
    }

    private Optional<Terminal> named(Part part, NamedTerminal anchor, String path) {
        String name = anchor.terminal().orElse("");
        if (!part.terminals().contains(name)) {
            report.unknown(
                    new Spot(path, anchor.offset()),
                    "terminal",
                    part.id() + "." + name,
                    part.terminals().stream().map(t -> part.id() + "." + t).toList());
            return Optional.empty();
        }
        return Optional.of(new Terminal(part.id(), name));
    }

    /** The way through a part in line: where the run enters it and where it leaves it. */
    record InlineWay(Terminal in, Terminal out) {}

    /**
     * The way through a part, turned round where the run comes from the far side.
     *
     * @param before terminal that comes before it in the run
     */
    Optional<InlineWay> through(NamedTerminal anchor, Terminal before, String path) {
        Optional<Part> part = part(anchor, path);
        Optional<Terminal> near = part.flatMap(p -> nearSide(p, anchor, path));
        if (part.isEmpty() || near.isEmpty()) {
            return Optional.empty();
        }
        Optional<Terminal> far =
                part.get().across(near.get().name()).map(t -> new Terminal(anchor.part(), t));
        if (far.isEmpty()) {
            report.problem(
                    new Spot(path, anchor.offset()),
                    "a run cannot lead through " + near.get(),
                    hint(part.get()));
        }
        return far.map(
                f ->
                        f.equals(before)
                                ? new InlineWay(f, near.get())
                                : new InlineWay(near.get(), f));
    }

    private Optional<Terminal> nearSide(Part part, NamedTerminal anchor, String path) {
        if (part.wayHint().isPresent() && anchor.terminal().isEmpty()) {
            report.problem(
                    new Spot(path, anchor.offset()),
                    "\"" + part.id() + "\" has several ways through it",
                    hint(part));
            return Optional.empty();
        }
        return entry(anchor, path);
    }

    private static String hint(Part part) {
        return part.wayHint().orElse("end one run at it and start another from it");
    }
}
