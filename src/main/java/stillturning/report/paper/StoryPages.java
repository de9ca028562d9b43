package stillturning.report.paper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Words;

/** The stories of the chosen candidate's worst single failures. */
final class StoryPages {

    private final Standpoint from;
    private final Set<String> told;
    private final int most;

    /**
     * The chapter.
     *
     * @param told failures whose stories stand elsewhere
     * @param most at most so many
     */
    StoryPages(Standpoint from, Set<String> told, int most) {
        this.from = from;
        this.told = told;
        this.most = most;
    }

    List<Block> blocks() {
        return from.chosen().map(this::blocks).orElse(List.of());
    }

    private List<Block> blocks(Appraisal chosen) {
        Map<String, List<Verdict>> courses = courses(chosen);
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Words(count(chosen, courses.size())));
        PrintedNames labels = from.labels(chosen);
        int number = 0;
        for (List<Verdict> alike : courses.values()) {
            if (number == most) {
                break;
            }
            number++;
            Verdict first = alike.get(0);
            blocks.addAll(
                    StoryBlocks.of(
                            "worst-" + number,
                            number + ". " + labels.of(first.failure()),
                            first,
                            labels));
            if (alike.size() > 1) {
                blocks.add(new Block.Note("The same course: " + names(alike, labels) + "."));
            }
        }
        return List.copyOf(blocks);
    }

    private static String names(List<Verdict> alike, PrintedNames labels) {
        return alike.stream()
                .skip(1)
                .map(v -> labels.of(v.failure()))
                .collect(Collectors.joining("; "));
    }

    private String count(Appraisal chosen, int courses) {
        return "Of \""
                + chosen.candidate().title()
                + "\": the gravest courses that single failures take, each told once, without those"
                + " of the cases before. "
                + (courses > most ? (courses - most) + " milder ones stand on the page." : "");
    }

    /** Failures that reach the engine or cost it a spare, by the course that they take. */
    private Map<String, List<Verdict>> courses(Appraisal chosen) {
        Map<String, List<Verdict>> courses = new LinkedHashMap<>();
        chosen.singles().stream()
                .filter(v -> !v.engineOwn() && !told.contains(v.failure().name()))
                .filter(v -> v.outcome().compareTo(Outcome.REDUNDANCY_LOST) <= 0)
                .sorted(Standpoint.GRAVEST_FIRST)
                .forEach(v -> courses.computeIfAbsent(course(v), c -> new ArrayList<>()).add(v));
        return courses;
    }

    private static String course(Verdict verdict) {
        return verdict.outcome()
                + verdict.planned().happenings().stream()
                        .filter(h -> h.cause() >= 0)
                        .map(h -> h.kind() + " " + h.part())
                        .sorted()
                        .collect(Collectors.joining("\n"));
    }
}
