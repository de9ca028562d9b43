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
 * The stories that are told without being asked for: of the candidate in first place the operating
 * cases and the gravest courses of single failures. Failures that take the same course share a
 * story.
 */
final class StoryChapters {

    /** Endurances are alike if they fall into the same of so many steps for a factor of e. */
    private static final double STEPS = 5;

    /** Courses of single failures that are told. */
    private static final int GRAVEST = 10;

    private final List<StoryChapter> chapters = new ArrayList<>();
    private final Map<Key, String> anchors = new HashMap<>();

    private record Key(int candidate, String failure) {}

    static StoryChapters of(List<Appraisal> appraisals) {
        StoryChapters stories = new StoryChapters();
        appraisals.stream().findFirst().ifPresent(stories::addChosen);
        return stories;
    }

    List<StoryChapter> chapters() {
        return List.copyOf(chapters);
    }

    /** Where a failure's story stands, if it is told. */
    Optional<String> anchor(int candidate, String failure) {
        return Optional.ofNullable(anchors.get(new Key(candidate, failure)));
    }

    private void addChosen(Appraisal chosen) {
        Map<String, List<Verdict>> courses = new LinkedHashMap<>();
        FailureRows.all(chosen)
                .filter(FailureRows::operatingCase)
                .forEach(v -> courses.computeIfAbsent(course(v), c -> new ArrayList<>()).add(v));
        int most = courses.size() + GRAVEST;
        chosen.singles().stream()
                .filter(v -> v.outcome().compareTo(Outcome.NO_EFFECT) < 0)
                .sorted(FailureRows.GRAVEST_FIRST)
                .forEach(
                        v -> {
                            String course = course(v);
                            if (courses.size() < most || courses.containsKey(course)) {
                                courses.computeIfAbsent(course, c -> new ArrayList<>()).add(v);
                            }
                        });
        List<StorySheet> sheets = new ArrayList<>();
        for (List<Verdict> alike : courses.values()) {
            String anchor = "story-" + (sheets.size() + 1);
            alike.forEach(v -> anchors.put(new Key(0, v.failure().name()), anchor));
            sheets.add(sheet(anchor, alike));
        }
        chapters.add(new StoryChapter(chosen.candidate().title(), "stories-1", sheets));
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

    private static EventRow row(EventLines.EventLine line) {
        return new EventRow(
                String.valueOf(line.number()),
                line.time(),
                line.event(),
                line.because() > 0 ? String.valueOf(line.because()) : "");
    }
}
