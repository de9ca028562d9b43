package stillturning.report.html;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.parts.Part;
import stillturning.report.EventLines;
import stillturning.report.FailureRows;
import stillturning.report.StoryFacts;
import stillturning.report.StoryPlot;
import stillturning.report.page.Page.EventRow;
import stillturning.report.page.Page.Fact;
import stillturning.report.page.Page.StoryChapter;
import stillturning.report.page.Page.StorySheet;
import stillturning.story.StoryEvent;

/**
 * The stories worth telling: of each candidate the operating cases, shorted buses, and whatever
 * reaches the engine. Failures that take the same course share a story.
 */
final class StoryChapters {

    /** Endurances are alike if they fall into the same of so many steps for a factor of e. */
    private static final double STEPS = 5;

    private final List<StoryChapter> chapters = new ArrayList<>();
    private final Map<Key, String> anchors = new HashMap<>();

    private record Key(int candidate, String failure) {}

    static StoryChapters of(List<Appraisal> appraisals) {
        StoryChapters stories = new StoryChapters();
        for (int i = 0; i < appraisals.size(); i++) {
            stories.add(i, appraisals.get(i));
        }
        return stories;
    }

    List<StoryChapter> chapters() {
        return List.copyOf(chapters);
    }

    /** Where a failure's story stands, if it is told. */
    Optional<String> anchor(int candidate, String failure) {
        return Optional.ofNullable(anchors.get(new Key(candidate, failure)));
    }

    private void add(int candidate, Appraisal appraisal) {
        Map<String, List<Verdict>> courses = new LinkedHashMap<>();
        FailureRows.all(appraisal)
                .filter(v -> told(appraisal, v))
                .forEach(v -> courses.computeIfAbsent(course(v), c -> new ArrayList<>()).add(v));
        List<StorySheet> sheets = new ArrayList<>();
        for (List<Verdict> alike : courses.values()) {
            String anchor = "story-" + (candidate + 1) + "-" + (sheets.size() + 1);
            alike.forEach(v -> anchors.put(new Key(candidate, v.failure().name()), anchor));
            sheets.add(sheet(anchor, alike));
        }
        chapters.add(
                new StoryChapter(
                        appraisal.candidate().title(), "stories-" + (candidate + 1), sheets));
    }

    private static boolean told(Appraisal appraisal, Verdict verdict) {
        boolean reachesEngine = verdict.outcome().compareTo(Outcome.INTERRUPTED) <= 0;
        return reachesEngine || FailureRows.operatingCase(verdict) || shortsBus(appraisal, verdict);
    }

    private static boolean shortsBus(Appraisal appraisal, Verdict verdict) {
        return verdict.failure().hits().stream()
                .filter(hit -> hit.mode().shortsToStructure())
                .anyMatch(hit -> appraisal.candidate().has(hit.part(), Part.Role.BUS));
    }

    /** What happens to what, whatever the numbers and the order within an instant. */
    private static String course(Verdict verdict) {
        String events =
                verdict.planned().happenings().stream()
                        .filter(h -> h.kind() != StoryEvent.Kind.FAILURE)
                        .map(h -> h.kind() + " " + h.part())
                        .sorted()
                        .collect(Collectors.joining("\n"));
        double seconds = verdict.planned().engine().endurance().seconds();
        long size = Double.isInfinite(seconds) ? -1 : Math.round(STEPS * Math.log1p(seconds));
        return verdict.outcome() + "\n" + size + "\n" + events;
    }

    private StorySheet sheet(String anchor, List<Verdict> alike) {
        Verdict first = alike.get(0);
        return new StorySheet(
                anchor,
                first.failure().name(),
                MatrixSection.mark(first.outcome()),
                alike.stream().skip(1).map(v -> v.failure().name()).toList(),
                EventLines.of(first.planned()).stream().map(StoryChapters::row).toList(),
                StoryPlot.svg(anchor.replace("story", "p"), title(first), first.planned()),
                StoryFacts.of(first).stream().map(f -> new Fact(f.label(), f.value())).toList());
    }

    private static String title(Verdict verdict) {
        return verdict.failure().name() + ", pilot " + verdict.planned().pilot().words();
    }

    private static EventRow row(EventLines.Line line) {
        return new EventRow(
                String.valueOf(line.number()),
                line.time(),
                line.event(),
                line.because() > 0 ? String.valueOf(line.because()) : "");
    }
}
