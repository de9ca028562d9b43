package stillturning.structure;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.structure.StructureFindings.SupplyWays;
import stillturning.structure.Survival.SurvivingState;
import stillturning.structure.Wiring.GraphLine;
import stillturning.structure.Wiring.Need;

/** Findings in plain words. */
final class FindingTexts {

    private final Wiring wiring;
    private final Survival survival;
    private final List<LoadEnds> loads;

    FindingTexts(Wiring wiring, Survival survival, List<LoadEnds> loads) {
        this.wiring = wiring;
        this.survival = survival;
        this.loads = loads;
    }

    /** A separation with part names, and in a sentence. */
    SupplyWays ways(Separation found, String from, String to) {
        List<String> cut = ids(found.cut());
        List<String> shared = ids(found.shared());
        return new SupplyWays(
                found.ways().stream().map(this::ids).toList(),
                cut,
                shared,
                found.proven(),
                sentence(found, cut, shared, from + " to " + to));
    }

    /** Why the engine logic is not met without a part. */
    String reason(int part, SurvivingState intact) {
        List<LoadEnds> fed = loads.stream().filter(l -> intact.fed().get(l.need())).toList();
        if (fed.stream().anyMatch(load -> load.work().part() == part)) {
            return "the engine cannot run without it";
        }
        BitSet gone = new BitSet();
        gone.set(part);
        SurvivingState after = survival.without(gone);
        SurvivingState frozen = survival.frozen(intact, gone);
        List<LoadEnds> lost = fed.stream().filter(l -> !after.fed().get(l.need())).toList();
        List<LoadEnds> cutOff = lost.stream().filter(l -> !frozen.fed().get(l.need())).toList();
        List<String> reasons = new ArrayList<>(reasonsOf(part, cutOff, frozen));
        List<LoadEnds> dropped = lost.stream().filter(l -> frozen.fed().get(l.need())).toList();
        if (!dropped.isEmpty()) {
            reasons.add(dependence(part, dropped, intact, after));
        }
        return reasons.isEmpty()
                ? "no position of the switches feeds all that is needed without it"
                : String.join("; ", reasons);
    }

    /** Which way each load is fed, part by part. */
    String feeding(SurvivingState outcome) {
        SupplyTrace behind = new SupplyTrace(wiring, survival, outcome);
        return loads.stream()
                .filter(load -> outcome.fed().get(load.need()))
                .map(load -> load.id() + " by " + feeder(load, behind))
                .collect(Collectors.joining("; "));
    }

    private String feeder(LoadEnds load, SupplyTrace behind) {
        return load.isFed() ? list(ids(behind.wayTo(load.need()))) : "itself";
    }

    private List<String> reasonsOf(int part, List<LoadEnds> lost, SurvivingState frozen) {
        if (lost.isEmpty()) {
            return List.of();
        }
        if (wiring.lines.stream().anyMatch(l -> l.part() == part && l.kind().isSource())) {
            return List.of("the only source of " + names(lost));
        }
        List<LoadEnds> both = having(lost, n -> !frozen.comes(n) && !frozen.returns(n));
        List<LoadEnds> feed = having(lost, n -> !frozen.comes(n) && frozen.returns(n));
        List<LoadEnds> back = having(lost, n -> frozen.comes(n) && !frozen.returns(n));
        List<LoadEnds> parted = having(lost, n -> frozen.comes(n) && frozen.returns(n));
        List<String> reasons = new ArrayList<>();
        if (!both.isEmpty()) {
            reasons.add("feed and return of " + names(both) + " pass it");
        }
        if (!feed.isEmpty()) {
            reasons.add(feeds(feed));
        }
        if (!back.isEmpty()) {
            reasons.add((back.size() == 1 ? "the return of " : "the returns of ") + names(back));
        }
        if (!parted.isEmpty()) {
            reasons.add("without it no source has both a way to " + names(parted) + " and back");
        }
        return reasons;
    }

    private static String feeds(List<LoadEnds> loads) {
        int feeds = loads.stream().mapToInt(load -> load.inputs().size()).sum();
        if (feeds == 1) {
            return "the only feed of " + names(loads);
        }
        return (feeds == 2 ? "both feeds of " : "all feeds of ") + names(loads) + " pass it";
    }

    /** Names what let go because of it. */
    private String dependence(
            int part, List<LoadEnds> lost, SurvivingState intact, SurvivingState after) {
        List<String> let =
                intact.open().stream()
                        .filter(i -> !after.open().get(i))
                        .mapToObj(wiring.lines::get)
                        .filter(line -> line.part() != part && line.need() != Wiring.NOTHING)
                        .map(GraphLine::part)
                        .distinct()
                        .sorted()
                        .map(wiring::id)
                        .toList();
        return list(let)
                + (let.size() == 1 ? " depends on it, and " : " depend on it, and ")
                + names(lost)
                + " on "
                + (let.size() == 1 ? let.get(0) : "them");
    }

    private static String sentence(
            Separation found, List<String> cut, List<String> shared, String fromTo) {
        if (found.ways().isEmpty()) {
            return "no way from " + fromTo;
        }
        if (cut.isEmpty()) {
            return "from " + fromTo + " there is no part between";
        }
        if (!shared.isEmpty()) {
            return "every way from " + fromTo + " passes " + list(shared);
        }
        int count = found.ways().size();
        String ways =
                count == 1
                        ? "no two ways from " + fromTo + " are independent"
                        : count + " independent ways from " + fromTo;
        return ways + "; without " + list(cut) + " there is none";
    }

    private static List<LoadEnds> having(List<LoadEnds> loads, Predicate<Need> that) {
        return loads.stream().filter(load -> that.test(load.work())).toList();
    }

    private List<String> ids(List<Integer> parts) {
        return parts.stream().map(wiring::id).toList();
    }

    private static String names(List<LoadEnds> loads) {
        return list(loads.stream().map(LoadEnds::id).toList());
    }

    static String list(List<String> names) {
        if (names.size() == 1) {
            return names.get(0);
        }
        return String.join(", ", names.subList(0, names.size() - 1))
                + " and "
                + names.get(names.size() - 1);
    }
}
