package stillturning.yaml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Where each value and each key of a document stands. A path joins keys with points and counts list
 * items from 0: {@code parts.bus-feed.gauge}, {@code joins[2].length}; a key with other characters
 * than letters, digits, hyphens, underscores and spaces is quoted: {@code parts."j1.a"}.
 */
public final class DocumentPlaces {

    private record Spot(
            Tree value,
            Tree.@Nullable BranchNode parent,
            Tree.@Nullable LeafNode key,
            int position) {}

    private static final Pattern STEP =
            Pattern.compile("\"(?<quoted>[^\"]*)\"|\\[(?<item>[0-9]+)\\]|(?<plain>[^.\\[\"]+)");

    private final Path file;
    private final String text;
    private final Map<String, Spot> spots = new HashMap<>();

    public DocumentPlaces(Path file, String text, Optional<Tree> root) {
        this.file = file;
        this.text = text;
        root.ifPresent(tree -> add("", new Spot(tree, null, null, 0)));
    }

    private void add(String path, Spot spot) {
        spots.put(path, spot);
        if (spot.value instanceof Tree.BranchNode group) {
            List<Tree> children = group.children();
            for (int i = 0; i < children.size(); i++) {
                Tree.@Nullable LeafNode key = group.key(i).orElse(null);
                String at = key == null ? item(path, i) : under(path, key.text());
                add(at, new Spot(children.get(i), group, key, i));
            }
        }
    }

    /** Path of a key inside the mapping at a path. */
    public static String under(String path, String key) {
        String step = isPlain(key) ? key : "\"" + key + "\"";
        return path.isEmpty() ? step : path + "." + step;
    }

    private static boolean isPlain(String key) {
        for (int i = 0; i < key.length(); i++) {
            char c = key.charAt(i);
            if (!Character.isLetterOrDigit(c) && c != '-' && c != '_' && c != ' ') {
                return false;
            }
        }
        return !key.isEmpty();
    }

    /** Path of an item, counted from 0, of the list at a path. */
    public static String item(String path, int index) {
        return path + "[" + index + "]";
    }

    /** The keys that a path joins, an item of a list by its number. */
    public static List<String> keys(String path) {
        List<String> keys = new ArrayList<>();
        Matcher step = STEP.matcher(path);
        while (step.find()) {
            keys.add(
                    Stream.of("quoted", "item", "plain")
                            .map(step::group)
                            .filter(Objects::nonNull)
                            .findFirst()
                            .orElse(""));
        }
        return keys;
    }

    /** Place where the value at a path starts, if the document has one. */
    public Optional<Place> value(String path) {
        return tree(path).map(t -> t.span().place());
    }

    /** The text at a path, if a text stands there. */
    public Optional<String> text(String path) {
        return tree(path)
                .filter(Tree.LeafNode.class::isInstance)
                .map(t -> ((Tree.LeafNode) t).text());
    }

    /** Place of the key at a path, if the document has one. */
    public Optional<Place> key(String path) {
        return keyLeaf(path).map(k -> k.span().place());
    }

    /** A problem at the value of a path, or at the nearest enclosing value that is written down. */
    public Problem problem(String path, String wrong, String right) {
        Place at = value(nearest(path)).orElse(new Place(1, 1));
        return new Problem(file, at.line(), at.column(), path, wrong, right);
    }

    /**
     * A problem at the key of a path, or where {@link #problem} would put it if there is no key.
     */
    public Problem problemAtKey(String path, String wrong, String right) {
        return key(path)
                .map(at -> new Problem(file, at.line(), at.column(), path, wrong, right))
                .orElseGet(() -> problem(path, wrong, right));
    }

    /**
     * A problem inside the text at a path; exact to the column where the text stands on one line.
     *
     * @param offset index of the char inside the text, from 0
     */
    public Problem problemInside(String path, int offset, String wrong, String right) {
        Place at =
                tree(path)
                        .map(t -> t.place(text, offset))
                        .or(() -> value(nearest(path)))
                        .orElse(new Place(1, 1));
        return new Problem(file, at.line(), at.column(), path, wrong, right);
    }

    private String nearest(String path) {
        String at = path;
        while (!at.isEmpty() && !spots.containsKey(at)) {
            at = at.substring(0, Math.max(0, Math.max(at.lastIndexOf('.'), at.lastIndexOf('['))));
        }
        return at;
    }

    public Set<String> paths() {
        return new TreeSet<>(spots.keySet());
    }

    public Optional<Tree> tree(String path) {
        return Optional.ofNullable(spots.get(path)).map(Spot::value);
    }

    public Optional<Tree.BranchNode> parent(String path) {
        return Optional.ofNullable(spots.get(path)).map(Spot::parent);
    }

    public Optional<Tree.LeafNode> keyLeaf(String path) {
        return Optional.ofNullable(spots.get(path)).map(Spot::key);
    }

    /** Path of a node of this document. */
    @SuppressWarnings("ReferenceEquality") // equal nodes may stand in several places
    public String pathOf(Tree node) {
        return spots.entrySet().stream()
                .filter(spot -> spot.getValue().value == node)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
    }

    /** Position of the value among its neighbours, from 0. */
    public int position(String path) {
        return Optional.ofNullable(spots.get(path)).map(Spot::position).orElse(0);
    }

    public Path file() {
        return file;
    }

    public String text() {
        return text;
    }
}
