package stillturning.assess;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.assess.Guesses.Change;
import stillturning.assess.Guesses.Choice;
import stillturning.assess.Guesses.Untried;
import stillturning.assess.Guesses.Weighty;
import stillturning.model.CriterionName;

/** Tries one guess after another too low and too high, and compares with the basis. */
final class GuessTrials {

    private static final double LESS = 1 - Guesses.SHARE;
    private static final double MORE = 1 + Guesses.SHARE;

    private static final Comparator<Weighty> GRAVEST_FIRST =
            Comparator.comparing((Weighty w) -> all(w).noneMatch(Change.Leader.class::isInstance))
                    .thenComparing(w -> -all(w).filter(c -> !isEndurance(c)).count())
                    .thenComparing(w -> -all(w).mapToDouble(GuessTrials::steps).max().orElse(0));

    private final Assessment basis;

    GuessTrials(Assessment basis) {
        this.basis = basis;
    }

    /** Tries all in parallel; the result does not depend on who is done first. */
    Guesses all(List<GuessVariation> all, Consumer<String> progress) {
        List<GuessVariation> doubts = all.stream().filter(d -> d.others().isEmpty()).toList();
        List<Optional<Choice>> choices =
                all.stream()
                        .flatMap(
                                doubt ->
                                        doubt.others().keySet().stream()
                                                .map(o -> new Asked(doubt, o)))
                        .toList()
                        .parallelStream()
                        .map(asked -> chosen(asked, progress))
                        .toList();
        List<Optional<List<Change>>> trials =
                IntStream.range(0, 2 * doubts.size())
                        .parallel()
                        .mapToObj(
                                i -> {
                                    GuessVariation doubt = doubts.get(i / 2);
                                    var changes = changes(doubt, i % 2 == 0 ? LESS : MORE);
                                    progress.accept(doubt.guess().name());
                                    return changes;
                                })
                        .toList();
        return sorted(doubts, trials, choices);
    }

    /** A word that is tried in the place of the guessed one. */
    private record Asked(GuessVariation doubt, String other) {}

    private Optional<Choice> chosen(Asked asked, Consumer<String> progress) {
        Guess guess = asked.doubt.guess();
        Optional<Choice> choice =
                requireNonNull(asked.doubt.others().get(asked.other))
                        .get()
                        .map(study -> changes(Assess.again(study, basis)))
                        .map(changes -> new Choice(guess, asked.other, changes));
        progress.accept(guess.name());
        return choice;
    }

    /** Trials come in pairs, less and more, in the order of the doubts. */
    private static Guesses sorted(
            List<GuessVariation> doubts,
            List<Optional<List<Change>>> trials,
            List<Optional<Choice>> choices) {
        List<Weighty> matter = new ArrayList<>();
        List<Guess> indifferent = new ArrayList<>();
        List<Untried> untried = new ArrayList<>();
        for (int i = 0; i < doubts.size(); i++) {
            Guess guess = doubts.get(i).guess();
            Optional<List<Change>> less = trials.get(2 * i);
            Optional<List<Change>> more = trials.get(2 * i + 1);
            if (less.isEmpty()) {
                untried.add(new Untried(guess, LESS));
            }
            if (more.isEmpty()) {
                untried.add(new Untried(guess, MORE));
            }
            Weighty weighty = new Weighty(guess, less.orElse(List.of()), more.orElse(List.of()));
            if (all(weighty).findAny().isPresent()) {
                matter.add(weighty);
            } else if (less.isPresent() || more.isPresent()) {
                indifferent.add(guess);
            }
        }
        matter.sort(GRAVEST_FIRST);
        return new Guesses(
                Guesses.SHARE,
                matter,
                indifferent,
                untried,
                choices.stream().flatMap(Optional::stream).toList());
    }

    private Optional<List<Change>> changes(GuessVariation doubt, double factor) {
        return doubt.times().apply(factor).map(study -> changes(Assess.again(study, basis)));
    }

    private List<Change> changes(Assessment varied) {
        List<Change> changes = new ArrayList<>();
        leader().flatMap(leader -> unseated(leader, varied)).ifPresent(changes::add);
        for (Appraisal before : basis.appraisals()) {
            String candidate = before.candidate().id();
            varied.of(candidate)
                    .ifPresentOrElse(
                            after -> addVerdicts(before, after, changes),
                            () -> changes.add(uncomputed(candidate, varied)));
        }
        leader().flatMap(leader -> endurance(leader, varied)).ifPresent(changes::add);
        return List.copyOf(changes);
    }

    private Optional<String> leader() {
        return basis.ranking().map(r -> r.leader().name());
    }

    private static Optional<Change> unseated(String leader, Assessment varied) {
        boolean leads =
                varied.of(leader).isPresent()
                        && varied.ranking().stream().anyMatch(r -> r.standing(leader).rank() == 1);
        return leads
                ? Optional.empty()
                : varied.ranking().map(r -> new Change.Leader(r.leader().name()));
    }

    private static void addVerdicts(Appraisal before, Appraisal after, List<Change> changes) {
        if (after.flight().unwell() && !before.flight().unwell()) {
            changes.add(new Change.Unwell(before.candidate().id()));
        }
        for (int i = 0; i < before.met().size(); i++) {
            boolean met = after.met().get(i).met();
            if (met != before.met().get(i).met()) {
                changes.add(
                        new Change.Requirement(
                                before.candidate().id(), before.met().get(i).requirement(), met));
            }
        }
    }

    private static Change uncomputed(String candidate, Assessment varied) {
        String reason =
                varied.unassessed().stream()
                        .filter(u -> u.candidate().equals(candidate))
                        .map(Assessment.Unassessed::reason)
                        .findFirst()
                        .orElse("it is no longer there");
        return new Change.Uncomputed(candidate, reason);
    }

    private Optional<Change> endurance(String leader, Assessment varied) {
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
        return changed ? Optional.of(new Change.Endurance(leader, from, to)) : Optional.empty();
    }

    private static double withoutCharging(Appraisal appraisal) {
        return requireNonNull(appraisal.measures().values().get(CriterionName.ENDURANCE));
    }

    private static Stream<Change> all(Weighty weighty) {
        return Stream.concat(weighty.ifLess().stream(), weighty.ifMore().stream());
    }

    private static boolean isEndurance(Change change) {
        return change instanceof Change.Endurance;
    }

    /** How many times longer or shorter, alike in both directions. */
    private static double steps(Change change) {
        return change instanceof Change.Endurance e
                ? Math.abs(Math.log(e.toSeconds() / e.fromSeconds()))
                : 0;
    }
}
