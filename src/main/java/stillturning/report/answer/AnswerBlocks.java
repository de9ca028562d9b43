package stillturning.report.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.NotAsked;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;

/** The first answer as running text, without its matrix. */
public final class AnswerBlocks {

    private AnswerBlocks() {}

    /**
     * The blocks, who is first before everything else.
     *
     * @param coming what is not known yet, and when it will be; empty if all is
     */
    public static List<Block> of(FirstAnswer answer, String coming) {
        List<Block> blocks = new ArrayList<>();
        answer.of(AnswerTopic.FIRST).stream().map(Lead::new).forEach(blocks::add);
        blocks.add(new Note("This holds for " + answer.scope() + "."));
        section(
                "How firm that is",
                Stream.concat(
                                answer.of(AnswerTopic.FIRM).stream(),
                                answer.of(AnswerTopic.EQUAL_BATTERIES).stream())
                        .toList(),
                blocks);
        section("In what it and the next are not alike", answer.of(AnswerTopic.UNLIKE), blocks);
        if (!coming.isEmpty()) {
            blocks.add(new Note(coming));
        }
        section(
                "What it still breaks or cannot do, worst first",
                numbered(answer.of(AnswerTopic.BREAKS)),
                blocks);
        section("What the next one buys", answer.of(AnswerTopic.NEXT), blocks);
        section(
                "Left out",
                answer.leftOut().stream().map(l -> l.candidate() + ": " + l.reason()).toList(),
                blocks);
        if (!answer.notAsked().isEmpty()) {
            blocks.add(
                    new Note(
                            "Not asked here: "
                                    + answer.notAsked().stream()
                                            .map(NotAsked::what)
                                            .collect(Collectors.joining("; "))
                                    + "."));
        }
        return List.copyOf(blocks);
    }

    private static void section(String heading, List<String> points, List<Block> blocks) {
        if (!points.isEmpty()) {
            blocks.add(new Heading(heading));
            blocks.add(new Points(points));
        }
    }

    private static List<String> numbered(List<String> points) {
        return IntStream.range(0, points.size())
                .mapToObj(i -> (i + 1) + ". " + points.get(i))
                .toList();
    }
}
