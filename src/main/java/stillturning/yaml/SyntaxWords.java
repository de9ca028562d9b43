package stillturning.yaml;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** The parser's complaints in the words of somebody who does not know its inside. */
final class SyntaxWords {

    /** The parser's problem with a text that ends where a value belongs. */
    static final String BROKEN_OFF = "expected the node content, but found '<stream end>'";

    /** The problem with a character that is written by a number beyond all. */
    static final String NO_CHARACTER = "no character";

    private enum At {
        PROBLEM,
        START
    }

    /**
     * @param context start of the parser's context, empty for any
     * @param problem part of the parser's problem
     */
    private record Rule(String context, String problem, At at, String wrong, String right) {}

    private static final List<Rule> RULES =
            List.of(
                    new Rule(
                            "",
                            "expected '<document start>'",
                            At.PROBLEM,
                            "this does not belong to what stands above",
                            "line it up with the lines above, or quote the text above"),
                    new Rule(
                            "",
                            "TAB",
                            At.PROBLEM,
                            "a tab stands where spaces belong",
                            "indent with spaces"),
                    new Rule(
                            "",
                            BROKEN_OFF,
                            At.PROBLEM,
                            "the text ends before this is complete",
                            "add what is missing, or close with } or ] what is open"),
                    new Rule(
                            "",
                            "expected the node content",
                            At.PROBLEM,
                            "a value is missing here",
                            "write one, or take the mark before it out"),
                    new Rule(
                            "",
                            "that cannot start any token",
                            At.PROBLEM,
                            "a text cannot start with this character",
                            "put quotes around the text"),
                    new Rule(
                            "",
                            NO_CHARACTER,
                            At.PROBLEM,
                            "behind this, a number stands for a character that there is not",
                            "write the character itself"),
                    new Rule(
                            "",
                            "valid version",
                            At.PROBLEM,
                            "a line that starts with % stands before the document",
                            "take it out"),
                    new Rule(
                            "while scanning a quoted scalar",
                            "unexpected end of stream",
                            At.START,
                            "the quotes that open here are never closed",
                            "close them"),
                    new Rule(
                            "while scanning a quoted scalar",
                            "",
                            At.START,
                            "the quoted text that starts here is broken off",
                            "close the quotes on the same line"),
                    new Rule(
                            "while scanning a double-quoted scalar",
                            "",
                            At.PROBLEM,
                            "a backslash is followed by something unknown",
                            "write \\\\ for a backslash, or use single quotes"),
                    new Rule(
                            "",
                            "mapping values are not allowed here",
                            At.PROBLEM,
                            "a second \": \" stands in one value, or this line is indented too far",
                            "put quotes around the whole value, or line it up with its neighbours"),
                    new Rule(
                            "while scanning a simple key",
                            "",
                            At.START,
                            "this line has no \": \"",
                            "write \"key: value\", or indent it under the line to which it belongs"),
                    new Rule(
                            "while parsing a block mapping",
                            "",
                            At.PROBLEM,
                            "this does not line up with the keys above",
                            "give keys of one mapping the same indentation"),
                    new Rule(
                            "while parsing a block collection",
                            "",
                            At.PROBLEM,
                            "this does not line up with the list above",
                            "start each item of a list with \"- \" at the same indentation"),
                    new Rule(
                            "",
                            "sequence entries are not allowed here",
                            At.PROBLEM,
                            "a list cannot start here",
                            "start it on a line of its own"),
                    new Rule(
                            "while parsing a flow mapping",
                            "",
                            At.START,
                            "the { that opens here is not closed as it should be",
                            "separate fields with commas and close with }"),
                    new Rule(
                            "while parsing a flow sequence",
                            "",
                            At.START,
                            "the [ that opens here is not closed as it should be",
                            "separate items with commas and close with ]"),
                    new Rule(
                            "while scanning an anchor",
                            "",
                            At.START,
                            "a text cannot start with &",
                            "put quotes around the text"),
                    new Rule(
                            "while scanning an alias",
                            "",
                            At.START,
                            "a text cannot start with *",
                            "put quotes around the text"),
                    new Rule(
                            "while scanning a tag",
                            "",
                            At.START,
                            "a text cannot start with !",
                            "put quotes around the text"),
                    new Rule(
                            "while scanning a directive",
                            "",
                            At.START,
                            "a line cannot start with %",
                            "put quotes around the text"),
                    new Rule(
                            "while scanning a block scalar",
                            "",
                            At.START,
                            "the block of text that starts here is malformed",
                            "write | alone, and the text indented below"));

    private SyntaxWords() {}

    /**
     * One of them.
     *
     * @param end behind the last character of the text
     */
    static Problem of(Path file, Place end, MarkedYamlEngineException thrown) {
        String context = Optional.ofNullable(thrown.getContext()).orElse("");
        String problem = Optional.ofNullable(thrown.getProblem()).orElse("");
        for (Rule rule : RULES) {
            if (context.startsWith(rule.context) && problem.contains(rule.problem)) {
                return at(place(thrown, rule.at, end), file, rule.wrong, rule.right);
            }
        }
        return at(place(thrown, At.PROBLEM, end), file, problem, "correct the text here");
    }

    private static Place place(MarkedYamlEngineException thrown, At at, Place end) {
        Optional<Mark> mark =
                at == At.START
                        ? thrown.getContextMark().or(thrown::getProblemMark)
                        : thrown.getProblemMark().or(thrown::getContextMark);
        return mark.map(m -> Place.of(m, end)).orElse(end);
    }

    private static Problem at(Place place, Path file, String wrong, String right) {
        return new Problem(file, place.line(), place.column(), "", wrong, right);
    }
}
