package stillturning.yaml;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One YAML file as it was written, with whatever is wrong with it as YAML. Only the plain part of
 * YAML 1.2 is read: no anchors, references, tags, merge keys or second documents.
 */
public final class YamlDocument {

    private static final int MOST_BYTES = 4_000_000;
    private static final String BYTE_ORDER_MARK = "\ufeff";

    private final Path file;
    private final String text;
    private final boolean marked;
    private final Optional<Tree> root;
    private final List<Problem> problems;
    private final Places places;

    private YamlDocument(
            Path file, String text, boolean marked, Optional<Tree> root, List<Problem> problems) {
        this.file = file;
        this.text = text;
        this.marked = marked;
        this.root = root;
        this.problems = problems;
        this.places = new Places(file, text, root);
    }

    /**
     * Reads a file in UTF-8; a file that is too large or no text becomes a document with a problem.
     *
     * @throws IOException if the file cannot be read
     */
    public static YamlDocument read(Path file) throws IOException {
        byte[] bytes;
        try (var in = Files.newInputStream(file)) {
            bytes = in.readNBytes(MOST_BYTES + 1);
        }
        if (bytes.length > MOST_BYTES) {
            return refused(file, 1, 1, "the file is larger than 4 MB", "split it");
        }
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        if (decoder.decode(in, out, true).isError()) {
            Place at = endOf(out.flip().toString());
            String wrong =
                    String.format(
                            Locale.ROOT,
                            "the byte 0x%02X is no text in UTF-8",
                            bytes[in.position()] & 0xff);
            return refused(file, at.line(), at.column(), wrong, "save the file as UTF-8");
        }
        return of(file, out.flip().toString());
    }

    /** Reads text as if it came from a file. */
    public static YamlDocument of(Path file, String text) {
        if (text.length() > MOST_BYTES) {
            return refused(file, 1, 1, "the text is larger than 4 MB", "split it");
        }
        boolean marked = text.startsWith(BYTE_ORDER_MARK);
        String read = marked ? text.substring(1) : text;
        Optional<Problem> unprintable = unprintable(file, read);
        if (unprintable.isPresent()) {
            return new YamlDocument(
                    file, read, marked, Optional.empty(), List.of(unprintable.get()));
        }
        Composer composer = new Composer(file, read);
        Optional<Tree> root = composer.compose();
        return new YamlDocument(file, read, marked, root, composer.problems());
    }

    private static YamlDocument refused(
            Path file, int line, int column, String wrong, String right) {
        return new YamlDocument(
                file,
                "",
                false,
                Optional.empty(),
                List.of(new Problem(file, line, column, "", wrong, right)));
    }

    private static Optional<Problem> unprintable(Path file, String text) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int c = text.codePointAt(at);
            if (!isPrintable(c)) {
                Place place = endOf(text.substring(0, at));
                String wrong =
                        String.format(
                                Locale.ROOT, "the character U+%04X does not belong in a text", c);
                return Optional.of(
                        new Problem(file, place.line(), place.column(), "", wrong, "take it out"));
            }
        }
        return Optional.empty();
    }

    /** c-printable of YAML 1.2.2, section 5.1 (from memory). */
    private static boolean isPrintable(int c) {
        return c == '\t'
                || c == '\n'
                || c == '\r'
                || (c >= 0x20 && c <= 0x7e)
                || c == 0x85
                || (c >= 0xa0 && c <= 0xd7ff)
                || (c >= 0xe000 && c <= 0xfffd && c != 0xfeff)
                || c >= 0x10000;
    }

    private static Place endOf(String text) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        String last = lines[lines.length - 1];
        return new Place(lines.length, last.codePointCount(0, last.length()) + 1);
    }

    /** The file it was read from. */
    public Path file() {
        return file;
    }

    /** The text as it was read, without a byte order mark. */
    public String text() {
        return text;
    }

    /** What is wrong with it as YAML, in order; with duplicate keys alone it can still be bound. */
    public List<Problem> problems() {
        return Collections.unmodifiableList(problems);
    }

    /** Where its values and keys stand. */
    public Places places() {
        return places;
    }

    /** The bytes to write, with a byte order mark if the file had one. */
    byte[] bytes() {
        return ((marked ? BYTE_ORDER_MARK : "") + text).getBytes(StandardCharsets.UTF_8);
    }

    Optional<Tree> root() {
        return root;
    }
}
