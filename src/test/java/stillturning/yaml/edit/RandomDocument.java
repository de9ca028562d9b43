package stillturning.yaml.edit;

import java.util.SplittableRandom;

/**
 * Writes documents as many hands would: block and flow, quotes, comments, blank lines, odd indents.
 */
final class RandomDocument {

    private static final String[] PLAIN = {
        "20 Ah",
        "AWG 16",
        "on",
        "5",
        "1.2 A (guess)",
        "a b c",
        "-5 °C",
        "x:y",
        "é",
        "80 %",
        "\ud83d\udd0b"
    };
    private static final String[] QUOTED = {
        "'it''s'",
        "\"say \\\"so\\\"\"",
        "'# no comment'",
        "\"a: b\"",
        "\"\\u00b5\"",
        "''",
        "'a, [b]'"
    };

    private final SplittableRandom random;
    private final StringBuilder out = new StringBuilder();
    private final String newline;
    private int names;

    RandomDocument(SplittableRandom random) {
        this.random = random;
        this.newline = random.nextInt(5) == 0 ? "\r\n" : "\n";
    }

    String text() {
        if (random.nextBoolean()) {
            out.append("# a head line").append(newline);
        }
        if (random.nextInt(6) == 0) {
            list(0, 0);
        } else {
            mapping(0, 0, true);
        }
        boolean open = random.nextInt(6) == 0;
        return open ? out.substring(0, out.length() - newline.length()) : out.toString();
    }

    private void mapping(int indent, int depth, boolean indentFirst) {
        int count = random.nextInt(1, 5);
        for (int i = 0; i < count; i++) {
            if (i > 0 || indentFirst) {
                between(indent);
                out.append(" ".repeat(indent));
            }
            out.append(key()).append(':');
            valueBehindKey(indent, depth);
        }
    }

    private void list(int indent, int depth) {
        int count = random.nextInt(1, 4);
        for (int i = 0; i < count; i++) {
            between(indent);
            out.append(" ".repeat(indent)).append('-');
            int kind = depth > 3 ? 0 : random.nextInt(4);
            if (kind == 1) {
                out.append(' ');
                mapping(indent + 2, depth + 1, false);
            } else if (kind == 2) {
                endLine();
                int deeper = indent + random.nextInt(1, 4);
                if (random.nextBoolean()) {
                    list(deeper, depth + 1);
                } else {
                    mapping(deeper, depth + 1, true);
                }
            } else {
                out.append(' ').append(kind == 3 ? flow(depth) : scalar());
                endLine();
            }
        }
    }

    private void valueBehindKey(int indent, int depth) {
        int kind = depth > 3 ? random.nextInt(3) : random.nextInt(8);
        if (kind == 0) {
            endLine(); // nothing written
        } else if (kind <= 2) {
            out.append(" ".repeat(random.nextInt(1, 4))).append(scalar());
            endLine();
        } else if (kind == 3) {
            out.append(' ').append(flow(depth));
            endLine();
        } else if (kind == 4) {
            literal(indent + 2);
        } else if (kind == 5) {
            endLine();
            list(indent + random.nextInt(0, 4), depth + 1);
        } else {
            endLine();
            mapping(indent + random.nextInt(1, 5), depth + 1, true);
        }
    }

    private void literal(int indent) {
        out.append(random.nextBoolean() ? " |" : " >").append(newline);
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            out.append(" ".repeat(indent)).append("text # no comment").append(newline);
        }
    }

    private String flow(int depth) {
        StringBuilder flow = new StringBuilder();
        boolean list = random.nextBoolean();
        int count = random.nextInt(4);
        flow.append(list ? "[" : "{");
        for (int i = 0; i < count; i++) {
            flow.append(i > 0 ? ", " : random.nextBoolean() ? " " : "");
            flow.append(list ? "" : "f" + names++ + ": ");
            flow.append(
                    depth < 3 && random.nextInt(4) == 0
                            ? flow(depth + 1)
                            : random.nextInt(3) == 0 ? quoted() : "w" + names++);
        }
        flow.append(count > 0 && random.nextInt(4) == 0 ? "," : "").append(list ? "]" : "}");
        return flow.toString();
    }

    private String scalar() {
        return random.nextInt(3) == 0 ? quoted() : PLAIN[random.nextInt(PLAIN.length)];
    }

    private String quoted() {
        return QUOTED[random.nextInt(QUOTED.length)];
    }

    private String key() {
        String name = "key-" + names++;
        return switch (random.nextInt(6)) {
            case 0 -> "'" + name + "'";
            case 1 -> "\"" + name + ".x\"";
            case 2 -> "two words " + names++;
            default -> name;
        };
    }

    private void endLine() {
        out.append(random.nextInt(3) == 0 ? "  # note " + names++ : "").append(newline);
    }

    private void between(int indent) {
        switch (random.nextInt(6)) {
            case 0 -> out.append(newline);
            case 1 ->
                    out.append(" ".repeat(indent))
                            .append("# about what follows ")
                            .append(names++)
                            .append(newline);
            default -> {}
        }
    }
}
