package stillturning.files;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.ProblemCollector.Spot;
import stillturning.files.entry.RunText.Anchor;
import stillturning.model.Terminal;
import stillturning.parts.Alternator;
import stillturning.parts.Battery;
import stillturning.parts.Bus;
import stillturning.parts.Connector;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.SolidStateController;
import stillturning.parts.Switch;

/** Finds the terminals that a candidate's lines name. */
final class Terminals {

    private static final Pattern POLE = Pattern.compile("(?<name>[a-z]+)(?<pole>-[0-9]+)?");
    private static final Pattern PIN = Pattern.compile("(?<number>[0-9]+)(?<side>[ab])");
    private static final String BAR = "bar";

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
    Optional<Terminal> exit(Anchor anchor, String path) {
        return part(anchor, path)
                .flatMap(
                        p ->
                                anchor.terminal().isPresent()
                                        ? named(p, anchor, path)
                                        : Optional.of(new Terminal(p.id(), p.exit())));
    }

    /** Terminal at which a run ends; each run to a bus bar ends at a stud of its own. */
    Optional<Terminal> entry(Anchor anchor, String path) {
        return part(anchor, path)
                .flatMap(
                        p ->
                                anchor.terminal().isPresent()
                                        ? named(p, anchor, path)
                                        : Optional.of(new Terminal(p.id(), entryOf(p))));
    }

    private String entryOf(Part part) {
        if (!(part instanceof Bus bus)) {
            return part.entry();
        }
        int stud = arrived.merge(bus.id(), 1, Integer::sum);
        return bus.studs().get(Math.min(stud, bus.studs().size()) - 1);
    }

    private Optional<Part> part(Anchor anchor, String path) {
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

    private Optional<Terminal> named(Part part, Anchor anchor, String path) {
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
    record Way(Terminal in, Terminal out) {}

    /**
     * The way through a part, turned round where the run comes from the far side.
     *
     * @param before terminal that comes before it in the run
     */
    Optional<Way> through(Anchor anchor, Terminal before, String path) {
        Optional<Part> part = part(anchor, path);
        Optional<Terminal> near = part.flatMap(p -> nearSide(p, anchor, path));
        if (part.isEmpty() || near.isEmpty()) {
            return Optional.empty();
        }
        Optional<Terminal> far =
                across(part.get(), near.get().name()).map(t -> new Terminal(anchor.part(), t));
        if (far.isEmpty()) {
            report.problem(
                    new Spot(path, anchor.offset()),
                    "a run cannot lead through " + near.get(),
                    hint(part.get()));
        }
        return far.map(f -> f.equals(before) ? new Way(f, near.get()) : new Way(near.get(), f));
    }

    private Optional<Terminal> nearSide(Part part, Anchor anchor, String path) {
        boolean choice =
                (part instanceof Switch lever && lever.throwing() == Switch.Throw.DOUBLE)
                        || (part instanceof Connector connector && connector.pins() > 1);
        if (choice && anchor.terminal().isEmpty()) {
            report.problem(
                    new Spot(path, anchor.offset()),
                    "\"" + part.id() + "\" has several ways through it",
                    hint(part));
            return Optional.empty();
        }
        return entry(anchor, path);
    }

    private static String hint(Part part) {
        if (part instanceof Switch) {
            return "write the throw, such as " + part.id() + ".up";
        }
        if (part instanceof Connector) {
            return "write the pin, such as " + part.id() + " pin 1";
        }
        return "end one run at it and start another from it";
    }

    /** The terminal on the other side of a part that current passes through. */
    private static Optional<String> across(Part part, String terminal) {
        if (part instanceof Battery
                || part instanceof Alternator
                || part instanceof Load
                || part instanceof SolidStateController) {
            return Optional.empty();
        }
        if (part instanceof Bus) {
            return Optional.of(BAR).filter(bar -> !bar.equals(terminal));
        }
        if (part instanceof Connector) {
            Matcher pin = PIN.matcher(terminal);
            return pin.matches()
                    ? Optional.of(pin.group("number") + (pin.group("side").equals("a") ? "b" : "a"))
                    : Optional.empty();
        }
        if (part instanceof Switch) {
            return acrossContact(terminal);
        }
        if (part.entry().equals(part.exit())) {
            return Optional.empty();
        }
        return terminal.equals(part.entry())
                ? Optional.of(part.exit())
                : Optional.of(part.entry()).filter(e -> terminal.equals(part.exit()));
    }

    private static Optional<String> acrossContact(String terminal) {
        Matcher pole = POLE.matcher(terminal);
        if (!pole.matches()) {
            return Optional.empty();
        }
        String suffix = Optional.ofNullable(pole.group("pole")).orElse("");
        return switch (pole.group("name")) {
            case "in" -> Optional.of("out" + suffix);
            case "out" -> Optional.of("in" + suffix);
            case "up", "down" -> Optional.of("common" + suffix);
            default -> Optional.empty();
        };
    }
}
