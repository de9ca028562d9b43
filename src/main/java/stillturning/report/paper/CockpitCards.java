package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.quantity.Formats;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.RunUpSheet;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Document.Chapter;

/** Cards for the cockpit, of the chosen candidate only, each on sheets of a kneeboard's size. */
final class CockpitCards {

    private final Standpoint from;
    private final List<CombinedFindings> found;

    /** Of these findings the run-up card is made, where they were asked for. */
    CockpitCards(Standpoint from, List<CombinedFindings> found) {
        this.from = from;
        this.found = List.copyOf(found);
    }

    List<Chapter> cards() {
        return from.chosen().map(this::cards).orElse(List.of());
    }

    private List<Chapter> cards(Appraisal chosen) {
        List<Chapter> cards = new ArrayList<>();
        found.stream()
                .filter(f -> f.candidate().id().equals(chosen.candidate().id()))
                .findFirst()
                .ifPresent(
                        f -> {
                            cards.add(new Chapter("run-up-card", "Run-up", front(chosen, f)));
                            cards.add(
                                    new Chapter(
                                            "run-up-back",
                                            "Run-up: if it is otherwise",
                                            labelled(chosen, RunUpSheet.back(f))));
                        });
        List<Block> abnormal =
                new Checklist(from.assessment().study(), chosen, from.labels(chosen)).all();
        if (!abnormal.isEmpty()) {
            cards.add(new Chapter("checklists", "If something shows in flight", abnormal));
        }
        return cards.stream().map(card -> named(chosen, card)).toList();
    }

    /** A loose sheet says of itself what it belongs to. */
    private Chapter named(Appraisal chosen, Chapter card) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(
                new Note(
                        from.assessment().study().heading().title()
                                + ": "
                                + chosen.candidate().title()));
        blocks.addAll(card.blocks());
        return new Chapter(card.anchor(), card.title(), blocks);
    }

    private List<Block> front(Appraisal chosen, CombinedFindings findings) {
        List<Block> blocks = new ArrayList<>(labelled(chosen, RunUpSheet.front(findings)));
        Map<String, Double> volts = chosen.flight().normal().busVolts();
        blocks.add(
                new Words(
                        "Volts in "
                                + from.assessment().study().goals().failurePhase().name()
                                + " with nothing wrong: "
                                + volts.entrySet().stream()
                                        .map(
                                                e ->
                                                        from.labels(chosen).in(e.getKey())
                                                                + " "
                                                                + Formats.fixed(e.getValue(), 1)
                                                                + " V")
                                        .collect(Collectors.joining(", "))
                                + "."));
        return blocks;
    }

    private List<Block> labelled(Appraisal chosen, List<Block> blocks) {
        return blocks.stream().map(b -> Labelled.of(b, from.labels(chosen))).toList();
    }
}
