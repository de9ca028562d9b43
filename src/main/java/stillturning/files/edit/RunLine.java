package stillturning.files.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The text of a run, taken apart only as far as names and items go. */
public record RunLine(String text) {

    private static final String NAME = "(?<part>[a-z0-9][a-z0-9-]*)(\\.(?<terminal>[a-z0-9-]+))?";
    private static final Pattern END = Pattern.compile("\\b(?<word>from|to)\\s+" + NAME);
    private static final Pattern INNER = Pattern.compile("\\s*(?<word>via|return)\\s+" + NAME);
    private static final Pattern FIRST_WORD = Pattern.compile("\\s*(?<word>[a-z]+)(\\s.*)?");
    private static final String DIRECT = "direct";
    private static final String WIRE = "wire";

    /**
     * A part that the run names.
     *
     * @param word what leads to it: from, to, via or return
     * @param item which stretch between commas it stands in, from 0
     * @param start index of the name's first char
     */
    public record NamedPart(
            String word, String part, Optional<String> terminal, int item, int start) {}

    /** The stretches between commas outside brackets; the first says where the run leads. */
    public List<String> pieces() {
        List<String> pieces = new ArrayList<>();
        int depth = 0;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth = c == '(' ? depth + 1 : c == ')' ? Math.max(0, depth - 1) : depth;
            if (c == ',' && depth == 0) {
                pieces.add(text.substring(start, i));
                start = i + 1;
            }
        }
        pieces.add(text.substring(start));
        return pieces;
    }

    private static RunLine of(List<String> pieces) {
        return new RunLine(String.join(",", pieces).strip());
    }

    /** Every part that it names, in order. */
    public List<NamedPart> anchors() {
        List<NamedPart> anchors = new ArrayList<>();
        List<String> pieces = pieces();
        int at = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Matcher matcher = (i == 0 ? END : INNER).matcher(pieces.get(i));
            boolean more = i == 0 ? matcher.find() : matcher.lookingAt();
            while (more) {
                anchors.add(anchor(matcher, i, at));
                more = i == 0 && matcher.find();
            }
            at += pieces.get(i).length() + 1;
        }
        return anchors;
    }

    private static NamedPart anchor(Matcher matcher, int item, int at) {
        return new NamedPart(
                matcher.group("word"),
                matcher.group("part"),
                Optional.ofNullable(matcher.group("terminal")),
                item,
                at + matcher.start("part"));
    }

    /** The same with other names for parts. */
    public RunLine renamed(UnaryOperator<String> names) {
        String result = text;
        List<NamedPart> anchors = anchors();
        for (int i = anchors.size() - 1; i >= 0; i--) {
            NamedPart anchor = anchors.get(i);
            String name = names.apply(anchor.part);
            int end = anchor.start + anchor.part.length();
            result = result.substring(0, anchor.start) + name + result.substring(end);
        }
        return new RunLine(result);
    }

    /** Whether it starts or ends at such a part. */
    public boolean ends(Predicate<String> part) {
        return anchors().stream().anyMatch(a -> a.item == 0 && part.test(a.part));
    }

    /** The same without leading through or returning to such parts. */
    public RunLine without(Predicate<String> part) {
        List<Integer> items =
                anchors().stream()
                        .filter(a -> a.item > 0 && part.test(a.part))
                        .map(NamedPart::item)
                        .toList();
        return withoutItems(items);
    }

    private RunLine withoutItems(List<Integer> items) {
        List<String> left = new ArrayList<>();
        List<String> pieces = pieces();
        for (int i = 0; i < pieces.size(); i++) {
            if (!items.contains(i)) {
                left.add(pieces.get(i));
            }
        }
        return of(left);
    }

    /** The same without what one of its own parts is made from; empty if nothing writes it. */
    public Optional<RunLine> withoutMade(String id, String prefix) {
        List<Optional<String>> made = made(prefix);
        for (int i = 1; i < made.size(); i++) {
            if (made.get(i).equals(Optional.of(id))) {
                return Optional.of(withoutItems(List.of(i)));
            }
        }
        return Optional.empty();
    }

    /** The same with one more item before the one of an index; 1 stands right behind the ends. */
    public RunLine with(int index, String item) {
        List<String> pieces = new ArrayList<>(pieces());
        pieces.add(Math.max(1, Math.min(index, pieces.size())), " " + item);
        return of(pieces);
    }

    /** Where something that is put in line goes: before the last wire, or at the end. */
    public int placeInLine() {
        List<String> pieces = pieces();
        int last = pieces.size();
        for (int i = 1; i < pieces.size(); i++) {
            String word = word(pieces.get(i));
            if (word.equals(WIRE) || word.equals("return")) {
                last = Math.min(last, i);
            }
        }
        return last;
    }

    /** Names of all parts that it makes. */
    public List<String> makes(String prefix) {
        List<String> names = new ArrayList<>();
        made(prefix).forEach(name -> name.ifPresent(names::add));
        boolean told =
                pieces().stream()
                        .skip(1)
                        .map(RunLine::word)
                        .anyMatch(w -> w.equals(WIRE) || w.equals(DIRECT));
        if (!told) {
            names.add(prefix + "-" + WIRE);
        }
        return names;
    }

    private List<Optional<String>> made(String prefix) {
        Map<String, Integer> counts = new HashMap<>();
        List<Optional<String>> made = new ArrayList<>();
        for (String piece : pieces()) {
            String word = made.isEmpty() ? "" : word(piece);
            boolean makes = word.equals(WIRE) || word.equals("breaker") || word.equals("fuse");
            int count = counts.merge(word, 1, Integer::sum);
            made.add(
                    makes
                            ? Optional.of(prefix + "-" + word + (count == 1 ? "" : "-" + count))
                            : Optional.empty());
        }
        return made;
    }

    private static String word(String piece) {
        Matcher word = FIRST_WORD.matcher(piece);
        return word.matches() ? word.group("word") : "";
    }
}
