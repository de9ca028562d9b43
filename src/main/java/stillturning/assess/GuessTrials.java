package stillturning.assess;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiPredicate;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.assess.GuessVariation.Doubts;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.Guesses.GuessedWord;
import stillturning.assess.Guesses.Untried;
import stillturning.assess.Guesses.Weighty;
import stillturning.assess.Retelling.RetoldStudy;
import stillturning.assess.findout.FindingOut;
import stillturning.assess.findout.GroupScreen;
import stillturning.assess.findout.Look;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Suspects;
import stillturning.assess.findout.Worth;
import stillturning.assess.ranges.QuasiRandomPoints;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.ranking.Standing;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;

/** Tries one guess after another along its range, and compares with the basis. */
final class GuessTrials {

    private static final Comparator<Weighty> LIKELIEST_FIRST =
            Comparator.comparing((Weighty w) -> -w.worth().any())
                    .thenComparing(w -> -w.worth().points())
                    .thenComparing(w -> -all(w).mapToDouble(GuessTrials::steps).max().orElse(0));

    private static final long SEED = 1_402L;

    private final Assessment basis;
    private final Retelling retelling;
    private final Set<String> contenders;

    GuessTrials(Assessment basis) {
        this.basis = basis;
        retelling = new Retelling(basis);
        int fewest = basis.ranking().map(r -> r.leader().missedGates().size()).orElse(0);
        contenders =
                basis.ranking().stream()
                        .flatMap(r -> r.standings().stream())
                        .filter(s -> s.missedGates().size() < fewest + Guesses.MISSES_TOO_MUCH)
                        .map(Standing::name)
                        .collect(Collectors.toUnmodifiableSet());
    }

    /** One guess along its range. */
    private record Tried(
            GuessVariation doubt,
            Optional<List<GuessChange>> less,
            Optional<List<GuessChange>> more,
            Worth worth) {}

    /** Tries all in parallel; the result does not depend on who is done first. */
    Guesses all(Doubts doubts, Consumer<String> progress) {
        List<GuessVariation> figures = doubts.inFigures();
        List<Optional<GuessedWord>> choices =
                doubts.all().stream()
                        .flatMap(
                                doubt ->
                                        doubt.others().keySet().stream()
                                                .map(o -> new Asked(doubt, o)))
                        .toList()
                        .parallelStream()
                        .map(asked -> chosen(asked, progress))
                        .toList();
        GroupScreen screen = new GroupScreen(figures.size());
        Optional<Map<Integer, Set<String>>> turned =
                doubts.together().map(t -> trials(t, screen, figures.size(), progress));
        List<Tried> tried =
                IntStream.range(0, figures.size())
                        .parallel()
                        .mapToObj(
                                i ->
                                        tried(
                                                figures.get(i),
                                                Suspects.of(i, screen, turned),
                                                progress))
                        .toList();
        return sorted(doubts, tried, choices, spread(doubts, open(turned), progress));
    }

    /** What turned in each trial in which all guesses are at their ends. */
    private Map<Integer, Set<String>> trials(
            GuessVariation.ChangedGuesses together,
            GroupScreen screen,
            int guesses,
            Consumer<String> progress) {
        List<Optional<Set<String>>> trials =
                IntStream.range(0, GroupScreen.TRIALS)
                        .parallel()
                        .mapToObj(
                                trial -> {
                                    var steps =
                                            together.at(ends(screen, guesses, trial), contenders)
                                                    .map(this::turned);
                                    progress.accept("all guesses at once");
                                    return steps;
                                })
                        .toList();
        Map<Integer, Set<String>> turned = new TreeMap<>();
        for (int trial = 0; trial < trials.size(); trial++) {
            int number = trial;
            trials.get(trial).ifPresent(steps -> turned.put(number, steps));
        }
        return turned;
    }

    private static List<Double> ends(GroupScreen screen, int guesses, int trial) {
        return IntStream.range(0, guesses)
                .mapToObj(n -> screen.isHigh(n, trial) ? 1.0 : 0)
                .toList();
    }

    private Set<String> turned(Study changed) {
        return changed.candidates().stream()
                .filter(c -> contenders.contains(c.id()))
                .flatMap(
                        c ->
                                retelling.turned(changed, c).stream()
                                        .map(f -> Suspects.step(c.id(), f)))
                .collect(Collectors.toUnmodifiableSet());
    }

    private Tried tried(GuessVariation doubt, Suspects again, Consumer<String> progress) {
        OpenInterval reach = doubt.reach().orElseThrow();
        Optional<RetoldStudy> low = varied(doubt, reach.low(), again.low());
        progress.accept(doubt.guess().name());
        Optional<RetoldStudy> high = varied(doubt, reach.high(), again.high());
        progress.accept(doubt.guess().name());
        BiPredicate<String, String> between = between(low, high).orElse(again.either());
        Worth worth =
                FindingOut.of(
                        place ->
                                (place == 0
                                                ? low
                                                : place == 1
                                                        ? high
                                                        : varied(doubt, reach.at(place), between))
                                        .map(this::look),
                        reach.place(),
                        look(RetoldStudy.of(basis)));
        return new Tried(doubt, low.map(this::changes), high.map(this::changes), worth);
    }

    /** Steps that came out otherwise at one of the ends, which alone are looked at between them. */
    private Optional<BiPredicate<String, String>> between(
            Optional<RetoldStudy> low, Optional<RetoldStudy> high) {
        if (low.isEmpty() || high.isEmpty()) {
            return Optional.empty();
        }
        Set<String> turned = new HashSet<>(turned(low.get()));
        turned.addAll(turned(high.get()));
        boolean all = told(low.get()) && told(high.get());
        return Optional.of(
                (candidate, name) -> !all || turned.contains(Suspects.step(candidate, name)));
    }

    private boolean told(RetoldStudy retold) {
        return retold.assessment().appraisals().size() == basis.appraisals().size();
    }

    private Set<String> turned(RetoldStudy retold) {
        Set<String> turned = new HashSet<>();
        for (Appraisal after : retold.assessment().appraisals()) {
            String id = after.candidate().id();
            retelling
                    .turned(basis.of(id).orElseThrow(), after)
                    .forEach(name -> turned.add(Suspects.step(id, name)));
        }
        return turned;
    }

    private Optional<RetoldStudy> varied(
            GuessVariation doubt, double value, BiPredicate<String, String> again) {
        return doubt.times().at(value, contenders).map(study -> retelling.of(study, again));
    }

    /** Points of each candidate less one for each requirement that it misses. */
    private Look look(RetoldStudy varied) {
        List<Double> worths =
                basis.appraisals().stream().map(a -> worth(varied, a.candidate().id())).toList();
        List<String> verdicts =
                varied.assessment().appraisals().stream()
                        .map(
                                a ->
                                        a.candidate().id()
                                                + a.flight().unwell()
                                                + a.met().stream().map(m -> m.met()).toList())
                        .toList();
        return new Look(worths, verdicts);
    }

    private static double worth(RetoldStudy varied, String candidate) {
        int requirements = varied.assessment().study().goals().requirements().size();
        return varied.standings().stream()
                .filter(s -> s.name().equals(candidate))
                .findFirst()
                .map(s -> s.total() - s.missedGates().size())
                .orElse(-1.0 - requirements);
    }

    /** A word that is tried in the place of the guessed one. */
    private record Asked(GuessVariation doubt, String other) {}

    private Optional<GuessedWord> chosen(Asked asked, Consumer<String> progress) {
        Guess guess = asked.doubt.guess();
        Optional<GuessedWord> choice =
                requireNonNull(asked.doubt.others().get(asked.other))
                        .get()
                        .map(study -> changes(RetoldStudy.of(Assess.again(study, basis))))
                        .map(changes -> new GuessedWord(guess, asked.other, changes));
        progress.accept(guess.name());
        return choice;
    }

    /** Steps that turned in some trial with all guesses at their ends. */
    private static BiPredicate<String, String> open(Optional<Map<Integer, Set<String>>> turned) {
        Set<String> open = new HashSet<>();
        turned.ifPresent(trials -> trials.values().forEach(open::addAll));
        boolean all = turned.isEmpty() || turned.get().isEmpty();
        return (candidate, name) -> all || open.contains(Suspects.step(candidate, name));
    }

    /**
     * All guesses anywhere in their ranges, each place as likely and none in step with another.
     * What did not turn with all of them at their ends is not told again.
     */
    private Optional<Acceptability> spread(
            Doubts doubts, BiPredicate<String, String> open, Consumer<String> progress) {
        int guesses = doubts.inFigures().size();
        if (doubts.together().isEmpty() || doubts.draws() == 0 || basis.ranking().isEmpty()) {
            return Optional.empty();
        }
        double[][] places = QuasiRandomPoints.points(doubts.draws(), guesses, SEED);
        List<Assessment> drawn =
                Arrays.stream(places)
                        .parallel()
                        .map(
                                place -> {
                                    List<Double> at = Arrays.stream(place).boxed().toList();
                                    var again =
                                            doubts.together()
                                                    .flatMap(t -> t.at(at, contenders))
                                                    .map(s -> retelling.of(s, open))
                                                    .map(RetoldStudy::assessment);
                                    progress.accept("all guesses at once");
                                    return again;
                                })
                        .flatMap(Optional::stream)
                        .filter(a -> a.appraisals().size() == basis.appraisals().size())
                        .toList();
        return drawn.isEmpty()
                ? Optional.empty()
                : Optional.of(StudyRanking.spread(drawn).leavingOut(places.length - drawn.size()));
    }

    private Guesses sorted(
            Doubts doubts,
            List<Tried> tried,
            List<Optional<GuessedWord>> choices,
            Optional<Acceptability> spread) {
        List<Weighty> matter = new ArrayList<>();
        List<Guess> indifferent = new ArrayList<>();
        List<Untried> untried = new ArrayList<>();
        for (Tried one : tried) {
            Guess guess = one.doubt.guess();
            OpenInterval reach = one.doubt.reach().orElseThrow();
            if (one.less.isEmpty() && reach.low() < reach.likely()) {
                untried.add(new Untried(guess, Optional.of(reach.wordsAt(0))));
            }
            if (one.more.isEmpty() && reach.high() > reach.likely()) {
                untried.add(new Untried(guess, Optional.of(reach.wordsAt(1))));
            }
            Weighty weighty =
                    new Weighty(
                            guess,
                            one.less.orElse(List.of()),
                            one.more.orElse(List.of()),
                            reach,
                            one.worth);
            if (all(weighty).findAny().isPresent() || one.worth.any() > 0) {
                matter.add(weighty);
            } else if (one.less.isPresent() || one.more.isPresent()) {
                indifferent.add(guess);
            }
        }
        doubts.all().stream()
                .filter(d -> d.reach().isEmpty() && d.others().isEmpty())
                .forEach(d -> untried.add(new Untried(d.guess(), Optional.empty())));
        matter.sort(LIKELIEST_FIRST);
        return new Guesses(
                matter,
                indifferent,
                untried,
                choices.stream().flatMap(Optional::stream).toList(),
                basis.appraisals().stream()
                        .map(a -> a.candidate().id())
                        .filter(id -> !contenders.contains(id))
                        .toList(),
                spread);
    }

    private List<GuessChange> changes(RetoldStudy retold) {
        Assessment varied = retold.assessment();
        List<GuessChange> changes = new ArrayList<>();
        Optional<String> first = basis.ranking().map(r -> r.leader().name());
        first.flatMap(leader -> unseated(leader, retold)).ifPresent(changes::add);
        for (Appraisal before : basis.appraisals()) {
            String candidate = before.candidate().id();
            varied.of(candidate)
                    .ifPresentOrElse(
                            after -> addVerdicts(before, after, changes),
                            () -> changes.add(uncomputed(candidate, varied)));
        }
        first.flatMap(leader -> endurance(leader, varied)).ifPresent(changes::add);
        return List.copyOf(changes);
    }

    private static Optional<GuessChange> unseated(String leader, RetoldStudy varied) {
        boolean leads =
                varied.standings().stream().anyMatch(s -> s.name().equals(leader) && s.rank() == 1);
        return leads
                ? Optional.empty()
                : varied.standings().stream()
                        .findFirst()
                        .map(first -> new GuessChange.Leader(first.name()));
    }

    private static void addVerdicts(Appraisal before, Appraisal after, List<GuessChange> changes) {
        if (after.flight().unwell() && !before.flight().unwell()) {
            changes.add(new GuessChange.Unwell(before.candidate().id()));
        }
        for (int i = 0; i < before.met().size(); i++) {
            boolean met = after.met().get(i).met();
            if (met != before.met().get(i).met()) {
                changes.add(
                        new GuessChange.Requirement(
                                before.candidate().id(), before.met().get(i).requirement(), met));
            }
        }
    }

    private static GuessChange uncomputed(String candidate, Assessment varied) {
        String reason =
                varied.unassessed().stream()
                        .filter(u -> u.candidate().equals(candidate))
                        .map(Assessment.Unassessed::reason)
                        .findFirst()
                        .orElse("it is no longer there");
        return new GuessChange.Uncomputed(candidate, reason);
    }

    private Optional<GuessChange> endurance(String leader, Assessment varied) {
        Optional<Double> before = basis.of(leader).map(GuessTrials::withoutCharging);
        Optional<Double> after = varied.of(leader).map(GuessTrials::withoutCharging);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        double from = before.get();
        double to = after.get();
        boolean changed =
                Double.isInfinite(from) != Double.isInfinite(to)
                        || Math.abs(to - from) > Guesses.ENDURANCE_MATTERS * from;
        return changed
                ? Optional.of(new GuessChange.Endurance(leader, from, to))
                : Optional.empty();
    }

    private static double withoutCharging(Appraisal appraisal) {
        return requireNonNull(appraisal.measures().values().get(CriterionName.ENDURANCE));
    }

    private static Stream<GuessChange> all(Weighty weighty) {
        return Stream.concat(weighty.ifLess().stream(), weighty.ifMore().stream());
    }

    /** How many times longer or shorter, alike in both directions. */
    private static double steps(GuessChange change) {
        return change instanceof GuessChange.Endurance e
                ? Math.abs(Math.log(e.toSeconds() / e.fromSeconds()))
                : 0;
    }
}
