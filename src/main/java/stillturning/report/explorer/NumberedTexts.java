package stillturning.report.explorer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import stillturning.report.page.Printable;

/** Texts that a tree names by number; those that are named most often have the shortest. */
final class NumberedTexts {

    /** A text that is kept in the table. */
    record NumberedText(String words) {}

    private final Map<String, Integer> uses = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new HashMap<>();

    private NumberedTexts() {}

    /**
     * The tree with a number in the place of every {@link NumberedText}, and beside its own fields
     * {@code texts}, which they count from 0.
     */
    static Map<String, Object> numbered(Map<String, Object> tree) {
        NumberedTexts table = new NumberedTexts();
        table.count(tree);
        List<String> texts =
                table.uses.entrySet().stream()
                        .sorted(
                                Comparator.comparingInt(
                                        (Entry<String, Integer> e) -> -e.getValue()))
                        .map(Entry::getKey)
                        .toList();
        for (int i = 0; i < texts.size(); i++) {
            table.numbers.put(texts.get(i), i);
        }
        Map<String, Object> whole = new LinkedHashMap<>(table.fields(tree));
        whole.put("texts", texts.stream().map(Printable::of).toList());
        return whole;
    }

    private void count(Object part) {
        if (part instanceof NumberedText text) {
            uses.merge(text.words, 1, Integer::sum);
        } else if (part instanceof List<?> list) {
            list.forEach(this::count);
        } else if (part instanceof Map<?, ?> map) {
            map.values().forEach(this::count);
        }
    }

    private Map<String, Object> fields(Map<?, ?> map) {
        Map<String, Object> fields = new LinkedHashMap<>();
        map.forEach((key, value) -> fields.put(String.valueOf(key), replaced(value)));
        return fields;
    }

    private Object replaced(Object part) {
        if (part instanceof NumberedText text) {
            return numbers.getOrDefault(text.words, 0);
        } else if (part instanceof List<?> list) {
            List<Object> parts = new ArrayList<>();
            list.forEach(one -> parts.add(replaced(one)));
            return parts;
        }
        if (part instanceof String words) {
            return Printable.of(words);
        }
        return part instanceof Map<?, ?> map ? fields(map) : part;
    }
}
