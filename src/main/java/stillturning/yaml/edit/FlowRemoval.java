package stillturning.yaml.edit;

import stillturning.yaml.Splice;
import stillturning.yaml.Tree;

/**
 * Takes one member out of a list or mapping in brackets, with its comma and the comment behind it.
 */
final class FlowRemoval {

    private final LineIndex lines;
    private final Tree.BranchNode parent;
    private final int position;

    FlowRemoval(LineIndex lines, Tree.BranchNode parent, int position) {
        this.lines = lines;
        this.parent = parent;
        this.position = position;
    }

    Splice splice() {
        int start = start(position);
        int end = end(position);
        int comma = commaBehind(end);
        boolean last = position == parent.children().size() - 1;
        if (last && comma < 0) {
            int before = end(position - 1);
            boolean oneLine = lines.end(before) >= start;
            return oneLine ? lines.replace(before, end, "") : alone(start, end);
        }
        return alone(start, comma < 0 ? end : comma + 1);
    }

    /** Takes a member out that ends with its comma: whole lines if it has them for itself. */
    private Splice alone(int start, int end) {
        int rest = end;
        while (rest < lines.end(end) && lines.text().charAt(rest) == ' ') {
            rest++;
        }
        boolean endsLine = rest == lines.end(end) || lines.text().charAt(rest) == '#';
        if (endsLine && lines.isFirstOnLine(start)) {
            return lines.replace(lines.start(start), lines.next(rest), "");
        }
        return lines.replace(start, rest, "");
    }

    private int start(int position) {
        return parent.key(position)
                .map(key -> key.span().start())
                .orElseGet(() -> parent.children().get(position).span().start());
    }

    private int end(int position) {
        return parent.children().get(position).contentEnd();
    }

    /** Index of the comma behind a member, or -1; between them are only spaces and comments. */
    private int commaBehind(int end) {
        int at = end;
        while (at < lines.text().length()) {
            char c = lines.text().charAt(at);
            if (c == ',') {
                return at;
            }
            if (c == '#') {
                at = lines.end(at);
            } else if (c == ']' || c == '}') {
                return -1;
            } else {
                at++;
            }
        }
        return -1;
    }
}
