package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import stillturning.assess.verdict.Verdict.Depth;
import stillturning.assess.verdict.Verdict.Losses;
import stillturning.assess.verdict.Verdict.VerdictStories;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Propeller;
import stillturning.story.Story;
import stillturning.story.Story.EngineFate;
import stillturning.story.Story.Feed;
import stillturning.story.timeline.Timeline;

/** Tells a failure's story with every kind of pilot, and says what came of it. */
public final class Judge {

    /** A time this near to a limit is told again, exactly (part of the limit). */
    private static final double NEAR = 1e-3;

    private final Study study;
    private final Timeline timeline;
    private final double[] limitsSeconds;
    private final NormalFlight normal;
    private final Set<String> engineLoads;

    public Judge(Study study, Timeline timeline) {
        this(study, timeline, timeline.normal());
    }

    /**
     * @param normal what losses are counted against
     */
    public Judge(Study study, Timeline timeline, NormalFlight normal) {
        this.study = study;
        this.timeline = timeline;
        this.normal = normal;
        this.limitsSeconds =
                DoubleStream.concat(
                                DoubleStream.of(
                                        study.goals().enoughSeconds(),
                                        study.landing().planSeconds()),
                                study.goals().requirements().stream()
                                        .map(Requirement::limitSeconds)
                                        .flatMapToDouble(OptionalDouble::stream))
                        .toArray();
        this.engineLoads = Set.copyOf(study.aircraft().engine().logic().loads());
    }

    public Verdict judge(Failure failure) {
        Setting planned = Setting.with(Pilot.PLANNED);
        Verdict typical = typically(failure);
        Lazy<List<Remark>> beside = Lazy.by(() -> beside(typical, planned));
        return typical.told(Lazy.by(() -> typical.depth().get().with(beside)))
                .within(
                        Tolerances.of(
                                typical.planned(),
                                race -> told(failure, planned.with(race)),
                                (race, story) -> judge(failure, planned.with(race), story)));
    }

    /** What is found out by playing the failure in other settings. */
    private List<Remark> beside(Verdict typical, Setting planned) {
        Failure failure = typical.failure();
        List<Remark> beside =
                new ArrayList<>(
                        OtherLaws.of(typical, laws -> outcome(failure, planned.with(laws))));
        new WithinReach(study, timeline.candidate(), act -> told(failure, planned.with(act)))
                .of(typical.planned())
                .ifPresent(beside::add);
        return beside;
    }

    /** The same with every protector as its kind is on the whole. */
    public Verdict typically(Failure failure) {
        Setting planned = Setting.with(Pilot.PLANNED);
        return judge(failure, planned, told(failure, planned));
    }

    /**
     * The same as far as requirements and criteria ask: with a pilot who keeps to the procedures
     * and with one who does nothing. A late one, and a propeller that stands, are not told: the
     * story as planned is in their place.
     */
    public Verdict inBrief(Failure failure) {
        VerdictStories stories = brief(failure, Setting.with(Pilot.PLANNED));
        return verdict(failure, stories, outcome -> Lazy.by(() -> flat(stories, outcome)));
    }

    private Depth flat(VerdictStories stories, Outcome planned) {
        return depth(stories, planned, stories.planned(), Optional.empty());
    }

    private VerdictStories brief(Failure failure, Setting setting) {
        return brief(failure, setting, told(failure, setting));
    }

    private VerdictStories brief(Failure failure, Setting setting, Story planned) {
        Story unaided =
                planned.aftermath().actedPilot()
                        ? told(failure, setting.flownBy(Pilot.NEVER))
                        : planned;
        return new VerdictStories(planned, unaided);
    }

    /** The outcome alone, which hangs on what the pilot does as planned and on doing nothing. */
    private Outcome outcome(Failure failure, Setting setting) {
        VerdictStories stories = brief(failure, setting);
        return outcome(stories.planned(), stories.unaided(), losses(stories.planned()));
    }

    /** What comes of a failure in one setting, and only there. */
    private Verdict judge(Failure failure, Setting setting, Story asPlanned) {
        VerdictStories stories = brief(failure, setting, asPlanned);
        return verdict(
                failure,
                stories,
                outcome -> Lazy.by(() -> depth(failure, setting, stories, outcome)));
    }

    private Verdict verdict(
            Failure failure, VerdictStories stories, Function<Outcome, Lazy<Depth>> inDepth) {
        Losses losses = losses(stories.planned());
        Outcome outcome = outcome(stories.planned(), stories.unaided(), losses);
        Optional<Double> actBy =
                outcome.needsPilot()
                        ? Optional.of(stories.unaided().engine().endurance().seconds())
                        : Optional.empty();
        return new Verdict(
                failure,
                outcome,
                stories,
                losses,
                engineOwn(failure),
                actBy,
                Optional.empty(),
                inDepth.apply(outcome));
    }

    private Depth depth(Failure failure, Setting setting, VerdictStories stories, Outcome planned) {
        Story asPlanned = stories.planned();
        Optional<Story> standing =
                asPlanned.engine().stops() > 0 && study.aircraft().engine().windmills()
                        ? Optional.of(told(failure, setting.with(Propeller.STANDS)))
                        : Optional.empty();
        Story late =
                asPlanned.aftermath().actedPilot()
                        ? told(failure, setting.flownBy(Pilot.LATE))
                        : asPlanned;
        return depth(stories, planned, late, standing);
    }

    private Depth depth(
            VerdictStories stories, Outcome planned, Story late, Optional<Story> standing) {
        Map<Pilot, Ruling> rulings = new EnumMap<>(Pilot.class);
        rulings.put(Pilot.PLANNED, ruling(stories.planned(), stories, planned));
        rulings.put(Pilot.LATE, ruling(late, stories, planned));
        rulings.put(Pilot.NEVER, ruling(stories.unaided(), stories, planned));
        return new Depth(late, standing, rulings, Lazy.of(List.of()));
    }

    private Ruling ruling(Story story, VerdictStories stories, Outcome planned) {
        Outcome outcome =
                story.pilot() == Pilot.PLANNED
                        ? planned
                        : outcome(story, stories.unaided(), losses(story));
        return new Ruling(outcome, Remarks.of(outcome, story, stories.unaided()));
    }

    /** Quickly; but what is near to a limit, or breaks off, is decided by the exact story. */
    private Story told(Failure failure, Setting setting) {
        Story story = timeline.tellAsFar(failure, setting);
        return story.untold().isPresent()
                        || near(story.engine().endurance().seconds())
                        || near(story.engine().longestInterruptionSeconds())
                ? timeline.exact().tellAsFar(failure, setting)
                : story;
    }

    private boolean near(double seconds) {
        return Arrays.stream(limitsSeconds)
                .anyMatch(limit -> Math.abs(seconds - limit) < NEAR * limit);
    }

    /** Only what runs on at the end of the story has recovered, whatever it did before. */
    private Outcome outcome(Story story, Story unaided, Losses losses) {
        EngineFate engine = story.engine();
        if (lost(story)) {
            return Outcome.ENGINE_LOST;
        }
        if (lost(unaided)) {
            return engine.stoppedAndCameBack()
                    ? Outcome.STOPS_UNTIL_PILOT_ACTS
                    : Outcome.STOPS_UNLESS_PILOT_ACTS;
        }
        if (engine.interrupted() && !engine.endurance().ends()) {
            return Outcome.INTERRUPTED;
        }
        EngineFate alone = unaided.engine();
        boolean limited =
                engine.endurance().ends() || alone.endurance().ends() || alone.interrupted();
        if (limited || !losses.engineLoads().isEmpty() || !losses.feeds().isEmpty()) {
            return Outcome.REDUNDANCY_LOST;
        }
        return losses.otherLoads().isEmpty() ? Outcome.NO_EFFECT : Outcome.LOADS_LOST;
    }

    private boolean engineOwn(Failure failure) {
        return failure.hits().stream()
                .anyMatch(
                        hit ->
                                hit.mode().traits().whateverItsSupply()
                                        && !study.aircraft()
                                                .engine()
                                                .logic()
                                                .runsOn(load -> !load.equals(hit.part())));
    }

    /** What cannot be told to its end counts as lost, however far it is told. */
    private boolean lost(Story story) {
        return story.untold().isPresent() || story.engine().misses(study.landing());
    }

    private Losses losses(Story story) {
        List<String> dark =
                study.aircraft().loads().stream()
                        .map(load -> load.id())
                        .filter(normal.working()::contains)
                        .filter(load -> !story.aftermath().working().contains(load))
                        .toList();
        List<Feed> feeds =
                normal.feeds().stream()
                        .filter(feed -> engineLoads.contains(feed.load()))
                        .filter(feed -> !story.aftermath().feeds().contains(feed))
                        .sorted(
                                Comparator.comparing(Feed::source)
                                        .thenComparing(Feed::load)
                                        .thenComparing(Feed::input))
                        .toList();
        return new Losses(
                dark.stream().filter(engineLoads::contains).toList(),
                dark.stream().filter(load -> !engineLoads.contains(load)).toList(),
                feeds);
    }
}
