package stillturning.files.candidate;

import java.util.List;
import java.util.stream.Stream;

/**
 * What became of one line of a candidate's file.
 *
 * @param path place of the line
 * @param parts every part that it made
 */
public record Expanded(String path, List<ExpandedPart> parts) {

    /**
     * A part that was made from a line.
     *
     * @param kind what it is, in the word of the files
     * @param values each value with its name, unit and source
     */
    public record ExpandedPart(String id, String kind, List<String> values) {
        public ExpandedPart {
            values = List.copyOf(values);
        }

        /** The same with one thing more that is to be said of it. */
        ExpandedPart with(String said) {
            return new ExpandedPart(
                    id, kind, Stream.concat(values.stream(), Stream.of(said)).toList());
        }
    }

    public Expanded {
        parts = List.copyOf(parts);
    }
}
