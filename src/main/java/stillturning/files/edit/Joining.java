package stillturning.files.edit;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.PartCatalogue;
import stillturning.model.Terminal;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.YamlValue;

/** Joins two terminals by a new run. */
final class Joining {

    private static final Pattern CHANNEL = Pattern.compile("out-(?<number>[0-9]+)");
    private static final Pattern NEAR_PIN = Pattern.compile("(?<number>[0-9]+)a");
    private static final String GROUND = "ground";
    private static final String WIRE = "wire";

    private final CandidateOutline outline;
    private final StudyOutline loads;
    private final FileEdits edits;

    Joining(CandidateOutline outline, StudyOutline loads, FileEdits edits) {
        this.outline = outline;
        this.loads = loads;
        this.edits = edits;
    }

    /**
     * Writes the run.
     *
     * @param items what lies in it, as text; a usual first guess if empty
     * @return the name of the run
     */
    String join(Terminal one, Terminal other, Optional<String> items) throws ChangeRefused {
        refuseUnknown(one);
        refuseUnknown(other);
        if (one.equals(other)) {
            throw new ChangeRefused("both ends are " + one + "; join it to something else");
        }
        boolean turned =
                (isInput(one) && !isInput(other))
                        || (isGround(one) && !isGround(other) && !isInput(other));
        Terminal from = turned ? other : one;
        Terminal to = turned ? one : other;
        return isInput(to) ? feed(from, to, items) : link(from, to, items.orElse(WIRE));
    }

    private void refuseUnknown(Terminal terminal) throws ChangeRefused {
        boolean known =
                outline.parts().containsKey(terminal.part())
                        || loads.names().contains(terminal.part())
                        || outline.maker(terminal.part()).isPresent();
        if (!known) {
            throw new ChangeRefused(
                    "there is no part \"" + terminal.part() + "\" in this candidate; add it first");
        }
    }

    private boolean isInput(Terminal terminal) {
        return loads.names().contains(terminal.part())
                && loads.inputs(terminal.part()).contains(terminal.name());
    }

    private boolean isGround(Terminal terminal) {
        return outline.kind(terminal.part()).filter(GROUND::equals).isPresent();
    }

    private String feed(Terminal from, Terminal to, Optional<String> items) throws ChangeRefused {
        String load = to.part();
        String key = loads.inputs(load).size() == 1 ? load : load + "." + to.name();
        if (outline.all().under(CandidateOutline.FEEDS).fields().containsKey(key)) {
            throw new ChangeRefused(
                    key + " is fed already; cut that feed first, or lead it to another input");
        }
        int out = List.copyOf(outline.leavesOut()).indexOf(load);
        if (out >= 0) {
            edits.remove(DocumentPlaces.item(CandidateOutline.LEAVES_OUT, out));
        }
        String more = items.orElseGet(() -> usual(from, load));
        String text = "from " + end(from, true) + (more.isEmpty() ? "" : ", " + more);
        edits.put(CandidateOutline.FEEDS, key, YamlValue.text(text));
        return key;
    }

    /** A protector, unless the run starts at one or cranks the engine. */
    private String usual(Terminal from, String load) {
        String kind = outline.kind(from.part()).orElse("");
        boolean protectedAlready =
                PartCatalogue.shipped().protects(kind) || outline.maker(from.part()).isPresent();
        if (protectedAlready || loads.isStarter(load)) {
            return "";
        }
        String word = kind.equals("battery") ? "fuse " : "breaker ";
        return loads.amps(load).flatMap(UsualProtection::rating).map(word::concat).orElse("");
    }

    private String link(Terminal from, Terminal to, String items) throws ChangeRefused {
        String wanted =
                isGround(to) && !isGround(from)
                        ? from.part() + "-" + from.name()
                        : from.part() + "-to-" + to.part();
        String name = freeRun(wanted, outline.taken());
        String ends = "from " + end(from, true) + " to " + end(to, false);
        edits.put(CandidateOutline.LINKS, name, YamlValue.text(ends + ", " + items));
        return name;
    }

    /** A name for a run that makes nothing of a name that is taken. */
    private static String freeRun(String wanted, Set<String> taken) {
        String name = wanted;
        for (int count = 2; taken.contains(name) || taken.contains(name + "-" + WIRE); count++) {
            name = wanted + "-" + count;
        }
        return name;
    }

    /** How a run names where it starts or ends. */
    private String end(Terminal terminal, boolean start) {
        String kind = outline.kind(terminal.part()).orElse("");
        Matcher channel = CHANNEL.matcher(terminal.name());
        if (kind.equals("controller") && channel.matches()) {
            return terminal.part() + " channel " + channel.group("number");
        }
        boolean understood =
                switch (kind) {
                    case "bus" -> true;
                    case GROUND -> terminal.name().equals("stud");
                    case "battery" -> terminal.name().equals("plus");
                    case "alternator" -> terminal.name().equals(start ? "output" : "field");
                    default -> usualEnd(kind, start).filter(terminal.name()::equals).isPresent();
                };
        return understood ? terminal.part() : terminal.toString();
    }

    private static Optional<String> usualEnd(String kind, boolean start) {
        PartCatalogue catalogue = PartCatalogue.shipped();
        return start ? catalogue.exitOf(kind) : catalogue.entryOf(kind);
    }

    /** How a run leads through a part, entering at a terminal. */
    String through(Terminal near) throws ChangeRefused {
        refuseUnknown(near);
        String kind = outline.kind(near.part()).orElse("");
        Matcher pin = NEAR_PIN.matcher(near.name());
        if (kind.equals("connector") && pin.matches()) {
            return "via " + near.part() + " pin " + pin.group("number");
        }
        boolean onlyWay = kind.equals(WIRE) || List.of("in", "out").contains(near.name());
        return "via " + (onlyWay ? near.part() : near);
    }
}
