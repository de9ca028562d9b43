package stillturning.report.joint;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.assess.verdict.Verdict;
import stillturning.quantity.Formats;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.cutset.Healing;
import stillturning.reliability.likelihood.SetShare;
import stillturning.report.PrintedNames;
import stillturning.report.ResultText;
import stillturning.report.StoryText;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lines;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.story.Pilot;

/** One candidate's smallest sets of events that end the engine, and how likely they are. */
public final class PairSheet {

    private static final int SHOWN = 10;

    /** What the figures are good for; stands once above them. */
    public static final String MEANING =
            "Events are failures of one part, events that take several parts, switches left wrong"
                    + " alone or as one line of a checklist moves them, drills carried out needlessly"
                    + " and a pilot who does nothing. A set of them ends the engine before the aircraft"
                    + " can land, and no smaller part of it does. All happen at one moment of the phase"
                    + " in which the study's failures happen. It rests on this: what nobody sees and"
                    + " what was left wrong count as there already, a common cause as one event, and"
                    + " each set is told in quick steps, exactly only where that leaves a doubt."
                    + " Chances rest on rates that are mostly recalled or guessed: they compare candidates and certify nothing.";

    private final CombinedFindings found;
    private final EventNames names;
    private final SetRemedies remedies;
    private final Map<List<Integer>, Double> chances;
    private final boolean all;
    private final List<Block> blocks = new ArrayList<>();

    private PairSheet(CombinedFindings found, boolean all) {
        this.found = found;
        this.all = all;
        this.names = new EventNames(found.joint().events());
        this.remedies = new SetRemedies(found);
        this.chances =
                found.likely().worst().stream()
                        .collect(Collectors.toMap(SetShare::events, SetShare::perFlight));
    }

    /**
     * The blocks.
     *
     * @param all whether to list what is else only counted
     */
    public static List<Block> of(CombinedFindings found, boolean all) {
        PairSheet sheet = new PairSheet(found, all);
        sheet.counts();
        sheet.blocks.addAll(ChanceBlocks.chance(found.likely()));
        for (int order = 1; order <= found.joint().sets().order(); order++) {
            sheet.sets(order);
        }
        sheet.blocks.addAll(ChanceBlocks.importance(found.likely()));
        sheet.healed();
        sheet.untold();
        sheet.suppositions();
        sheet.pair();
        return List.copyOf(sheet.blocks);
    }

    private void counts() {
        CutSets sets = found.joint().sets();
        Map<EventKind, Long> kinds =
                found.joint().events().stream()
                        .collect(
                                Collectors.groupingBy(
                                        e -> e.kind(), TreeMap::new, Collectors.counting()));
        blocks.add(
                new Words(
                        found.joint().events().size()
                                + " events: "
                                + kinds.entrySet().stream()
                                        .map(e -> kind(e.getValue(), e.getKey()))
                                        .collect(Collectors.joining(", "))
                                + ". "
                                + Formats.count(sets.asked())
                                + " sets asked about."
                                + (sets.complete() ? "" : " Called off before the end.")));
        blocks.add(
                Grid.of(
                        IntStream.rangeClosed(1, sets.order()).mapToObj(this::counted).toList(),
                        List.of(
                                words("sets that end the engine", 30, Counted::words),
                                figures("how many", 8, c -> Formats.count(c.sets)),
                                figures("engine's own", 13, c -> Formats.count(c.own)),
                                figures(
                                        "not flown",
                                        10,
                                        c -> Formats.count(c.sets - c.own - c.count)),
                                figures("that count", 10, c -> Formats.count(c.count)))));
        blocks.add(
                new Note(
                        "The engine's own are failures of what it cannot do without, however"
                                + " well it is supplied: the same in every candidate, and"
                                + " counted against none."
                                + " Not flown: switches left so that the engine does not run even"
                                + " on the ground."));
    }

    /**
     * How many sets there are of so many events, the engine's own, those that count, and those that
     * could not be computed.
     */
    private record Counted(int order, int sets, int own, int count, int untold) {

        String words() {
            return (order == 1 ? "one event alone" : order + " events together")
                    + (untold == 0 ? "" : ", " + untold + " of them not computed");
        }
    }

    private Counted counted(int order) {
        return new Counted(
                order,
                found.joint().sets().ofOrder(order).size(),
                ofOrder(found.likely().engineOwn(), order).size(),
                ofOrder(found.likely().sets(), order).size(),
                ofOrder(found.joint().sets().doubted(), order).size());
    }

    private static List<List<Integer>> ofOrder(List<List<Integer>> sets, int size) {
        return sets.stream().filter(set -> set.size() == size).toList();
    }

    private static String kind(long count, EventKind kind) {
        String ending = count == 1 ? "" : "s";
        return switch (kind) {
            case FAILURE -> count + " single failure" + ending;
            case CAUSE -> count + " common cause" + ending;
            case DEAD_LAMP -> count + " dead indicator" + ending;
            case LEFT_SWITCH ->
                    count == 1
                            ? "1 omission that leaves switches wrong"
                            : count + " omissions that leave switches wrong";
            case NEEDLESS_DRILL -> count + " drill" + ending + " carried out needlessly";
            case IDLE_PILOT -> "a pilot who does nothing";
        };
    }

    private void sets(int order) {
        List<List<Integer>> sets = ofOrder(found.likely().sets(), order);
        if (sets.isEmpty()) {
            return;
        }
        blocks.add(
                new Heading(
                        order == 1
                                ? "One event alone, the likeliest first"
                                : order + " events together, the likeliest first"));
        List<SetGroups.SetGroup> groups =
                order == 1 ? alone(sets) : SetGroups.of(sets, chances(sets));
        int shown = all ? groups.size() : Math.min(SHOWN, groups.size());
        double sum = chances.values().stream().mapToDouble(Double::doubleValue).sum();
        blocks.add(
                Grid.of(
                        groups.subList(0, shown),
                        List.of(
                                ChanceWords.shares("of the sum", g -> share(g, sum)),
                                figures("sets", 5, g -> String.valueOf(g.sets())),
                                words("any one of each", 52, this::anyOfEach),
                                words("what helps", 26, remedies::of))));
        rest(groups.subList(shown, groups.size()), sum);
        if (all && order > 1) {
            blocks.add(new Points(sets.stream().map(names::together).toList()));
        }
    }

    private List<Double> chances(List<List<Integer>> sets) {
        return sets.stream().map(set -> chances.getOrDefault(set, 0.0)).toList();
    }

    /** Each by itself: what ends the engine alone is worth a line of its own. */
    private List<SetGroups.SetGroup> alone(List<List<Integer>> sets) {
        return sets.stream()
                .map(set -> new SetGroups.SetGroup(List.of(set), 1, chances.getOrDefault(set, 0.0)))
                .sorted(Comparator.comparingDouble(group -> -group.chance()))
                .toList();
    }

    /** No number where all chances together are nothing. */
    private static double share(SetGroups.SetGroup group, double sum) {
        return sum == 0 ? Double.NaN : group.chance() / sum;
    }

    private String anyOfEach(SetGroups.SetGroup group) {
        return group.classes().stream().map(names::anyOf).collect(Collectors.joining(" AND "));
    }

    private void rest(List<SetGroups.SetGroup> groups, double sum) {
        if (!groups.isEmpty()) {
            int sets = groups.stream().mapToInt(SetGroups.SetGroup::sets).sum();
            double chance = groups.stream().mapToDouble(SetGroups.SetGroup::chance).sum();
            blocks.add(
                    new Note(
                            Formats.count(sets)
                                    + " more sets in "
                                    + Formats.count(groups.size())
                                    + " rows"
                                    + (sum == 0
                                            ? ""
                                            : ", "
                                                    + ChanceWords.share(chance / sum)
                                                    + " of the sum")
                                    + "; break --pairs --all lists them."));
        }
    }

    private void healed() {
        List<Healing> healings = found.joint().sets().healings();
        if (healings.isEmpty()) {
            return;
        }
        blocks.add(new Heading("What one more event undoes"));
        Map<Set<Integer>, Set<List<Integer>>> sets = new LinkedHashMap<>();
        Map<List<Integer>, Set<Integer>> by = new LinkedHashMap<>();
        healings.forEach(h -> by.computeIfAbsent(h.set(), s -> new LinkedHashSet<>()).add(h.by()));
        by.forEach(
                (set, undoing) ->
                        sets.computeIfAbsent(undoing, u -> new LinkedHashSet<>()).add(set));
        List<Map.Entry<Set<Integer>, Set<List<Integer>>>> rows =
                sets.entrySet().stream()
                        .sorted(
                                Comparator.comparingInt(
                                        (Map.Entry<Set<Integer>, Set<List<Integer>>> e) ->
                                                -e.getKey().size() * e.getValue().size()))
                        .toList();
        int shown = all ? rows.size() : Math.min(SHOWN, rows.size());
        blocks.add(
                new Points(
                        rows.subList(0, shown).stream()
                                .map(e -> sets(e.getValue()) + " is undone by " + undone(e))
                                .toList()));
        blocks.add(
                new Note(
                        healings.size()
                                + " sets in all end nothing although a part of them does, mostly"
                                + " since an opening clears a short. They are counted as if the"
                                + " engine ended, which makes it likelier, never less likely."
                                + (shown < rows.size()
                                        ? " "
                                                + (rows.size() - shown)
                                                + " more rows with break --pairs --all."
                                        : "")));
    }

    private String undone(Map.Entry<Set<Integer>, Set<List<Integer>>> entry) {
        return names.anyOf(entry.getKey());
    }

    private String sets(Collection<List<Integer>> sets) {
        boolean single = sets.stream().allMatch(set -> set.size() == 1);
        return single
                ? names.anyOf(sets.stream().map(set -> set.get(0)).toList())
                : sets.stream().map(names::together).collect(Collectors.joining(", or "));
    }

    private void untold() {
        List<List<Integer>> untold = found.joint().sets().untold();
        if (untold.isEmpty()) {
            return;
        }
        blocks.add(new Heading("What could not be computed"));
        blocks.add(
                new Words(
                        "Each counts as if it ended the engine, unless a part of it does or cannot"
                                + " be computed either."));
        Map<String, List<List<Integer>>> byReason = new LinkedHashMap<>();
        for (int i = 0; i < untold.size(); i++) {
            byReason.computeIfAbsent(found.joint().untold().get(i), r -> new ArrayList<>())
                    .add(untold.get(i));
        }
        blocks.add(
                new Points(
                        byReason.entrySet().stream()
                                .limit(all ? untold.size() : SHOWN)
                                .map(
                                        e ->
                                                e.getValue().size()
                                                        + " sets, such as "
                                                        + names.together(e.getValue().get(0))
                                                        + ": "
                                                        + e.getKey())
                                .toList()));
    }

    private void suppositions() {
        blocks.add(new Heading("What is supposed"));
        blocks.add(new Points(found.likely().supposed()));
    }

    private void pair() {
        blocks.add(new Heading("The pair to know"));
        Optional<CombinedFindings.PairToKnow> pair = found.pair();
        if (pair.isEmpty()) {
            blocks.add(new Words(noPair()));
            return;
        }
        Verdict one = pair.get().one();
        Verdict other = pair.get().other();
        blocks.add(
                new Words(
                        "No single failure ends this engine, its own aside. Of the pairs of"
                                + " failures of different parts the likeliest is "
                                + names.together(pair.get().events())
                                + ". Alone, "
                                + alone(one)
                                + "; "
                                + alone(other)
                                + ". Together:"));
        blocks.add(
                new Lines(
                        StoryText.of(
                                pair.get().together(),
                                Pilot.PLANNED,
                                Optional.empty(),
                                new PrintedNames(found.candidate()))));
    }

    private static String alone(Verdict verdict) {
        return verdict.failure().name()
                + " comes to \""
                + verdict.outcome().words()
                + "\" (engine runs: "
                + ResultText.endurance(verdict.planned().engine().endurance())
                + ")";
    }

    private String noPair() {
        List<Integer> singles = found.singleFailures();
        long untold = singles.stream().filter(found::isUntold).count();
        if (singles.isEmpty()) {
            return "No two failures of different parts end this engine, its own aside.";
        }
        return "None: here "
                + (singles.size() == 1
                        ? "one failure alone ends"
                        : singles.size() + " failures alone each end")
                + " the engine, "
                + names.anyOf(singles)
                + "."
                + (untold == 0
                        ? ""
                        : " Of them " + untold + " could not be computed, and count so.");
    }
}
