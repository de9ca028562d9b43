package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.Appraisal;
import stillturning.assess.CandidateCases;
import stillturning.assess.verdict.Verdict;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Words;
import stillturning.report.terminal.CaseTexts;

/** What happens if ...: a sentence per candidate, then the chosen candidate's story. */
final class CasePages {

    private static final String CHARGING = "charging is lost";
    private static final String MASTER_OFF = "smoke: all power off the airframe";

    private final Standpoint from;
    private final Map<String, List<Answer>> cases = new LinkedHashMap<>();
    private final Set<String> told = new LinkedHashSet<>();

    /** What a case does to one candidate; nothing where it has no such thing. */
    private record Answer(Appraisal candidate, Optional<Verdict> worst) {}

    CasePages(Standpoint from, List<CandidateCases> asked) {
        this.from = from;
        for (Appraisal appraisal : from.ranked()) {
            asked.stream()
                    .filter(c -> c.candidate().id().equals(appraisal.candidate().id()))
                    .flatMap(c -> c.cases().stream())
                    .forEach(c -> put(c.said(), new Answer(appraisal, c.worst())));
        }
        if (cases.isEmpty()) {
            from.ranked().forEach(this::always);
        }
    }

    /** What every candidate is asked about, whatever the study asks. */
    private void always(Appraisal appraisal) {
        put(CHARGING, new Answer(appraisal, Optional.of(appraisal.chargingLost())));
        put(MASTER_OFF, new Answer(appraisal, appraisal.masterOff()));
    }

    private void put(String said, Answer answer) {
        cases.computeIfAbsent(said, s -> new ArrayList<>()).add(answer);
    }

    /** Failures whose stories are told here. */
    Set<String> told() {
        return told;
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Words(
                        "Each case in every candidate, where several failures go by its name the"
                                + " worst of them; then its story in the chosen candidate."));
        cases.forEach((said, answers) -> blocks.addAll(one(said, answers)));
        return List.copyOf(blocks);
    }

    private List<Block> one(String said, List<Answer> answers) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading("If " + said));
        blocks.add(
                Grid.of(
                        answers,
                        List.of(
                                words("candidate", 30, a -> a.candidate.candidate().title()),
                                words("what happens", 70, this::sentence))));
        answers.stream().limit(1).forEach(a -> a.worst.ifPresent(v -> blocks.addAll(story(a, v))));
        return blocks;
    }

    private List<Block> story(Answer answer, Verdict verdict) {
        PrintedNames labels = from.labels(answer.candidate);
        if (!told.add(verdict.failure().name())) {
            return List.of(
                    new Words("Its story stands above: " + labels.of(verdict.failure()) + "."));
        }
        return StoryBlocks.of(
                "case-" + told.size(),
                labels.of(verdict.failure())
                        + ", in \""
                        + answer.candidate.candidate().title()
                        + "\"",
                verdict,
                labels);
    }

    private String sentence(Answer answer) {
        return answer.worst
                .map(
                        v ->
                                from.labels(answer.candidate).of(v.failure())
                                        + ": "
                                        + VerdictWords.sentence(v))
                .orElse(CaseTexts.ABSENT);
    }
}
