package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Verdict;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.report.page.JointSection;

/** Single points of every candidate, and latent failures of the chosen one, with remedies. */
final class WeakPointPages {

    /** The anchor of the chapter about latent failures. */
    private static final String LATENT = "latent";

    private static final int OF_CHOSEN = 24;
    private static final int OF_OTHERS = 5;

    private final Standpoint from;
    private final Optional<JointSection> together;
    private final Remedies remedies;

    /** Failures of one part that come to the same. */
    private record Weak(String failures, String comesTo, String remedy, String elsewhere) {}

    WeakPointPages(Standpoint from, Optional<JointSection> together) {
        this.from = from;
        this.together = together;
        this.remedies = new Remedies(from.ranked());
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Words(
                        "Single failures that end the engine, stop it, or would stop it if the"
                                + " pilot did nothing, the gravest first. A remedy says what shape of"
                                + " change helps; the last column names by rank the candidates in which"
                                + " the same failure does no such thing: look there how it is done."));
        for (int i = 0; i < from.ranked().size(); i++) {
            Appraisal appraisal = from.ranked().get(i);
            blocks.add(new Heading((i + 1) + ". " + appraisal.candidate().title()));
            blocks.addAll(weak(appraisal, i == 0 ? OF_CHOSEN : OF_OTHERS));
        }
        blocks.add(new Heading("Latent failures of the chosen candidate, and what reveals them"));
        blocks.addAll(latent());
        return List.copyOf(blocks);
    }

    private List<Block> weak(Appraisal appraisal, int most) {
        List<Weak> all = grouped(appraisal);
        if (all.isEmpty()) {
            return List.of(new Words("No single failure does."));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                Grid.of(
                        all.stream().limit(most).toList(),
                        List.of(
                                words("single failure", 26, Weak::failures),
                                words("what it does", 34, Weak::comesTo),
                                words("what mends it", 30, Weak::remedy),
                                words("candidates that withstand it", 20, Weak::elsewhere))));
        if (all.size() > most) {
            blocks.add(new Note((all.size() - most) + " more rows: the page has them all."));
        }
        return List.copyOf(blocks);
    }

    private List<Weak> grouped(Appraisal appraisal) {
        Map<List<String>, List<Verdict>> groups = new LinkedHashMap<>();
        for (Verdict verdict : Standpoint.needingSomebody(appraisal)) {
            String part =
                    verdict.failure().hits().isEmpty()
                            ? verdict.failure().name()
                            : verdict.failure().hits().get(0).part();
            List<String> key = List.of(part, verdict.outcome().words(), Remedies.shape(verdict));
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(verdict);
        }
        return groups.values().stream().map(alike -> weak(appraisal, alike)).toList();
    }

    private Weak weak(Appraisal appraisal, List<Verdict> alike) {
        PrintedNames labels = from.labels(appraisal);
        Verdict first = alike.get(0);
        String others =
                alike.stream()
                        .skip(1)
                        .flatMap(v -> v.failure().hits().stream())
                        .map(hit -> "; " + hit.mode().name())
                        .collect(Collectors.joining());
        return new Weak(
                labels.of(first.failure()) + others,
                VerdictWords.sentence(first),
                Remedies.shape(first),
                remedies.elsewhere(appraisal, first));
    }

    private List<Block> latent() {
        return from.chosen()
                .flatMap(this::latent)
                .orElse(
                        List.of(
                                new Words(
                                        "Not asked for: explain --pairs finds them, with what"
                                                + " reveals each and what else then ends the"
                                                + " engine.")));
    }

    private Optional<List<Block>> latent(Appraisal chosen) {
        return JointPages.of(chosen, together, LATENT)
                .map(
                        blocks ->
                                blocks.stream()
                                        .map(b -> Labelled.of(b, from.labels(chosen)))
                                        .toList());
    }
}
