package stillturning.files.candidate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.candidate.Assembly.Joined;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.LoadNeed;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Element;

/** What must be true of a candidate's joins, whatever flows through them. */
final class WiringChecks {

    private final Assembly assembly;
    private final ProblemCollector report;

    WiringChecks(Assembly assembly, ProblemCollector report) {
        this.assembly = assembly;
        this.report = report;
    }

    /** Tells terminals that hold too much, and those that hold nothing and should. */
    void check() {
        Map<Terminal, Spot> joined = crowded();
        Set<String> used = new HashSet<>();
        joined.keySet().forEach(t -> used.add(t.part()));
        for (Part part : assembly.parts()) {
            if (!used.contains(part.id())) {
                unused(part);
            } else {
                dangling(part, joined.keySet());
            }
        }
    }

    private void unused(Part part) {
        if (part.role() != Part.Role.LOAD) { // one that nothing feeds is told of elsewhere
            report.remark(assembly.spotOf(part.id()), "nothing is joined to this part");
        }
    }

    private Map<Terminal, Spot> crowded() {
        Map<Terminal, Spot> first = new LinkedHashMap<>();
        for (Joined joined : assembly.joins()) {
            for (Terminal end : List.of(joined.join().one(), joined.join().other())) {
                Spot before = first.putIfAbsent(end, joined.spot());
                boolean one =
                        assembly.part(end.part()).filter(p -> !p.takesMany(end.name())).isPresent();
                if (before != null && one) {
                    report.problem(
                            joined.spot(),
                            end + " takes one wire, and has one from " + before.path(),
                            "lead this run somewhere else, or put a bus between");
                }
            }
        }
        return first;
    }

    private void dangling(Part part, Set<Terminal> joined) {
        for (String name : part.terminals()) {
            Terminal terminal = new Terminal(part.id(), name);
            if (!joined.contains(terminal) && !part.mayDangle(name) && !endsTheReturns(part)) {
                report.problem(
                        part.role() == Part.Role.LOAD
                                ? Spot.atKey("links")
                                : assembly.spotOf(part.id()),
                        part.id(),
                        "nothing is joined to " + terminal,
                        "add a link to it");
            }
        }
    }

    /** Without any metal structure a ground that leads no further is where all returns meet. */
    private boolean endsTheReturns(Part part) {
        return part.role() == Part.Role.GROUND
                && assembly.parts().stream().noneMatch(WiringChecks::isOnStructure);
    }

    private static boolean isOnStructure(Part part) {
        return part.role() == Part.Role.GROUND
                && part.elements().stream().anyMatch(e -> e.to().equals(Element.STRUCTURE));
    }

    /** Every load input that a feed or a link leads to, with the place of that line. */
    Map<Terminal, Spot> fedInputs(Map<Terminal, Spot> feeds) {
        Map<Terminal, Spot> fed = new LinkedHashMap<>(feeds);
        for (Joined joined : assembly.joins()) {
            for (Terminal end : List.of(joined.join().one(), joined.join().other())) {
                if (isInput(end)) {
                    fed.putIfAbsent(end, joined.spot());
                }
            }
        }
        return fed;
    }

    private boolean isInput(Terminal terminal) {
        Optional<Part> part = assembly.part(terminal.part());
        return part.isPresent()
                && part.get().role() == Part.Role.LOAD
                && part.get().inputs().contains(terminal.name());
    }

    /** Tells loads that nothing feeds, and remarks on those with fewer feeds than inputs. */
    void checkFeeds(CheckedStudy frame, Map<Terminal, Spot> fed, List<String> leavesOut) {
        Map<String, Integer> counts = new HashMap<>();
        fed.keySet().forEach(t -> counts.merge(t.part(), 1, Integer::sum));
        for (LoadNeed load : frame.aircraft().loads()) {
            if (leavesOut.contains(load.id())) {
                continue;
            }
            if (load.selfPowered()) {
                findStandIn(load);
            } else {
                countFeeds(load, counts.getOrDefault(load.id(), 0), fed);
            }
        }
    }

    /** A load that makes its own current is a part of the candidate, for its kill lead is wired. */
    private void findStandIn(LoadNeed load) {
        Optional<Part> part = assembly.part(load.id());
        if (part.isEmpty() && !assembly.knows(load.id())) {
            report.problem(
                    Spot.atKey("parts"),
                    load.id(),
                    "no part is \"" + load.id() + "\", which the study calls self-powered",
                    "add " + load.id() + ": {is: self-powered-ignition}, or put it in leaves-out");
        } else if (part.filter(p -> !worksByItself(p)).isPresent()) {
            report.problem(
                    assembly.spotOf(load.id()),
                    "the study calls \"" + load.id() + "\" self-powered, and this part is not",
                    "write is: self-powered-ignition, or give the part another name");
        }
    }

    private static boolean worksByItself(Part part) {
        return part.elements().stream().anyMatch(e -> e instanceof Consumer c && c.isOwnSource());
    }

    private void countFeeds(LoadNeed load, int count, Map<Terminal, Spot> fed) {
        if (count == 0) {
            report.problem(
                    Spot.atKey("feeds"),
                    load.id(),
                    "nothing feeds \"" + load.id() + "\"",
                    "add " + load.id() + ": from and a bus, or put it in leaves-out");
        } else if (count < load.inputs().size()) {
            Spot spot =
                    fed.entrySet().stream()
                            .filter(e -> e.getKey().part().equals(load.id()))
                            .map(Map.Entry::getValue)
                            .findFirst()
                            .orElse(Spot.atKey("links"));
            report.remark(
                    spot,
                    "\""
                            + load.id()
                            + "\" has "
                            + load.inputs().size()
                            + " inputs and "
                            + count
                            + (count == 1 ? " feed" : " feeds"));
        }
    }
}
