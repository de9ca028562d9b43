package stillturning.reliability.combined;

import static java.util.stream.Collectors.toSet;
import static stillturning.story.timeline.Timeline.HORIZON_SECONDS;

import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import stillturning.model.Candidate;
import stillturning.model.CountsFrom;
import stillturning.model.Landing;
import stillturning.model.Procedure;
import stillturning.model.failure.Failure;
import stillturning.reliability.cutset.SetOracle;
import stillturning.reliability.cutset.SetVerdict;
import stillturning.story.Endurance;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Tells what sets of events lead to, each set of changes once.
 *
 * <p>A change that sleeps is left out, and woken only where the story without it calls on its part:
 * until then both stories are the same, current by current. What changes another element of its
 * part, such as the coil that holds a welded contact, calls on it from the start.
 */
final class SetTrial implements SetOracle {

    /** An endurance that misses what is enough by so little is told exactly. */
    private static final double DOUBT = 0.01;

    private final Timelines timelines;
    private final Candidate candidate;
    private final Landing landing;
    private final Conditions conditions;

    /** By the numbers of the changes, in rising order. */
    private final Map<IntBuffer, SetOutcome> told = new ConcurrentHashMap<>();

    private final Map<SetOutcome, SetOutcome> different = new ConcurrentHashMap<>();

    /** The same candidate told in a fraction of the time, and exactly. */
    record Timelines(Timeline quick, Timeline exact) {}

    /**
     * @param landing how long the engine must run on not to count as lost
     */
    SetTrial(Timelines timelines, Candidate candidate, Landing landing, Conditions conditions) {
        this.timelines = timelines;
        this.candidate = candidate;
        this.landing = landing;
        this.conditions = conditions;
    }

    @Override
    public SetVerdict of(int[] events) {
        return conditions.of(events).map(all -> told(all).answer()).orElse(SetVerdict.IMPOSSIBLE);
    }

    /** Why nobody can say what these events come to. */
    String why(List<Integer> events) {
        int[] numbers = events.stream().mapToInt(Integer::intValue).toArray();
        return conditions.of(numbers).map(all -> told(all).why()).orElse("");
    }

    /** How many stories it took. */
    int stories() {
        return told.size();
    }

    private SetOutcome told(int[] all) {
        Set<String> touched =
                IntStream.of(all)
                        .filter(n -> !sleeps(n))
                        .mapToObj(n -> conditions.get(n).part())
                        .collect(toSet());
        int[] awake =
                IntStream.of(all)
                        .filter(n -> !sleeps(n) || touched.contains(conditions.get(n).sleepsIn()))
                        .toArray();
        while (true) {
            SetOutcome now = known(IntBuffer.wrap(awake));
            int[] woken = wake(all, awake, now.called());
            if (woken.length == awake.length) {
                return now;
            }
            awake = woken;
        }
    }

    /** Not computed inside the map, which would keep other threads waiting. */
    private SetOutcome known(IntBuffer numbers) {
        SetOutcome before = told.get(numbers);
        if (before != null) {
            return before;
        }
        SetOutcome now = tell(numbers);
        told.put(numbers, now);
        return now;
    }

    private int[] wake(int[] all, int[] awake, Set<String> called) {
        return awake.length == all.length
                ? awake
                : IntStream.of(all)
                        .filter(
                                n ->
                                        Arrays.binarySearch(awake, n) >= 0
                                                || called.contains(conditions.get(n).sleepsIn()))
                        .toArray();
    }

    private boolean sleeps(int number) {
        return !conditions.get(number).sleepsIn().isEmpty();
    }

    /** Most sets come to one of a few things: each is kept once. */
    private SetOutcome tell(IntBuffer numbers) {
        SetOutcome now = play(numbers);
        return different.computeIfAbsent(now, told -> now);
    }

    private SetOutcome play(IntBuffer numbers) {
        List<Condition> changes = Arrays.stream(numbers.array()).mapToObj(conditions::get).toList();
        Pilot pilot = changes.contains(new Condition.Idle()) ? Pilot.NEVER : Pilot.PLANNED;
        Failure failure = Condition.failure(changes);
        try {
            Story story = story(failure, Setting.with(pilot));
            boolean lost = story.engine().misses(landing);
            return new SetOutcome(lost ? SetVerdict.LOST : SetVerdict.LIVES, called(story), "");
        } catch (UntoldStory e) {
            return new SetOutcome(SetVerdict.UNTOLD, Set.of(), String.valueOf(e.getMessage()));
        }
    }

    /**
     * Told quickly and no further than it takes to land; exactly and to the end where that leaves a
     * doubt, or a stopped engine that may yet come back.
     */
    private Story story(Failure failure, Setting setting) throws UntoldStory {
        double beyond = (1 + DOUBT) * landing.enoughSeconds();
        try {
            Story story = timelines.quick().tell(failure, setting, beyond);
            if (decides(story, beyond)) {
                return story;
            }
            if (story.engine().runningAtEnd()) {
                // nobody has noticed in time: what counts has hardly begun
                double until =
                        Math.min(
                                story.engine().signSeconds() + beyond,
                                Math.min((1 + DOUBT) * landing.planSeconds(), HORIZON_SECONDS));
                Story longer = timelines.quick().tell(failure, setting, until);
                if (decides(longer, until)) {
                    return longer;
                }
            }
        } catch (UntoldStory e) {
            // perhaps only told too quickly
        }
        return timelines.exact().tell(failure, setting);
    }

    /** Whether a story that may be cut says beyond doubt whether the engine lasts long enough. */
    private boolean decides(Story story, double cutAtSeconds) {
        if (!story.engine().runningAtEnd()) {
            return story.endSeconds() < cutAtSeconds
                    && lasts(story) < (1 - DOUBT) * landing.enoughSeconds()
                    && story.endSeconds() < (1 - DOUBT) * landing.planSeconds();
        }
        boolean cut = story.engine().endurance() instanceof Endurance.AtLeast;
        double since =
                landing.countsFrom() == CountsFrom.FAILURE ? 0 : story.engine().signSeconds();
        return !cut
                || story.endSeconds() >= Math.min(landing.planSeconds(), HORIZON_SECONDS)
                || story.endSeconds() - since >= landing.enoughSeconds();
    }

    private double lasts(Story story) {
        return story.engine().lastsFrom(landing.countsFrom());
    }

    private Set<String> called(Story story) {
        Set<String> called = new HashSet<>();
        story.failure().levers().keySet().forEach(lever -> called.add(partOf(lever)));
        for (StoryEvent happening : story.happenings()) {
            called.add(happening.part());
            if (happening.kind() == Kind.PILOT || happening.kind() == Kind.AUTOMATIC) {
                procedure(happening.part())
                        .ifPresent(p -> p.moves().keySet().forEach(l -> called.add(partOf(l))));
            } else if (happening.kind() == Kind.CRANKING) {
                candidate.cockpit().starting().keySet().forEach(l -> called.add(partOf(l)));
                called.addAll(conditions.idle());
            }
        }
        return called;
    }

    private Optional<Procedure> procedure(String name) {
        return candidate.cockpit().procedures().stream()
                .filter(p -> p.name().equals(name))
                .findFirst();
    }

    /** A controller's levers are its channels. */
    private static String partOf(String lever) {
        int dot = lever.indexOf('.');
        return dot < 0 ? lever : lever.substring(0, dot);
    }
}
