package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.Scrutiny;
import stillturning.assess.exchange.Attribution.AttributedShare;
import stillturning.assess.ranking.AppliedScale;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.requirement.Effort;
import stillturning.assess.requirement.Survey;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.story.UntoldStory;

/** Exchanges groups of differences between candidates of an assessed study. */
public final class Exchange {

    private static final String APART =
            "a mix of them would leave something unconnected, or could not be assessed";

    private final Assessment basis;
    private final List<AppliedScale> scales;

    /**
     * @throws IllegalArgumentException if nothing was ranked
     */
    public Exchange(Assessment basis) {
        this.basis = basis;
        this.scales =
                basis.ranking()
                        .map(RankingResult::scales)
                        .orElseThrow(() -> new IllegalArgumentException("nothing was ranked"));
    }

    /** Goals of a study as far as mixes are held against them. */
    public static Study.Goals goals(Study.Goals goals) {
        return goals.requiring(goals.requirements().stream().filter(r -> !isAside(r)).toList())
                .withoutBaseline();
    }

    /** Requirements that mixes are not held against, for nobody looks at their sizes and pairs. */
    public static List<Requirement> aside(Study.Goals goals) {
        return goals.requirements().stream().filter(Exchange::isAside).toList();
    }

    private static boolean isAside(Requirement requirement) {
        return Effort.of(requirement) == Effort.SURVEY
                || requirement instanceof Requirement.DeparturesAtMost;
    }

    /** In which groups two candidates differ, and by which parts. */
    public static Map<Group, List<String>> differences(Candidate one, Candidate other) {
        return new Mixing(one, other).differences();
    }

    /**
     * Every mix of two candidates.
     *
     * @param progress told the name of the first candidate after each mix, from any thread
     */
    public Attribution all(Appraisal from, Appraisal to, Consumer<String> progress) {
        Mixing mixing = new Mixing(from.candidate(), to.candidate());
        Map<Group, List<String>> differences = mixing.differences();
        List<List<Group>> bundles = few(differences.keySet());
        Mixes tried = new Mixes(from, to, mixing::mix);
        Optional<List<Mix>> mixes = tried.all(bundles, progress);
        String inseparable = "";
        for (int merging = 0; mixes.isEmpty(); merging++) {
            bundles = merging == 0 ? layoutTogether(bundles) : List.of(flat(bundles));
            mixes = tried.all(bundles, progress);
            inseparable = APART;
        }
        return attribution(from, to, new Bundles(bundles, differences), mixes.get(), inseparable);
    }

    /**
     * Two candidates with their batteries exchanged, and everything else; empty if their batteries
     * are alike or none of these can be assessed.
     *
     * @param progress told the name of the first candidate after each mix, from any thread
     */
    public Optional<Attribution> ofBatteries(
            Appraisal from, Appraisal to, Consumer<String> progress) {
        Map<Group, List<String>> differences = differences(from.candidate(), to.candidate());
        if (!differences.containsKey(Group.BATTERIES)) {
            return Optional.empty();
        }
        List<Group> rest = new ArrayList<>(differences.keySet());
        rest.remove(Group.BATTERIES);
        List<List<Group>> bundles = new ArrayList<>(List.of(List.of(Group.BATTERIES)));
        if (!rest.isEmpty()) {
            bundles.add(List.copyOf(rest));
        }
        Mixes tried =
                new Mixes(
                        from,
                        to,
                        exchanged ->
                                Optional.of(
                                        exchanged.contains(Group.BATTERIES)
                                                ? BatteryPairs.given(
                                                        from.candidate(), to.candidate())
                                                : BatteryPairs.given(
                                                        to.candidate(), from.candidate())));
        return tried.all(bundles, progress)
                .map(mixes -> attribution(from, to, new Bundles(bundles, differences), mixes, ""));
    }

    /** At most as many as all of whose mixes are assessed. */
    private static List<List<Group>> few(Set<Group> groups) {
        List<List<Group>> bundles = new ArrayList<>();
        boolean tooMany = groups.size() > Group.MOST;
        for (Group group : groups) {
            if (group == Group.WIRES && tooMany) {
                bundles.remove(List.of(Group.GROUNDS));
                bundles.add(List.of(Group.GROUNDS, Group.WIRES));
            } else {
                bundles.add(List.of(group));
            }
        }
        return bundles;
    }

    private static List<List<Group>> layoutTogether(List<List<Group>> bundles) {
        List<List<Group>> merged = new ArrayList<>();
        List<Group> layout = new ArrayList<>();
        for (List<Group> bundle : bundles) {
            if (bundle.stream().anyMatch(Group::isLayout)) {
                layout.addAll(bundle);
            } else {
                merged.add(bundle);
            }
        }
        if (!layout.isEmpty()) {
            merged.add(List.copyOf(layout));
        }
        return merged;
    }

    private static List<Group> flat(List<List<Group>> bundles) {
        return bundles.stream().flatMap(List::stream).toList();
    }

    /** Assesses mixes, each once. */
    private final class Mixes {
        private final Appraisal from;
        private final Appraisal to;
        private final Making making;
        private final Map<Set<Group>, Optional<Mix>> known = new LinkedHashMap<>();

        Mixes(Appraisal from, Appraisal to, Making making) {
            this.from = from;
            this.to = to;
            this.making = making;
        }

        /** One for each set of bundles, by the bits of its index; empty if one cannot be. */
        Optional<List<Mix>> all(List<List<Group>> bundles, Consumer<String> progress) {
            List<Set<Group>> sets =
                    IntStream.range(0, 1 << bundles.size()).mapToObj(s -> set(s, bundles)).toList();
            List<Set<Group>> unknown = sets.stream().filter(s -> !known.containsKey(s)).toList();
            List<Optional<Mix>> assessed =
                    unknown.parallelStream()
                            .map(
                                    set -> {
                                        Optional<Mix> mix = mix(set, sets.get(sets.size() - 1));
                                        progress.accept(from.candidate().id());
                                        return mix;
                                    })
                            .toList();
            for (int i = 0; i < unknown.size(); i++) {
                known.put(unknown.get(i), assessed.get(i));
            }
            List<Mix> mixes = sets.stream().flatMap(set -> found(set).stream()).toList();
            return mixes.size() == sets.size() ? Optional.of(mixes) : Optional.empty();
        }

        private Optional<Mix> found(Set<Group> set) {
            return known.getOrDefault(set, Optional.empty());
        }

        private Optional<Mix> mix(Set<Group> set, Set<Group> all) {
            if (set.isEmpty()) {
                return Optional.of(measured(from, set));
            }
            if (set.equals(all)) {
                return Optional.of(measured(to, set));
            }
            return making.of(set).flatMap(candidate -> assessed(candidate, set));
        }
    }

    /** Makes the candidate with some groups exchanged, if it can be made. */
    private interface Making {
        Optional<Candidate> of(Set<Group> exchanged);
    }

    private static Set<Group> set(int bits, List<List<Group>> bundles) {
        Set<Group> set = EnumSet.noneOf(Group.class);
        for (int i = 0; i < bundles.size(); i++) {
            if ((bits & 1 << i) != 0) {
                set.addAll(bundles.get(i));
            }
        }
        return set;
    }

    /** Of a mix nobody asks more than its values and what it is held against. */
    private Optional<Mix> assessed(Candidate candidate, Set<Group> exchanged) {
        Optional<Mix> drawn = drawn(candidate).map(appraisal -> measured(appraisal, exchanged));
        return drawn.isPresent() ? drawn : assessedAnew(candidate, exchanged);
    }

    /** A candidate of the study that differs from a mix in nothing but its name and its words. */
    private Optional<Appraisal> drawn(Candidate mix) {
        return basis.appraisals().stream()
                .filter(a -> a.candidate().parts().equals(mix.parts()))
                .filter(a -> a.candidate().joins().equals(mix.joins()))
                .filter(a -> a.candidate().cockpit().equals(mix.cockpit()))
                .findFirst();
    }

    private Optional<Mix> assessedAnew(Candidate candidate, Set<Group> exchanged) {
        Study study = basis.study();
        Study.Goals goals = goals(study.goals());
        Study alone =
                new Study(study.id(), study.heading(), study.aircraft(), goals, List.of(candidate));
        try {
            Scrutiny mix = Scrutiny.of(alone, candidate, Survey.NONE);
            return Optional.of(measured(mix.values(), goals, mix.met(), exchanged));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private Mix measured(Appraisal appraisal, Set<Group> exchanged) {
        return measured(
                appraisal.measures().values(), basis.study().goals(), appraisal.met(), exchanged);
    }

    /**
     * @param asked what it was held against
     * @param met for each requirement of these
     */
    private Mix measured(
            Map<CriterionName, Double> values,
            Study.Goals asked,
            List<RequirementMet> met,
            Set<Group> exchanged) {
        int missed =
                (int)
                        IntStream.range(0, asked.requirements().size())
                                .filter(i -> !isAside(asked.requirements().get(i)))
                                .filter(i -> !met.get(i).met())
                                .count();
        return new Mix(exchanged, values, points(values), missed);
    }

    private double points(Map<CriterionName, Double> values) {
        double points = 0;
        for (CriterionName criterion : CriterionName.values()) {
            for (AppliedScale scale : scales) {
                if (scale.criterion().equals(criterion.words())) {
                    points +=
                            scale.weight()
                                    * scale.scale()
                                            .worthOf(values.getOrDefault(criterion, Double.NaN));
                }
            }
        }
        return points;
    }

    /**
     * What is exchanged together.
     *
     * @param groups of each bundle
     * @param differences parts by group
     */
    private record Bundles(List<List<Group>> groups, Map<Group, List<String>> differences) {

        /** Parts of one bundle, each once. */
        List<String> parts(int bundle) {
            return groups.get(bundle).stream()
                    .flatMap(g -> differences.getOrDefault(g, List.of()).stream())
                    .distinct()
                    .toList();
        }
    }

    private static Attribution attribution(
            Appraisal from, Appraisal to, Bundles bundles, List<Mix> mixes, String inseparable) {
        List<AttributedShare> shares = new ArrayList<>();
        double[] points = shares(mixes, Mix::points);
        double[] missed = shares(mixes, Mix::missed);
        Map<CriterionName, double[]> values = new EnumMap<>(CriterionName.class);
        for (CriterionName criterion : mixes.get(0).values().keySet()) {
            ToDoubleFunction<Mix> value = m -> m.values().getOrDefault(criterion, Double.NaN);
            if (mixes.stream().mapToDouble(value).allMatch(Double::isFinite)) {
                values.put(criterion, shares(mixes, value));
            }
        }
        for (int i = 0; i < bundles.groups().size(); i++) {
            int bundle = i;
            Map<CriterionName, Double> own = new EnumMap<>(CriterionName.class);
            values.forEach((criterion, all) -> own.put(criterion, all[bundle]));
            List<String> parts = bundles.parts(i);
            shares.add(
                    new AttributedShare(bundles.groups().get(i), parts, own, points[i], missed[i]));
        }
        return new Attribution(from.candidate(), to.candidate(), shares, mixes, inseparable);
    }

    private static double[] shares(List<Mix> mixes, ToDoubleFunction<Mix> value) {
        return Shapley.shares(mixes.stream().mapToDouble(value).toArray());
    }
}
