package stillturning.report;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import stillturning.parts.Part;

/** Parts in words. */
public final class PartNames {

    private PartNames() {}

    /** Names by kind; wires are only counted, since they follow from the others. */
    public static Map<String, String> byKind(
            List<Part> parts, Function<List<String>, String> words) {
        Map<String, List<Part>> kinds =
                parts.stream()
                        .collect(
                                Collectors.groupingBy(
                                        part -> part.kind().plural(),
                                        TreeMap::new,
                                        Collectors.toList()));
        Map<String, String> named = new TreeMap<>();
        kinds.forEach((kind, of) -> named.put(kind, words(of, words)));
        return named;
    }

    private static String words(List<Part> parts, Function<List<String>, String> words) {
        return parts.get(0).role() == Part.Role.WIRE
                ? String.valueOf(parts.size())
                : words.apply(parts.stream().map(Part::id).toList());
    }
}
