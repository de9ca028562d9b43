package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.report.PrintedNames;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Words;

/** Each hard requirement: who meets it, and what breaks it. */
final class RequirementPages {

    /** Of a candidate that is not chosen, so many failures are named. */
    private static final int NAMED = 6;

    private final Standpoint from;

    /** One candidate's answer. */
    private record Row(String candidate, boolean met, String because) {}

    RequirementPages(Standpoint from) {
        this.from = from;
    }

    List<Block> blocks() {
        int requirements = from.chosen().map(chosen -> chosen.met().size()).orElse(0);
        if (requirements == 0) {
            return List.of(new Words("The study asks for nothing that a candidate could miss."));
        }
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < requirements; i++) {
            blocks.addAll(requirement(i));
        }
        return List.copyOf(blocks);
    }

    private List<Block> requirement(int number) {
        List<Row> rows = from.ranked().stream().map(a -> row(a, a.met().get(number))).toList();
        String words = from.ranked().get(0).met().get(number).requirement();
        return List.of(
                new Heading((number + 1) + ". " + words),
                Grid.of(
                        rows,
                        List.of(
                                words("candidate", 24, Row::candidate),
                                words("met?", 9, r -> r.met ? "\u2713 met" : "\u2716 missed"),
                                words("because", 84, Row::because))));
    }

    private Row row(Appraisal appraisal, RequirementMet met) {
        PrintedNames labels = from.labels(appraisal);
        boolean chosen = appraisal.equals(from.ranked().get(0));
        int shown = chosen ? met.culprits().size() : Math.min(NAMED, met.culprits().size());
        String named = String.join("; ", met.culprits().subList(0, shown));
        int left = met.culprits().size() - shown;
        String because = met.reason() + (shown == 0 ? "" : ": " + named);
        return new Row(
                appraisal.candidate().title(),
                met.met(),
                labels.in(because) + (left > 0 ? "; and " + left + " more" : ""));
    }
}
