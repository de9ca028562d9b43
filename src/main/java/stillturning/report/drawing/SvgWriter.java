package stillturning.report.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes one picture as SVG; every name in it begins with the picture's id. */
final class SvgWriter {
    private static final String FONT = "\"DejaVu Sans\",Verdana,sans-serif";

    private final Picture picture;
    private final Map<String, String> classes = new LinkedHashMap<>();
    private final StringBuilder body = new StringBuilder();
    private final String size;

    /** One unit of the picture is a pixel. */
    SvgWriter(Picture picture) {
        this.picture = picture;
        this.size =
                "width=\"%s\" height=\"%s\""
                        .formatted(number(picture.width()), number(picture.height()));
    }

    /**
     * One unit of the picture is so long (mm); the size is a style, since a setter of pages takes
     * bare attributes for pixels of its own.
     */
    SvgWriter(Picture picture, double millimetres) {
        this.picture = picture;
        this.size =
                "style=\"width:%smm;height:%smm\""
                        .formatted(
                                number(picture.width() * millimetres),
                                number(picture.height() * millimetres));
    }

    String text() {
        write(picture.marks());
        String id = picture.id();
        return """
        <svg xmlns="http://www.w3.org/2000/svg" id="%1$s" %8$s \
        viewBox="0 0 %2$s %3$s" role="img" aria-labelledby="%1$s-title %1$s-desc">
        <title id="%1$s-title">%4$s</title>
        <desc id="%1$s-desc">%5$s</desc>
        <style>%6$s</style>
        %7$s</svg>
        """
                .formatted(
                        id,
                        number(picture.width()),
                        number(picture.height()),
                        escaped(picture.title()),
                        escaped(picture.description()),
                        styles(),
                        body,
                        size);
    }

    private String styles() {
        return classes.entrySet().stream()
                .map(entry -> "." + entry.getValue() + "{" + entry.getKey() + "}")
                .collect(Collectors.joining());
    }

    private void write(List<Mark> marks) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Path path) {
                write(path);
            } else if (mark instanceof Mark.Text text) {
                write(text);
            } else if (mark instanceof Mark.PartMarks part) {
                write(part);
            }
        }
    }

    private void write(Mark.Path path) {
        body.append("<path class=\"")
                .append(classOf(css(path.pen())))
                .append("\" d=\"")
                .append(path.data())
                .append("\"/>\n");
    }

    private void write(Mark.Text text) {
        body.append("<text class=\"")
                .append(classOf(css(text.type(), text.anchor())))
                .append("\" x=\"")
                .append(number(text.x()))
                .append("\" y=\"")
                .append(number(text.y()))
                .append("\">")
                .append(escaped(text.words()))
                .append("</text>\n");
    }

    private void write(Mark.PartMarks part) {
        body.append("<g id=\"")
                .append(picture.id())
                .append('-')
                .append(name(part.key()))
                .append("\" data-part=\"")
                .append(escaped(part.key()))
                .append("\">");
        if (!part.title().isEmpty()) {
            body.append("<title>").append(escaped(part.title())).append("</title>");
        }
        body.append('\n');
        write(part.marks());
        body.append("</g>\n");
    }

    private String classOf(String css) {
        return classes.computeIfAbsent(css, key -> picture.id() + "-k" + classes.size());
    }

    private static String css(Stroke pen) {
        List<String> rules = new ArrayList<>();
        rules.add("fill:" + pen.fill());
        if (pen.width() > 0) {
            rules.add("stroke:" + pen.stroke());
            rules.add("stroke-width:" + number(pen.width()));
            rules.add("stroke-linejoin:round");
        }
        if (!pen.dashes().isEmpty()) {
            rules.add(
                    "stroke-dasharray:"
                            + pen.dashes().stream()
                                    .map(SvgWriter::number)
                                    .collect(Collectors.joining(",")));
        }
        return String.join(";", rules);
    }

    private static String css(Mark.Type type, Mark.Anchor anchor) {
        String css =
                "font-family:%s;font-size:%spx;fill:%s;text-anchor:%s"
                        .formatted(
                                FONT,
                                number(type.size()),
                                type.colour(),
                                anchor.name().toLowerCase(Locale.ROOT));
        return type.bold() ? css + ";font-weight:bold" : css;
    }

    /** A number to a hundredth, without needless zeros. */
    static String number(double value) {
        long hundredths = Math.round(value * 100);
        if (hundredths % 100 == 0) {
            return Long.toString(hundredths / 100);
        }
        // a formatter takes longer than all the rest of painting
        long size = Math.abs(hundredths);
        long digits = size % 100;
        return (hundredths < 0 ? "-" : "")
                + size / 100
                + (digits < 10 ? ".0" : ".")
                + (digits % 10 == 0 ? digits / 10 : digits);
    }

    /** A name for an id attribute; different keys get different names. */
    private static String name(String key) {
        StringBuilder name = new StringBuilder();
        key.codePoints()
                .forEach(
                        point -> {
                            boolean plain =
                                    point < 128
                                            && (Character.isLetterOrDigit(point) || point == '-');
                            if (plain) {
                                name.appendCodePoint(point);
                            } else {
                                name.append('_').append(Integer.toHexString(point)).append('_');
                            }
                        });
        return name.toString();
    }

    /** Text for XML 1.0; characters that it cannot hold become the replacement character. */
    static String escaped(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(point -> out.append(escaped(point)));
        return out.toString();
    }

    private static String escaped(int point) {
        boolean allowed =
                (point >= 0x20 && point < 0xD800)
                        || (point >= 0xE000 && point < 0xFFFE)
                        || point > 0xFFFF;
        if (!allowed) {
            return point == '\t' || point == '\n' || point == '\r' ? " " : "\uFFFD";
        }
        return switch (point) {
            case '<' -> "&lt;";
            case '>' -> "&gt;";
            case '&' -> "&amp;";
            case '"' -> "&quot;";
            default -> Character.toString(point);
        };
    }
}
