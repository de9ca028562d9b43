package stillturning.report.explorer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.reliability.combined.Event;
import stillturning.reliability.combined.Event.EventKind;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.cutset.Healing;
import stillturning.reliability.likelihood.SetShare;
import stillturning.report.explorer.NumberedTexts.NumberedText;
import stillturning.report.joint.CombinedFindings;
import stillturning.story.UntoldStory;

/**
 * What any two events of a candidate come to together: of every pair whether the engine lasts until
 * the aircraft has landed, and of the likeliest that end it the story.
 */
final class PairCode {

    /** So many pairs of a candidate have their story on the page. */
    private static final int TOLD = 12;

    /** So often the same event is in one of them: ten neighbours of one pair tell one story. */
    private static final int EACH = 2;

    private final Study study;
    private final CombinedFindings found;
    private final List<Event> events;
    private final CutSets sets;

    PairCode(Study study, CombinedFindings found) {
        this.study = study;
        this.found = found;
        this.events = found.joint().events();
        this.sets = found.joint().sets();
    }

    /** The likeliest pairs that end the engine, as they are judged; those that can be told. */
    Map<List<Integer>, Verdict> told() {
        Map<List<Integer>, Verdict> told = new LinkedHashMap<>();
        Map<Integer, Integer> met = new HashMap<>();
        for (SetShare share : found.likely().worst()) {
            List<Integer> pair = share.events();
            boolean wanted =
                    pair.size() == 2
                            && sets.minimal().contains(pair)
                            && pair.stream().allMatch(e -> offered(e) && times(met, e) < EACH);
            if (wanted && told.size() < TOLD && judged(pair, told)) {
                pair.forEach(e -> met.merge(e, 1, Integer::sum));
            }
        }
        return told;
    }

    private static int times(Map<Integer, Integer> met, int event) {
        return met.getOrDefault(event, 0);
    }

    /** A pilot who does nothing is no failure: the page asks for him in its own way. */
    private boolean offered(int event) {
        return events.get(event).kind() != EventKind.IDLE_PILOT;
    }

    private boolean judged(List<Integer> pair, Map<List<Integer>, Verdict> told) {
        Failure both = failure(pair.get(0)).and(failure(pair.get(1)));
        try {
            Verdict verdict = Assess.one(study, found.candidate(), both);
            boolean ends = verdict.outcome() == Outcome.ENGINE_LOST;
            if (ends) {
                told.put(pair, verdict);
            }
            return ends;
        } catch (UntoldStory e) {
            return false;
        }
    }

    private Failure failure(int event) {
        return events.get(event).failure();
    }

    /**
     * Events by name and label; those that end the engine alone and those of which nobody can say
     * it; pairs that end it, that undo one that ends it alone, of which nobody can say it, that
     * cannot be; and the verdicts of those told.
     *
     * @param called what a sentence is with labels in the place of names
     * @param verdicts of the pairs that are told
     */
    Map<String, Object> tree(
            UnaryOperator<String> called, Map<List<Integer>, List<Object>> verdicts) {
        Map<String, Object> tree = new LinkedHashMap<>();
        List<Object> names = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            String name = offered(i) ? events.get(i).name() : "";
            names.add(new NumberedText(name));
            names.add(new NumberedText(called.apply(name)));
        }
        tree.put("events", names);
        tree.put("alone", alone(sets.minimal()));
        tree.put("aloneUntold", alone(sets.untold()));
        tree.put("ends", runs(ofTwo(sets.minimal())));
        tree.put("healed", runs(sets.healings().stream().map(PairCode::healed).toList()));
        tree.put("untold", runs(ofTwo(sets.untold())));
        tree.put("never", runs(impossible()));
        Map<String, Object> told = new LinkedHashMap<>();
        verdicts.forEach((pair, verdict) -> told.put(pair.get(0) + " " + pair.get(1), verdict));
        tree.put("told", told);
        return tree;
    }

    private static List<Integer> alone(List<List<Integer>> all) {
        return all.stream().filter(set -> set.size() == 1).map(set -> set.get(0)).toList();
    }

    private static List<List<Integer>> ofTwo(List<List<Integer>> all) {
        return all.stream().filter(set -> set.size() == 2).toList();
    }

    private static List<Integer> healed(Healing healing) {
        List<Integer> all = new ArrayList<>(new TreeSet<>(healing.set()));
        all.add(healing.by());
        return all.stream().sorted().toList();
    }

    /** Two that put one lever into two positions. */
    private List<List<Integer>> impossible() {
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 0; i < events.size(); i++) {
            for (int j = i + 1; j < events.size(); j++) {
                if (!failure(i).goesWith(failure(j))) {
                    all.add(List.of(i, j));
                }
            }
        }
        return all;
    }

    /** Pairs as "0:5-9,12;3:7": the lower number, then all that go with it. */
    static String runs(List<List<Integer>> pairs) {
        Map<Integer, Set<Integer>> partners = new TreeMap<>();
        pairs.stream()
                .filter(pair -> pair.size() == 2)
                .forEach(
                        pair ->
                                partners.computeIfAbsent(pair.get(0), one -> new TreeSet<>())
                                        .add(pair.get(1)));
        return partners.entrySet().stream()
                .map(e -> e.getKey() + ":" + DrawingCode.runs(List.copyOf(e.getValue())))
                .collect(Collectors.joining(";"));
    }
}
