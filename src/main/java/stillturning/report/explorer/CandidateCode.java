package stillturning.report.explorer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.FailureRows;
import stillturning.report.PrintedNames;
import stillturning.report.StoryFacts;
import stillturning.report.explorer.NumberedTexts.NumberedText;
import stillturning.report.oneline.DrawingStates;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.WatchedStory;
import stillturning.story.timeline.Timeline;

/** One candidate's drawing, verdicts and stories as a tree. */
final class CandidateCode {

    private static final List<Outcome> OUTCOMES = List.of(Outcome.values());

    private final Appraisal appraisal;
    private final PrintedNames labels;
    private final Map<String, String> said = new ConcurrentHashMap<>();
    private final Timeline timeline;
    private final DrawingCode drawing;
    private final String before;
    private final Map<Object, Integer> stories = new LinkedHashMap<>();
    private final Map<String, List<Object>> verdicts = new LinkedHashMap<>();

    /** A verdict, and by pilot the story that it has again. */
    private record Played(Verdict verdict, Map<Pilot, List<Object>> stories) {}

    CandidateCode(Study study, Appraisal appraisal) {
        this.appraisal = appraisal;
        this.labels = new PrintedNames(appraisal.candidate());
        this.timeline = timeline(study, appraisal);
        this.drawing = new DrawingCode(study, appraisal.candidate(), timeline.before());
        this.before = drawing.undisturbed();
        // told in parallel, put back in order
        FailureRows.all(appraisal).toList().parallelStream()
                .map(this::played)
                .toList()
                .forEach(this::add);
    }

    private static Timeline timeline(Study study, Appraisal appraisal) {
        try {
            return Timeline.quick(study, appraisal.candidate());
        } catch (UntoldStory e) {
            throw new IllegalStateException(
                    appraisal.candidate().id() + " was assessed and has no steady state", e);
        }
    }

    /** The drawing's id, what its letters stand for and how it looks before; the stories. */
    Map<String, Object> tree(String drawn) {
        Map<String, Object> tree = new LinkedHashMap<>();
        tree.put("id", appraisal.candidate().id());
        tree.put("title", appraisal.candidate().title());
        tree.put("drawing", drawn);
        tree.put("symbols", drawing.symbols());
        tree.put("lines", drawing.lines());
        tree.put("before", before);
        tree.put("contacts", drawing.contacts());
        tree.put("stories", List.copyOf(stories.keySet()));
        return tree;
    }

    /**
     * What a failure comes to: the outcome and the endurance of the pilot as planned, then for each
     * pilot outcome, story and facts; 0 for one who has nothing to do otherwise.
     */
    List<Object> verdict(Verdict verdict) {
        return verdicts.getOrDefault(verdict.failure().name(), List.of());
    }

    /** A failure by the labels of this candidate. */
    String called(Verdict verdict) {
        return in(verdict.failure().name());
    }

    private String in(String sentence) {
        return said.computeIfAbsent(sentence, labels::in);
    }

    private Played played(Verdict verdict) {
        DrawingStates states = drawing.after(verdict.failure());
        Map<Pilot, List<Object>> told = new LinkedHashMap<>();
        for (Pilot pilot : Pilot.values()) {
            Story story = verdict.with(pilot);
            if (story.pilot() == pilot) {
                StoryCode code = new StoryCode(watched(story), this::in);
                told.put(pilot, code.tree(drawing, states, before));
            }
        }
        return new Played(verdict, told);
    }

    /** The story as it was judged: one near to a limit was told exactly. */
    private WatchedStory watched(Story story) {
        WatchedStory quick = timeline.watchEvents(story);
        boolean same = quick.story().isCourseOf(story);
        return same ? quick : timeline.exact().watchEvents(story);
    }

    private void add(Played played) {
        verdicts.put(played.verdict.failure().name(), code(played));
    }

    boolean isOf(Candidate candidate) {
        return appraisal.candidate().id().equals(candidate.id());
    }

    /** What any two come to, with the stories of some. */
    Map<String, Object> pairs(PairCode pairs) {
        Map<List<Integer>, List<Object>> told = new LinkedHashMap<>();
        pairs.told().forEach((pair, verdict) -> told.put(pair, code(played(verdict))));
        return pairs.tree(this::in, told);
    }

    private List<Object> code(Played played) {
        Verdict verdict = played.verdict;
        boolean limited = Double.isFinite(verdict.planned().engine().endurance().seconds());
        List<Object> tree = new ArrayList<>();
        tree.add(OUTCOMES.indexOf(verdict.outcome()));
        tree.add(new NumberedText(limited ? StoryFacts.endurance(verdict.planned()) : ""));
        for (Pilot pilot : Pilot.values()) {
            List<Object> story = played.stories.getOrDefault(pilot, List.of());
            tree.add(story.isEmpty() ? 0 : flown(verdict, pilot, story));
        }
        return tree;
    }

    private List<Object> flown(Verdict verdict, Pilot pilot, List<Object> story) {
        stories.putIfAbsent(story, stories.size());
        List<Object> flown = new ArrayList<>();
        flown.add(OUTCOMES.indexOf(verdict.outcome(pilot)));
        flown.add(stories.getOrDefault(story, 0));
        for (StoryFacts.StoryFact fact : StoryFacts.brief(verdict, pilot)) {
            flown.add(new NumberedText(fact.label()));
            flown.add(new NumberedText(in(fact.value())));
        }
        return flown;
    }
}
