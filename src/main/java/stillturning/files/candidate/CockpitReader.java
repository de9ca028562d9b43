package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.CandidateEntry.CueEntry;
import stillturning.files.entry.CandidateEntry.ProcedureEntry;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.LoadNeed;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Generator;
import stillturning.quantity.Quantity;
import stillturning.yaml.DocumentPlaces;

/** Makes what the pilot can set, see and do, and tells what names nothing. */
final class CockpitReader {

    private final CandidateEntry candidate;
    private final Assembly assembly;
    private final CheckedStudy frame;
    private final ProblemCollector report;
    private final Terminals terminals;
    private final Map<String, Lever> levers = new LinkedHashMap<>();

    CockpitReader(
            CandidateEntry candidate,
            Assembly assembly,
            CheckedStudy frame,
            ProblemCollector report) {
        this.candidate = candidate;
        this.assembly = assembly;
        this.frame = frame;
        this.report = report;
        this.terminals = new Terminals(assembly, frame, report);
        assembly.parts().forEach(this::addLevers);
    }

    private void addLevers(Part part) {
        part.levers().forEach(lever -> levers.put(lever.name(), lever));
    }

    Cockpit read() {
        CandidateEntry.Positions positions = candidate.positions();
        places("positions.flight", positions.flight());
        places("positions.master-off", positions.masterOff());
        places("positions.starting", positions.starting(), Lever::positions);
        everySwitch(positions.flight());
        List<Cue> cues = new ArrayList<>();
        candidate.sees().forEach((name, entry) -> cue(name, entry).ifPresent(cues::add));
        List<Procedure> procedures = new ArrayList<>();
        candidate.procedures().forEach((name, entry) -> procedures.add(procedure(name, entry)));
        starterNobodyPresses(procedures);
        return new Cockpit(
                positions.flight(),
                positions.masterOff(),
                positions.starting(),
                cues,
                procedures,
                new ReachReader(candidate, assembly, frame, report).read());
    }

    /** A starter turns nothing by itself. */
    private void starterNobodyPresses(List<Procedure> procedures) {
        Engine.EngineStarting starting = frame.aircraft().engine().starting();
        boolean pressed =
                starting.habitSeconds().isPresent()
                        || procedures.stream().anyMatch(p -> p.execution().pressesStarter());
        if (starting.starter().isPresent() && !pressed) {
            report.remark(
                    new Spot("", 0),
                    "nobody presses the starter once the engine has stopped in flight, so no story"
                            + " tries it: write presses-starter: yes at a procedure, or"
                            + " presses-starter-after at the engine in the study");
        }
    }

    /** Where levers are put and stay. */
    private void places(String path, Map<String, String> positions) {
        places(path, positions, Lever::restingPositions);
    }

    private void places(
            String path, Map<String, String> positions, Function<Lever, List<String>> choices) {
        positions.forEach(
                (lever, position) ->
                        place(
                                DocumentPlaces.under(path, lever),
                                lever,
                                position,
                                Optional.ofNullable(levers.get(lever)).map(choices)));
    }

    private void place(String path, String lever, String position, Optional<List<String>> choices) {
        boolean broken = assembly.knows(partOf(lever)) && !isMade(lever);
        if (choices.isEmpty() && !broken) {
            report.unknown(Spot.atKey(path), "lever", lever, levers.keySet());
        } else if (choices.isPresent() && !choices.get().contains(position)) {
            report.unknown(new Spot(path, 0), "position", position, choices.get());
        }
    }

    private static String partOf(String lever) {
        return lever.contains(".") ? lever.substring(0, lever.indexOf('.')) : lever;
    }

    private boolean isMade(String lever) {
        return assembly.part(partOf(lever)).isPresent();
    }

    private void everySwitch(Map<String, String> flight) {
        for (Part part : assembly.parts()) {
            part.levers().stream()
                    .filter(lever -> lever.stated() && !flight.containsKey(lever.name()))
                    .forEach(lever -> unstated(part, lever));
        }
    }

    private void unstated(Part part, Lever lever) {
        report.problem(
                new Spot("positions.flight", 0),
                part.id(),
                "nothing says where the "
                        + part.kind().name()
                        + " \""
                        + lever.name()
                        + "\" stands in flight",
                "add " + lever.name() + ": " + String.join(" or ", lever.positions()));
    }

    private Optional<Cue> cue(String name, CueEntry entry) {
        String path = DocumentPlaces.under("sees", name);
        entry.shownBy().ifPresent(load -> load(DocumentPlaces.under(path, "shown-by"), load));
        return sign(entry, path).map(sign -> new Cue(name, sign, entry.shownBy()));
    }

    private Optional<Cue.Sign> sign(CueEntry entry, String path) {
        if (entry instanceof CueEntry.LowVoltage low) {
            return at(low.at(), path)
                    .map(
                            t ->
                                    new Cue.LowVolts(
                                            t,
                                            low.below().quantity().si(),
                                            low.lasting().quantity().si()));
        }
        if (entry instanceof CueEntry.HighVoltage high) {
            return at(high.at(), path)
                    .map(
                            t ->
                                    new Cue.HighVolts(
                                            t,
                                            high.above().quantity().si(),
                                            high.lasting().quantity().si()));
        }
        if (entry instanceof CueEntry.AlternatorOut out) {
            alternator(DocumentPlaces.under(path, "alternator"), out.alternator());
            return Optional.of(new Cue.AlternatorOut(out.alternator()));
        }
        if (entry instanceof CueEntry.LoadStops stops) {
            load(DocumentPlaces.under(path, "load"), stops.load());
            return Optional.of(new Cue.LoadStops(stops.load()));
        }
        if (entry instanceof CueEntry.EngineStops) {
            return Optional.of(new Cue.EngineStops());
        }
        throw new IllegalStateException("unknown cue " + entry);
    }

    private Optional<Terminal> at(String written, String path) {
        int point = written.indexOf('.');
        NamedTerminal anchor =
                new NamedTerminal(
                        point < 0 ? written : written.substring(0, point),
                        point < 0 ? Optional.empty() : Optional.of(written.substring(point + 1)),
                        0);
        return terminals.exit(anchor, DocumentPlaces.under(path, "at"));
    }

    private void alternator(String path, String id) {
        boolean known = assembly.knows(id) && assembly.part(id).isEmpty();
        if (!known && assembly.part(id).filter(CockpitReader::generates).isEmpty()) {
            report.unknown(
                    new Spot(path, 0),
                    "alternator",
                    id,
                    assembly.parts().stream()
                            .filter(CockpitReader::generates)
                            .map(Part::id)
                            .toList());
        }
    }

    private static boolean generates(Part part) {
        return part.elements().stream().anyMatch(Generator.class::isInstance);
    }

    private boolean load(String path, String id) {
        if (!frame.loadNames().contains(id)) {
            report.unknown(new Spot(path, 0), "load", id, frame.loadNames());
            return false;
        }
        if (candidate.leavesOut().contains(id)) {
            report.problem(
                    new Spot(path, 0),
                    "the candidate leaves \"" + id + "\" out",
                    "name another load, or take it off leaves-out");
            return false;
        }
        return true;
    }

    private Procedure procedure(String name, ProcedureEntry entry) {
        String path = DocumentPlaces.under("procedures", name);
        for (int i = 0; i < entry.when().size(); i++) {
            if (!candidate.sees().containsKey(entry.when().get(i))) {
                report.unknown(
                        new Spot(DocumentPlaces.item(DocumentPlaces.under(path, "when"), i), 0),
                        "cue",
                        entry.when().get(i),
                        candidate.sees().keySet());
            }
        }
        if (entry.when().isEmpty()) {
            report.problem(
                    DocumentPlaces.under(path, "when"),
                    "nothing starts the procedure",
                    "name a cue");
        }
        places(DocumentPlaces.under(path, "moves"), entry.moves());
        Set<String> shed = new HashSet<>();
        for (int i = 0; i < entry.sheds().size(); i++) {
            String at = DocumentPlaces.item(DocumentPlaces.under(path, "sheds"), i);
            if (shed.add(entry.sheds().get(i))) {
                sheds(at, entry.sheds().get(i));
            } else {
                report.problem(
                        at,
                        "\"" + entry.sheds().get(i) + "\" is already there",
                        "keep one of the two");
            }
        }
        entry.by().ifPresent(by -> automatic(DocumentPlaces.under(path, "by"), by));
        return new Procedure(
                name,
                entry.when(),
                entry.after().quantity().si(),
                entry.moves(),
                entry.sheds(),
                new Procedure.Execution(
                        entry.by(),
                        entry.oneEach().map(Quantity::si).orElse(0.0),
                        entry.pressesStarter()));
    }

    /** Only what has electronics inside can do something by itself. */
    private void automatic(String path, String id) {
        Set<String> able = new LinkedHashSet<>(frame.loadNames());
        for (Part part : assembly.parts()) {
            if (part.elements().stream().anyMatch(Consumer.class::isInstance)) {
                able.add(part.id());
            }
        }
        boolean broken = assembly.knows(id) && assembly.part(id).isEmpty();
        if (!able.contains(id) && !broken) {
            report.unknown(new Spot(path, 0), "part or load with electronics", id, able);
        }
    }

    private void sheds(String path, String id) {
        if (!load(path, id)) {
            return;
        }
        if (frame.needsForEngine(id)) {
            report.problem(
                    new Spot(path, 0), "the engine needs \"" + id + "\"", "shed something else");
        } else if (frame.load(id).map(LoadNeed::shedOrder).filter(o -> o.isEmpty()).isPresent()) {
            report.problem(
                    new Spot(path, 0),
                    "the study does not say that \"" + id + "\" may be shed",
                    "give it a rank in the study (shed: 1), or take it out here");
        }
    }
}
