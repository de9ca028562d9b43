package stillturning.yaml;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ParserException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Turns text into a tree, refusing what a file written by hand does not need and what could run
 * away.
 */
final class Composer {

    static final int DEEPEST = 50;
    static final int MOST_NODES = 200_000;
    private static final int MOST_PROBLEMS = 100;
    private static final String VERSION = "a line that starts with % stands before the document";
    private static final String TAKE_OUT = "take it out";

    /** Enough was found to stop reading. */
    private static final class Stop extends Exception {
        private static final long serialVersionUID = 1;

        Stop() {
            super(null, null, false, false);
        }
    }

    private final Path file;
    private final String text;
    private final Place end;
    private final CharIndex index;
    private final List<Problem> problems = new ArrayList<>();
    private final Iterator<Event> events;
    private Optional<Mark> reached = Optional.empty();
    private boolean usable = true;
    private boolean cutOff;
    private Optional<Tree> asFarAsRead = Optional.empty();
    private int nodes;

    Composer(Path file, String text) {
        this.file = file;
        this.text = text;
        this.end = Place.endOf(text);
        // so that a block of text on the last line is the same with and without a line break behind
        // it
        String whole = text.endsWith("\n") ? text : text + "\n";
        this.index = new CharIndex(whole);
        LoadSettings settings =
                LoadSettings.builder()
                        .setCodePointLimit(Integer.MAX_VALUE)
                        .setLabel(String.valueOf(file.getFileName()))
                        .build();
        this.events = new Parse(settings).parseString(whole).iterator();
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The tree, absent if a problem makes it unusable. */
    Optional<Tree> compose() {
        try {
            documents();
            return asFarAsRead.filter(tree -> usable);
        } catch (Stop enough) {
            return Optional.empty();
        } catch (YamlEngineException syntax) {
            cutOff(syntax);
            return Optional.empty();
        }
    }

    /** What stands before the first fault of a text that is no YAML from there on. */
    Optional<Tree> asFarAsRead() {
        return asFarAsRead;
    }

    private void cutOff(YamlEngineException fault) {
        usable = false;
        cutOff = true;
        problems.add(
                fault instanceof MarkedYamlEngineException syntax
                        ? SyntaxWords.of(file, end, syntax)
                        : new Problem(file, 1, 1, "", VERSION, TAKE_OUT));
    }

    private void documents() throws Stop {
        boolean started = false;
        while (!cutOff && hasNext()) {
            Event event = next();
            if (event instanceof DocumentStartEvent start) {
                if (started) {
                    report(
                            span(event),
                            "",
                            "a second document starts here",
                            "keep one document in a file: take the line \"---\" out");
                    throw new Stop();
                }
                started = true;
                refuseDirectives(start);
                asFarAsRead = Optional.of(tree(next(), "", 0));
            }
        }
        if (!started) {
            problems.add(
                    new Problem(
                            file,
                            1,
                            1,
                            "",
                            "nothing is written in the file",
                            "write at least one \"key: value\""));
        }
    }

    private Event next() {
        Event event = parsed(events::next);
        reached = event.getEndMark();
        return event;
    }

    private boolean hasNext() {
        return parsed(events::hasNext);
    }

    /**
     * The parser looks for what is not there where a text ends behind brackets, and does not look
     * whether a number in quotes is too long.
     */
    private <T> T parsed(Supplier<T> parsing) {
        try {
            return parsing.get();
        } catch (IndexOutOfBoundsException | NoSuchElementException brokenOff) {
            throw new ParserException(SyntaxWords.BROKEN_OFF, Optional.empty());
        } catch (NumberFormatException tooLong) {
            throw new ParserException(SyntaxWords.NO_CHARACTER, reached);
        }
    }

    private void refuseDirectives(DocumentStartEvent start) throws Stop {
        if (start.getSpecVersion().isPresent() || !start.getTags().isEmpty()) {
            report(span(start), "", VERSION, TAKE_OUT);
            usable = false;
        }
    }

    private Tree tree(Event event, String path, int depth) throws Stop {
        Span span = span(event);
        if (++nodes > MOST_NODES) {
            report(span, path, "the file has more than " + MOST_NODES + " values", "split it");
            throw new Stop();
        }
        if (depth > DEEPEST) {
            report(
                    span,
                    "",
                    "lists and mappings are nested more than " + DEEPEST + " deep",
                    "nest less");
            throw new Stop();
        }
        refuseSharing(event, span, path);
        if (event instanceof MappingStartEvent mapping) {
            return fields(mapping, span, path, depth);
        }
        if (event instanceof CollectionStartEvent list) {
            return items(list, span, path, depth);
        }
        return event instanceof ScalarEvent scalar
                ? leaf(scalar, path)
                : new Tree.LeafNode(span, "", Tree.Style.PLAIN);
    }

    private void refuseSharing(Event event, Span span, String path) throws Stop {
        boolean alias = event instanceof AliasEvent;
        boolean anchor = !alias && event instanceof NodeEvent node && node.getAnchor().isPresent();
        Optional<String> tag =
                event instanceof ScalarEvent s
                        ? s.getTag()
                        : event instanceof CollectionStartEvent c ? c.getTag() : Optional.empty();
        if (alias) {
            report(
                    span,
                    path,
                    "a reference (*) to another place stands here",
                    "write the value out");
        } else if (anchor) {
            report(
                    span,
                    path,
                    "an anchor (&) stands here",
                    "take it out, and write the value out where it is used");
        } else if (tag.isPresent()) {
            report(
                    span,
                    path,
                    "a type tag (!) stands here",
                    "take it out, or put quotes around the text");
        }
        usable &= !alias && !anchor && tag.isEmpty();
    }

    private Tree items(CollectionStartEvent start, Span span, String path, int depth) throws Stop {
        List<Tree> items = new ArrayList<>();
        Span whole = span;
        try {
            Event event = next();
            while (!cutOff && event.getEventId() != Event.ID.SequenceEnd) {
                items.add(tree(event, DocumentPlaces.item(path, items.size()), depth + 1));
                event = cutOff ? event : next();
            }
            whole = upTo(span, event);
        } catch (YamlEngineException syntax) {
            cutOff(syntax);
        }
        return new Tree.ListNode(whole, start.isFlow(), List.copyOf(items));
    }

    private Tree fields(MappingStartEvent start, Span span, String path, int depth) throws Stop {
        List<Tree.MappingEntry> entries = new ArrayList<>();
        Map<String, Span> seen = new HashMap<>();
        Span whole = span;
        try {
            Event event = next();
            while (!cutOff && event.getEventId() != Event.ID.MappingEnd) {
                Tree.LeafNode key = key(event, path, depth);
                String at = DocumentPlaces.under(path, key.text());
                Tree value = tree(next(), at, depth + 1);
                if (!start.isFlow() || !DecimalComma.join(text, entries, key, value)) {
                    Span before = seen.putIfAbsent(key.text(), key.span());
                    if (before == null) {
                        entries.add(new Tree.MappingEntry(key, value));
                    } else {
                        reportTwice(key, before, at);
                    }
                }
                event = cutOff ? event : next();
            }
            whole = upTo(span, event);
        } catch (YamlEngineException syntax) {
            cutOff(syntax);
        }
        return new Tree.MappingNode(whole, start.isFlow(), List.copyOf(entries));
    }

    private void reportTwice(Tree.LeafNode key, Span before, String path) throws Stop {
        String places = "line " + before.line() + ", column " + before.column();
        report(
                key.span(),
                path,
                "\"" + Excerpt.of(key.text()) + "\" is already written in " + places,
                "keep one of the two");
    }

    private Tree.LeafNode key(Event event, String path, int depth) throws Stop {
        Tree key = tree(event, path, depth + 1);
        if (!(key instanceof Tree.LeafNode leaf)) {
            report(
                    key.span(),
                    path,
                    "a list or mapping stands where a key belongs",
                    "write a plain word as key");
            usable = false;
            return new Tree.LeafNode(key.span(), "", Tree.Style.PLAIN);
        }
        if (leaf.text().equals("<<") && leaf.style() == Tree.Style.PLAIN) {
            report(leaf.span(), path, "a merge key (<<) stands here", "write the fields out");
            usable = false;
        }
        return leaf;
    }

    private Tree.LeafNode leaf(ScalarEvent scalar, String path) throws Stop {
        Tree.Style style =
                switch (scalar.getScalarStyle()) {
                    case SINGLE_QUOTED -> Tree.Style.SINGLE_QUOTED;
                    case DOUBLE_QUOTED -> Tree.Style.DOUBLE_QUOTED;
                    case LITERAL, FOLDED -> Tree.Style.BLOCK;
                    default -> Tree.Style.PLAIN;
                };
        Span span = span(scalar);
        OptionalInt invisible = Invisible.firstIn(scalar.getValue());
        if (invisible.isPresent()) {
            report(
                    span,
                    path,
                    String.format(
                            Locale.ROOT,
                            "the text holds the character U+%04X, which is not seen and changes how"
                                    + " others are shown",
                            invisible.getAsInt()),
                    "take it out");
            usable = false;
        }
        return new Tree.LeafNode(
                style == Tree.Style.BLOCK ? withoutBreaks(span) : span, scalar.getValue(), style);
    }

    // the parser ends a block of text where the next token starts, blank lines included
    private Span withoutBreaks(Span span) {
        int end = span.end();
        while (end > span.start() && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return new Span(span.start(), end, span.line(), span.column());
    }

    private Span span(Event event) {
        Mark start = event.getStartMark().orElseThrow();
        Place place = Place.of(start, end);
        int after = index(event.getEndMark().orElseThrow());
        return new Span(index(start), after, place.line(), place.column());
    }

    private int index(Mark mark) {
        return Math.min(text.length(), index.of(mark.getIndex()));
    }

    private Span upTo(Span span, Event end) {
        return new Span(span.start(), span(end).end(), span.line(), span.column());
    }

    private void report(Span at, String path, String wrong, String right) throws Stop {
        problems.add(new Problem(file, at.line(), at.column(), path, wrong, right));
        if (problems.size() >= MOST_PROBLEMS) {
            throw new Stop();
        }
    }
}
