package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.assess.Appraisal;
import stillturning.model.Candidate;
import stillturning.model.goal.ComplexityCount;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Room;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Page.Fact;

/** The chosen candidate itself: its drawing, its grounds, what it is made of. */
final class LayoutPages {

    private static final Room WHOLE_SHEET = new Room(245, 165);

    private final Standpoint from;

    LayoutPages(Standpoint from) {
        this.from = from;
    }

    List<Block> blocks() {
        return from.chosen().map(this::blocks).orElse(List.of());
    }

    private List<Block> blocks(Appraisal chosen) {
        Candidate candidate = chosen.candidate();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Heading(candidate.title()));
        blocks.add(new Words(candidate.about()));
        blocks.add(
                new Facts(
                        chosen.measures().complexity().counts().entrySet().stream()
                                .map(LayoutPages::count)
                                .toList()));
        blocks.add(new Heading("Grounds"));
        blocks.add(
                new Facts(
                        CandidateDrawing.grounds(candidate).stream()
                                .map(g -> new Fact(g.ground(), g.leadsTo()))
                                .toList()));
        blocks.add(
                new Drawing(
                        OneLine.of(CandidateDrawing.of(candidate, from.assessment().study())),
                        WHOLE_SHEET));
        return blocks;
    }

    private static Fact count(Map.Entry<ComplexityCount, Integer> count) {
        return new Fact(count.getKey().words(), String.valueOf(count.getValue()));
    }
}
