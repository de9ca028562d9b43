package stillturning.yaml.edit;

import java.util.List;
import java.util.Optional;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.Splice;
import stillturning.yaml.Tree;
import stillturning.yaml.YamlValue;

/** Finds the chars to replace for a change of the tree. */
final class Splicing {

    private static final int STEP = 2;

    private final DocumentPlaces places;
    private final LineIndex lines;
    private final Rendering rendering;

    Splicing(DocumentPlaces places) {
        this.places = places;
        this.lines = new LineIndex(places.text());
        this.rendering = new Rendering(lines.newline());
    }

    Splice rename(Tree.LeafNode key, String name) {
        return lines.replace(key.span().start(), key.span().end(), rendering.key(name));
    }

    Splice append(Tree.MappingNode fields, YamlValue.Field field) {
        int end = fields.contentEnd();
        if (fields.flow()) {
            int last = fields.entries().get(fields.entries().size() - 1).value().contentEnd();
            return lines.replace(
                    last,
                    last,
                    ", " + rendering.key(field.key()) + ": " + rendering.flow(field.value()));
        }
        int at = lines.endWithOwnComments(end, indent(fields));
        String line =
                isOneLineEach(fields)
                        ? " ".repeat(indent(fields))
                                + rendering.key(field.key())
                                + ": "
                                + rendering.flow(field.value())
                        : rendering.field(field, indent(fields));
        return lines.replace(at, at, lines.newline() + line);
    }

    Splice append(Tree.ListNode list, YamlValue item) {
        if (list.flow()) {
            int last = list.items().get(list.items().size() - 1).contentEnd();
            return lines.replace(last, last, ", " + rendering.flow(item));
        }
        int at = lines.endWithOwnComments(list.contentEnd(), indent(list));
        String line =
                isOneLineEach(list)
                        ? " ".repeat(indent(list)) + "- " + rendering.flow(item)
                        : rendering.item(item, indent(list));
        return lines.replace(at, at, lines.newline() + line);
    }

    /** Whether most of the members that could have lines of their own are written in brackets. */
    private static boolean isOneLineEach(Tree.BranchNode parent) {
        List<Tree> nested =
                parent.children().stream().filter(Tree.BranchNode.class::isInstance).toList();
        long flow = nested.stream().filter(Tree::flow).count();
        return 2 * flow > nested.size();
    }

    /** Replaces a value; what is flow stays flow, what is block stays block. */
    Splice replace(String path, Tree target, YamlValue value) {
        Optional<Tree.BranchNode> parent = places.parent(path);
        if (parent.isPresent() && parent.get().flow()) {
            return inFlow(path, target, value);
        }
        boolean wasBlock = !target.flow() && target instanceof Tree.BranchNode;
        boolean staysFlow = target.flow() && Rendering.isBlock(target.value());
        if (wasBlock && Rendering.isBlock(value)) {
            return blockByBlock(parent, target, value);
        }
        int after = behindMark(path, parent, target);
        if (wasBlock) {
            return blockByInline(after, target, value);
        }
        if (staysFlow || !Rendering.isBlock(value)) {
            String inline = staysFlow ? rendering.flow(value) : rendering.inline(value);
            boolean glued = after == target.span().start() && after > 0 && parent.isPresent();
            return lines.replace(
                    target.span().start(), target.contentEnd(), (glued ? " " : "") + inline);
        }
        return inlineByBlock(after, parent, target, value);
    }

    private Splice inFlow(String path, Tree target, YamlValue value) {
        int start = target.span().start();
        String before = "";
        Optional<Tree.LeafNode> key = places.keyLeaf(path);
        if (key.isPresent()
                && places.text().substring(key.get().span().end(), start).indexOf(':') < 0) {
            before = ": "; // {a} is a mapping with an empty value
        } else if (key.isPresent() && places.text().charAt(start - 1) == ':') {
            before = " ";
        }
        return lines.replace(start, target.contentEnd(), before + rendering.flow(value));
    }

    private Splice blockByBlock(Optional<Tree.BranchNode> parent, Tree target, YamlValue value) {
        int start = target.span().start();
        int indent = indent(target);
        int least =
                parent.filter(
                                p ->
                                        p instanceof Tree.MappingNode
                                                && value instanceof YamlValue.Fields)
                        .map(p -> indent(p) + 1)
                        .orElse(0);
        if (indent >= least) {
            return lines.replace(
                    start,
                    lines.end(target.contentEnd()),
                    rendering.block(value, indent).substring(indent));
        }
        String deeper = rendering.block(value, indent + STEP);
        return lines.replace(lines.start(start), lines.end(target.contentEnd()), deeper);
    }

    // a comment behind the key stays; comments among the old lines go with them
    private Splice blockByInline(int after, Tree target, YamlValue value) {
        int start = target.span().start();
        String comment =
                lines.end(after) < start
                        ? places.text().substring(after, lines.end(after)).stripTrailing()
                        : "";
        String space = after == 0 ? "" : " ";
        return lines.replace(
                after, lines.end(target.contentEnd()), space + rendering.inline(value) + comment);
    }

    private Splice inlineByBlock(
            int after, Optional<Tree.BranchNode> parent, Tree target, YamlValue value) {
        int end = lines.end(target.contentEnd());
        String comment = places.text().substring(target.contentEnd(), end).stripTrailing();
        int indent = parent.map(p -> indent(p) + STEP).orElse(0);
        String block = rendering.block(value, indent);
        boolean behindDash =
                parent.filter(Tree.ListNode.class::isInstance).isPresent() && comment.isEmpty();
        String between = behindDash ? " " : lines.newline();
        String text = behindDash ? block.substring(indent) : block;
        return lines.replace(after, end, after == 0 ? text + comment : comment + between + text);
    }

    /**
     * Index behind the colon or dash that leads to a value in block style; 0 for the whole
     * document.
     */
    private int behindMark(String path, Optional<Tree.BranchNode> parent, Tree target) {
        if (parent.isEmpty()) {
            return target.span().start();
        }
        return places.keyLeaf(path)
                .map(key -> places.text().indexOf(':', key.span().end()) + 1)
                .orElseGet(() -> dash(parent.get(), target) + 1);
    }

    /** Index of the dash of an item of a block list. */
    private int dash(Tree.BranchNode list, Tree item) {
        int column = indent(list);
        int line = lines.start(item.span().start());
        while (line > 0
                && (line + column > item.span().start()
                        || places.text().charAt(line + column) != '-')) {
            line = lines.start(lines.endOfPrevious(line));
        }
        return line + column;
    }

    Splice remove(Tree.BranchNode parent, int position) {
        if (parent.flow()) {
            return new FlowRemoval(lines, parent, position).splice();
        }
        int start = entryStart(parent, position);
        int end =
                lines.endWithOwnComments(
                        parent.children().get(position).contentEnd(), indent(parent));
        if (lines.isFirstOnLine(start)) {
            return lines.replace(lines.start(start), lines.next(end), "");
        }
        int next = entryStart(parent, position + 1);
        return lines.replace(start, lines.isBlank(end, next) ? next : end, "");
    }

    private int entryStart(Tree.BranchNode parent, int position) {
        return parent.key(position)
                .map(key -> key.span().start())
                .orElseGet(() -> dash(parent, parent.children().get(position)));
    }

    private static int indent(Tree block) {
        return block.span().column() - 1;
    }
}
