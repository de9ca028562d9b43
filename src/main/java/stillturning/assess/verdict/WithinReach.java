package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import stillturning.assess.verdict.Remark.Topic;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.parts.Lever;
import stillturning.quantity.Formats;
import stillturning.story.Endurance;
import stillturning.story.FirstSign;
import stillturning.story.Setting.Act;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.device.EventWords;

/**
 * What a pilot can do in his seat against voltage that no guard takes away: every lever in his
 * reach is played in every position, and every drill and procedure whole, move by move, from the
 * first moment at which a hand can have moved; where none of them keeps all, also two switches one
 * after the other. Of the best it is then found how late it may begin.
 *
 * <p>A hand needs the first sign and the time of one move; what is destroyed before that, nobody
 * keeps.
 */
final class WithinReach {

    /** More pairs than this for one failure cost more than they tell. */
    private static final int MOST_PAIRS = 60;

    /** How exactly the last moment is found: part of the time, and at least so much (s). */
    private static final double EXACTLY = 0.01;

    private static final double AT_LEAST_SECONDS = 0.1;

    /** An engine that stops so soon after a move has been stopped by it (s). A guess. */
    private static final double AT_ONCE_SECONDS = 60;

    private final Study study;
    private final Candidate candidate;
    private final Function<Act, Story> play;

    /**
     * @param play the failure, with a pilot as planned who does something more
     */
    WithinReach(Study study, Candidate candidate, Function<Act, Story> play) {
        this.study = study;
        this.candidate = candidate;
        this.play = play;
    }

    /** Moves, and what became of everything with them. */
    private record Tried(Map<String, String> moves, Story story, Set<String> kept) {}

    /** What is lost of a story, by when (s); the first first. */
    private static Map<String, Double> losses(Story story) {
        Map<String, Double> losses = new LinkedHashMap<>();
        Set<String> gassing = new LinkedHashSet<>();
        for (StoryEvent event : story.happenings()) {
            if (event.kind() == Kind.BATTERY_GASSES) {
                gassing.add(event.part());
            }
            boolean boiledDry =
                    event.kind() == Kind.BATTERY_DISCONNECTS && gassing.contains(event.part());
            if (boiledDry || event.kind() == Kind.LOAD_DESTROYED) {
                losses.putIfAbsent(event.part(), event.seconds());
            }
        }
        return losses;
    }

    /** The remark, where something is destroyed that boils a battery or leaves a hand its time. */
    Optional<Remark> of(Story planned) {
        Map<String, Double> losses = losses(planned);
        double soonest = soonest(planned);
        Map<String, Double> late = new LinkedHashMap<>(losses);
        late.values().removeIf(seconds -> seconds <= soonest);
        boolean gasses = !planned.of(Kind.BATTERY_GASSES).isEmpty();
        if (late.isEmpty()) {
            return losses.isEmpty() || !gasses ? Optional.empty() : Optional.of(tooLate(losses));
        }
        return Optional.of(
                best(planned, late.keySet(), soonest)
                        .map(tried -> remark(planned, tried, late, soonest))
                        .orElseGet(
                                () ->
                                        new Remark(
                                                Topic.WITHIN_REACH,
                                                "nothing within reach keeps "
                                                        + named(late.keySet())
                                                        + notAllPairs())));
    }

    /**
     * When a hand can first have moved (s): after the sign, or at once if nothing shows in time.
     */
    private double soonest(Story planned) {
        double sign = planned.engine().sign().map(FirstSign::seconds).orElse(0.0);
        double lastLoss = losses(planned).values().stream().mapToDouble(s -> s).max().orElse(0);
        return (sign < lastLoss ? sign : 0) + study.aircraft().moveSeconds();
    }

    private static Remark tooLate(Map<String, Double> losses) {
        double last = losses.values().stream().mapToDouble(s -> s).max().orElse(0);
        return new Remark(
                Topic.WITHIN_REACH,
                "no hand is quick enough to keep "
                        + named(losses.keySet())
                        + ": lost after "
                        + Formats.duration(last));
    }

    private Optional<Tried> best(Story planned, Set<String> late, double soonest) {
        Map<String, Double> all = losses(planned);
        Optional<Tried> best = best(sets().stream(), all, late, soonest);
        return best.filter(tried -> tried.kept.containsAll(late))
                .or(() -> best(pairs().limit(MOST_PAIRS), all, late, soonest))
                .filter(pair -> pair.kept.size() > best.map(b -> b.kept.size()).orElse(0))
                .or(() -> best);
    }

    private Optional<Tried> best(
            Stream<Map<String, String>> sets,
            Map<String, Double> all,
            Set<String> late,
            double soonest) {
        return sets.map(moves -> tried(moves, late, soonest))
                .filter(tried -> !tried.kept.isEmpty())
                .filter(tried -> !endsEngineAtOnce(tried.story, soonest))
                .filter(tried -> losesNoSooner(losses(tried.story), all))
                .max(
                        Comparator.comparing((Tried tried) -> !misses(tried.story))
                                .thenComparing(tried -> tried.kept.size())
                                .thenComparing(tried -> -tried.moves.size())
                                .thenComparing(tried -> tried.story.engine().endurance().seconds())
                                .thenComparing(tried -> -leftAtVolts(tried.story))
                                .thenComparing(tried -> -tried.story.happenings().size()));
    }

    private static boolean losesNoSooner(Map<String, Double> losses, Map<String, Double> without) {
        return losses.entrySet().stream()
                .allMatch(
                        lost ->
                                lost.getValue()
                                        >= (1 - EXACTLY)
                                                * without.getOrDefault(
                                                        lost.getKey(), Double.POSITIVE_INFINITY));
    }

    /** Who saves a radio and stops the engine has helped nobody. */
    private static boolean endsEngineAtOnce(Story story, double soonest) {
        Endurance endurance = story.engine().endurance();
        return endurance.ends() && endurance.seconds() < soonest + AT_ONCE_SECONDS;
    }

    /**
     * The highest voltage that a bus is left at (V). Where nothing is written of what loads bear,
     * to take the runaway off is better than to take the battery off and leave the bus to it.
     */
    private static double leftAtVolts(Story story) {
        return story.traces().stream()
                .filter(trace -> trace.unit().equals("V") && !trace.points().isEmpty())
                .mapToDouble(trace -> trace.points().get(trace.points().size() - 1).value())
                .max()
                .orElse(0);
    }

    private boolean misses(Story story) {
        return story.untold().isPresent() || story.engine().misses(study.landing());
    }

    private Tried tried(Map<String, String> moves, Set<String> late, double fromSeconds) {
        Story story = play.apply(new Act(moves, fromSeconds));
        Set<String> kept = new LinkedHashSet<>(late);
        kept.removeAll(losses(story).keySet());
        return new Tried(moves, story, kept);
    }

    /** One lever in one position, and every drill and procedure that names several. */
    private List<Map<String, String>> sets() {
        List<Map<String, String>> sets = new ArrayList<>(singles(false));
        List<Map<String, String>> written = new ArrayList<>();
        written.add(candidate.cockpit().masterOff());
        candidate.cockpit().procedures().stream().map(Procedure::moves).forEach(written::add);
        written.stream()
                .filter(
                        moves ->
                                moves.size() > 1 && moves.keySet().stream().allMatch(this::reaches))
                .forEach(sets::add);
        return sets.stream().distinct().toList();
    }

    private List<Map<String, String>> singles(boolean switchesOnly) {
        return LeverMoves.of(
                candidate,
                lever ->
                        reaches(lever.name())
                                && (!switchesOnly || !lever.positions().equals(Lever.PULLED)));
    }

    private Stream<Map<String, String>> pairs() {
        List<Map<String, String>> singles = singles(true);
        return singles.stream()
                .flatMap(
                        one ->
                                singles.stream()
                                        .filter(other -> !one.keySet().equals(other.keySet()))
                                        .map(other -> inOrder(one, other)));
    }

    private static Map<String, String> inOrder(Map<String, String> one, Map<String, String> other) {
        Map<String, String> both = new LinkedHashMap<>(one);
        both.putAll(other);
        return both;
    }

    /** A search that was cut off says so. */
    private String notAllPairs() {
        long pairs = pairs().count();
        return pairs > MOST_PAIRS
                ? "; of " + pairs + " pairs of switch moves, " + MOST_PAIRS + " were tried"
                : "";
    }

    private boolean reaches(String lever) {
        return candidate.cockpit().reachOf(lever).filter(from -> from == Reach.SEAT).isPresent();
    }

    private Remark remark(Story planned, Tried tried, Map<String, Double> late, double soonest) {
        double first =
                tried.kept.stream()
                        .mapToDouble(part -> late.getOrDefault(part, soonest))
                        .min()
                        .orElse(soonest);
        double within = lastMoment(tried, late.keySet(), soonest, first);
        Set<String> gone = new LinkedHashSet<>(late.keySet());
        gone.removeAll(tried.kept);
        return new Remark(
                Topic.WITHIN_REACH,
                (gone.isEmpty()
                                ? ""
                                : "nothing within reach keeps "
                                        + named(gone)
                                        + notAllPairs()
                                        + "; ")
                        + moves(tried.moves)
                        + since(planned, within)
                        + " keeps "
                        + named(tried.kept)
                        + "; done at once, "
                        + engine(tried.story));
    }

    private static String since(Story planned, double seconds) {
        Optional<FirstSign> sign = planned.engine().sign().filter(s -> s.seconds() < seconds);
        return sign.map(
                        s ->
                                " within "
                                        + Formats.lasting(seconds - s.seconds())
                                        + " of the first sign")
                .orElseGet(
                        () -> " within " + Formats.lasting(seconds) + ", though nothing shows it,");
    }

    /** The latest moment (s) at which the first move still keeps all that it keeps at once. */
    private double lastMoment(Tried tried, Set<String> late, double soonest, double lost) {
        double keeps = soonest;
        double loses = lost;
        while (loses - keeps > Math.max(AT_LEAST_SECONDS, EXACTLY * keeps)) {
            double middle = (keeps + loses) / 2;
            if (tried(tried.moves, late, middle).kept.containsAll(tried.kept)) {
                keeps = middle;
            } else {
                loses = middle;
            }
        }
        return keeps;
    }

    private String engine(Story story) {
        Endurance endurance = story.engine().endurance();
        if (!endurance.ends()) {
            return "the engine then runs on";
        }
        return "the engine then runs for "
                + (misses(story) ? "only " : "")
                + Formats.lasting(endurance.seconds());
    }

    private static String moves(Map<String, String> moves) {
        List<String> words = new ArrayList<>();
        moves.forEach((lever, position) -> words.add(EventWords.move(lever, position)));
        return String.join(", then ", words);
    }

    private static String named(Set<String> parts) {
        return String.join(", ", parts);
    }
}
