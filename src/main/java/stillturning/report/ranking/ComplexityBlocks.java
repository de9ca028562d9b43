package stillturning.report.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;

/** What complexity is made of, and what the pilot has to do, as running text. */
public final class ComplexityBlocks {

    private ComplexityBlocks() {}

    /**
     * The blocks; none where nothing was assessed.
     *
     * @param called words of a candidate with its names replaced by what people call things
     */
    public static List<Block> of(
            Assessment assessment, BiFunction<Appraisal, String, String> called) {
        if (assessment.appraisals().isEmpty()) {
            return List.of();
        }
        ComplexityTexts texts = new ComplexityTexts(assessment, called);
        List<Block> blocks = new ArrayList<>();
        texts.method().stream().limit(1).map(Words::new).forEach(blocks::add);
        blocks.add(new Words(texts.reasons()));
        blocks.add(new Points(texts.method().stream().skip(1).toList()));
        blocks.add(new Grid(texts.counts()));
        List<String> sensitivity = texts.sensitivity();
        sensitivity.stream().limit(1).map(Note::new).forEach(blocks::add);
        if (sensitivity.size() > 1) {
            blocks.add(new Points(sensitivity.stream().skip(1).toList()));
        }
        blocks.add(new Heading("What the pilot has to do"));
        blocks.add(new Points(texts.byHeart()));
        blocks.add(new Grid(texts.pilot()));
        return List.copyOf(blocks);
    }
}
