package stillturning.files.move;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.files.edit.CandidateOutline.OutlineRun;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.Naming;
import stillturning.files.edit.UsualProtection;

/** Where new things go, and how big they are, in one drawing. */
record Site(Drawn drawn) {

    static final String BUS = "bus";
    static final String BATTERY = "battery";

    private static final Set<String> MOVED =
            Set.of("switch", "key-switch", "contactor", "controller");
    private static final Pattern RATED = Pattern.compile("(?:breaker|fuse) (?<amps>[0-9.]+) A\\b");
    private static final double MOST_BLADE_AMPS = 30;
    private static final double MOST_AMPS = 100;

    /** What runs may start at: bars, then batteries. */
    List<String> sources() {
        List<String> sources = new ArrayList<>(drawn.ofKind(BUS));
        sources.addAll(drawn.ofKind(BATTERY));
        return sources;
    }

    /** Where the pilot's hand reaches: where he has switches already, or else by what is said. */
    String handZone(String otherwise) {
        return drawn.ofKind("switch").stream()
                .map(drawn::zone)
                .findFirst()
                .orElseGet(
                        () ->
                                drawn.loads().zones().stream()
                                        .filter(this::isWithinReach)
                                        .findFirst()
                                        .orElse(otherwise));
    }

    private boolean isWithinReach(String zone) {
        return drawn.loads().written().under("zones").under(zone).text("reach").isPresent();
    }

    /** Loads that are fed from a bar, in the order of the file. */
    Set<String> fedFrom(String source) {
        Set<String> loads = new LinkedHashSet<>();
        for (OutlineRun feed : drawn.feeds()) {
            if (Runs.from(feed).equals(source)) {
                loads.add(Naming.part(feed.key()));
            }
        }
        return loads;
    }

    /** Those of these that the engine's logic names. */
    List<String> ofTheEngine(Collection<String> loads) {
        return loads.stream().filter(drawn.engineLoads()::contains).toList();
    }

    /** Those of these that the engine can do without all at once, the last ones first. */
    Set<String> spare(Collection<String> loads) {
        List<String> backwards = new ArrayList<>(loads);
        Collections.reverse(backwards);
        Set<String> spare = new LinkedHashSet<>();
        for (String load : backwards) {
            Set<String> without = new LinkedHashSet<>(spare);
            without.add(load);
            if (drawn.study().aircraft().engine().logic().runsOn(l -> !without.contains(l))) {
                spare.add(load);
            }
        }
        return spare;
    }

    /** A fuse for all that these loads draw, as an item of a run. */
    String fuse(Collection<String> loads) {
        double amps =
                loads.stream()
                        .filter(load -> !drawn.loads().isStarter(load))
                        .flatMap(load -> drawn.loads().amps(load).stream())
                        .mapToDouble(a -> a)
                        .sum();
        Optional<String> rating = UsualProtection.rating(Math.min(amps, MOST_AMPS * 0.8));
        boolean big = amps * 1.25 > MOST_BLADE_AMPS;
        return "fuse " + rating.orElse("100 A") + (big ? " class high-current" : "");
    }

    /**
     * Whether a feed may hang on a bus: all that leads there may carry more than the feed's own
     * protector, or else a short in the feed takes the whole bus.
     */
    boolean opensBefore(OutlineRun feed, String bus) {
        OptionalDouble own = amps(feed);
        List<OptionalDouble> before =
                drawn.links().stream()
                        .filter(link -> Runs.to(link).equals(bus))
                        .map(Site::amps)
                        .toList();
        return own.isEmpty()
                || before.isEmpty()
                || before.stream().anyMatch(OptionalDouble::isEmpty)
                || before.stream().anyMatch(a -> a.getAsDouble() > own.getAsDouble());
    }

    /** What the smallest protector of a run is made for (A); empty where it has none. */
    private static OptionalDouble amps(OutlineRun run) {
        Matcher found = RATED.matcher(run.line().text());
        OptionalDouble least = OptionalDouble.empty();
        while (found.find()) {
            double amps = Double.parseDouble(found.group("amps"));
            least = OptionalDouble.of(Math.min(amps, least.orElse(amps)));
        }
        return least;
    }

    /** Whether nothing that a hand moves takes a source off: a battery, and what hangs on it. */
    boolean isAlwaysOn(String source) {
        Set<String> on = new LinkedHashSet<>(drawn.ofKind(BATTERY));
        boolean more = true;
        while (more) {
            more = false;
            for (OutlineRun link : drawn.links()) {
                boolean bare = !isSwitched(link);
                if (bare && drawn.isKind(Runs.from(link), BUS) && on.contains(Runs.to(link))) {
                    more |= on.add(Runs.from(link));
                }
                if (bare && drawn.isKind(Runs.to(link), BUS) && on.contains(Runs.from(link))) {
                    more |= on.add(Runs.to(link));
                }
            }
        }
        return on.contains(source);
    }

    /** Whether something in a run can be moved by hand. */
    boolean isSwitched(OutlineRun run) {
        return Runs.through(run).stream().anyMatch(this::isMoved);
    }

    private boolean isMoved(String part) {
        return drawn.outline().kind(part).filter(MOVED::contains).isPresent();
    }

    /** How a new feed from a source can be switched off, in words; nothing where the source can. */
    String switchedOff(String source) {
        return isAlwaysOn(source) ? ", with a switch of its own" : "";
    }

    /**
     * Writes a switch for a new feed from a source that no hand takes off.
     *
     * @return what stands in the run for it; empty where the source can be switched off
     */
    String offSwitch(Pen pen, String source, String name) throws ChangeRefused {
        if (!isAlwaysOn(source)) {
            return "";
        }
        return ", wire" + newSwitch(pen, name, drawn.zone(source));
    }

    /** Writes a switch that is on in flight; what stands in a run for it, the wire before left. */
    String newSwitch(Pen pen, String name, String otherwise) throws ChangeRefused {
        String lever = pen.add("switch", name + "-switch", handZone(otherwise));
        pen.flight(lever, "on");
        return ", via " + lever + ", wire";
    }

    /** Writes a new ground into a zone, bolted as the others are. */
    String ground(Pen pen, String name, String zone) throws ChangeRefused {
        return pen.add("ground", name, zone);
    }

    /** The ground at which what is in a zone returns; absent where the file names none. */
    Optional<String> groundOf(String zone) {
        return drawn.outline().all().under("returns").text(zone);
    }
}
