package stillturning.assess.crosscheck;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.MotorStart;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;
import stillturning.structure.Relaxation;
import stillturning.structure.Removal;
import stillturning.structure.Structure;

/**
 * Holds a candidate's shape against its stories, part by part, the part removed in both.
 *
 * <p>Where they disagree, each thing that only stories know is taken away and both are asked again,
 * then each two and so on up to four: what makes them agree is the explanation. It is tried, not
 * guessed from the events.
 */
public final class CrossCheck {

    /** Most differences that are taken away together. */
    private static final int AT_ONCE = 4;

    /** What is given to everything quick, beside the planned times of the procedures (s). */
    private static final double QUICK_SECONDS = 60;

    /** A shape knows nothing of the start of a motor. */
    private static final Setting PLANNED = Setting.with(Pilot.PLANNED).with(new MotorStart.Never());

    private final Study study;
    private final Candidate candidate;
    private final double horizonSeconds;

    public CrossCheck(Study study, Candidate candidate) {
        this.study = study;
        this.candidate = candidate;
        this.horizonSeconds =
                QUICK_SECONDS
                        + study.aircraft().engine().restartSeconds()
                        + candidate.cockpit().procedures().stream()
                                .mapToDouble(Procedure::responseSeconds)
                                .sum();
    }

    /**
     * Everything that they say differently.
     *
     * @throws UntoldStory if there is no story with nothing removed
     */
    public SecondOpinion all() throws UntoldStory {
        Timeline timeline = Timeline.quick(study, candidate);
        List<Removal> removals = Structure.removals(study.aircraft(), candidate);
        Removal nothing = removals.get(0);
        Optional<Disagreement> from = check(timeline, nothing);
        if (from.isPresent() || !nothing.supplied()) {
            return new SecondOpinion(from.stream().toList(), List.of());
        }
        List<Told> told =
                removals.subList(1, removals.size()).parallelStream()
                        .map(removal -> told(timeline, removal))
                        .toList();
        return new SecondOpinion(
                told.stream().flatMap(one -> one.disagreement.stream()).toList(),
                told.stream().flatMap(one -> one.untold.stream()).toList());
    }

    private record Told(Optional<Disagreement> disagreement, Optional<String> untold) {}

    private Told told(Timeline timeline, Removal removal) {
        try {
            return new Told(check(timeline, removal), Optional.empty());
        } catch (UntoldStory e) {
            String why = String.valueOf(e.of(failure(removal).name()).getMessage());
            return new Told(Optional.empty(), Optional.of(why));
        }
    }

    private Optional<Disagreement> check(Timeline timeline, Removal removal) throws UntoldStory {
        Story story = timeline.tell(failure(removal), PLANNED, horizonSeconds);
        return runs(story) == removal.supplied()
                ? Optional.empty()
                : Optional.of(
                        new Disagreement(
                                removal.part(),
                                removal.supplied(),
                                removal.evidence(),
                                runs(story),
                                story.happenings(),
                                because(removal)));
    }

    /** Whether the engine runs when everything quick is over. */
    private static boolean runs(Story story) {
        List<StateBar.StateSpan> engine = story.bars().get(0).spans();
        return engine.get(engine.size() - 1).doing() == Activity.RUNS;
    }

    private Failure failure(Removal removal) {
        return removal.part()
                .map(part -> WithoutPart.of(candidate, part))
                .orElseGet(() -> Failure.levers("nothing removed", Map.of()));
    }

    /** The first of the smallest sets of differences without which both agree. */
    private List<StoryOnlyFact> because(Removal removal) {
        List<StoryOnlyFact> all = List.of(StoryOnlyFact.values());
        for (int count = 1; count <= AT_ONCE; count++) {
            Optional<List<StoryOnlyFact>> found = firstOf(count, all, List.of(), removal);
            if (found.isPresent()) {
                return found.get();
            }
        }
        return List.of();
    }

    private Optional<List<StoryOnlyFact>> firstOf(
            int count, List<StoryOnlyFact> left, List<StoryOnlyFact> away, Removal removal) {
        if (count == 0) {
            return Optional.of(away).filter(all -> agreeWithout(all, removal));
        }
        for (int i = 0; i < left.size(); i++) {
            List<StoryOnlyFact> more = new ArrayList<>(away);
            more.add(left.get(i));
            Optional<List<StoryOnlyFact>> found =
                    firstOf(count - 1, left.subList(i + 1, left.size()), more, removal);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private boolean agreeWithout(List<StoryOnlyFact> away, Removal removal) {
        IdealisedCandidate as = new IdealisedCandidate(study, candidate);
        Removal shape = shape(as, away, removal);
        Failure failure = failure(removal);
        Failure played =
                away.contains(StoryOnlyFact.PILOT)
                        ? new Failure(failure.name(), failure.hits(), shape.levers())
                        : failure;
        IdealisedCandidate told = as.without(away);
        try {
            Timeline timeline = Timeline.quick(told.study(), told.candidate());
            return runs(timeline.tell(played, PLANNED, horizonSeconds)) == shape.supplied();
        } catch (UntoldStory e) {
            return false;
        }
    }

    /** To the shape, procedures are where levers can stand: it keeps them. */
    private static Removal shape(IdealisedCandidate as, List<StoryOnlyFact> away, Removal removal) {
        IdealisedCandidate kept =
                as.without(away.stream().filter(d -> !d.isAboutWhoActs()).toList());
        return Structure.without(
                kept.study().aircraft(), kept.candidate(), removal.part(), leniencies(away));
    }

    /** What the shape is asked to count instead of taking it from the story. */
    private static Set<Relaxation> leniencies(List<StoryOnlyFact> away) {
        Set<Relaxation> lenient = EnumSet.noneOf(Relaxation.class);
        if (away.contains(StoryOnlyFact.SNEAK_PATH)) {
            lenient.add(Relaxation.THROUGH_LOADS_AND_SOURCES);
        }
        if (away.contains(StoryOnlyFact.DEFAULT)) {
            lenient.add(Relaxation.FALLING_INTO_DEFAULTS);
        }
        return lenient;
    }
}
