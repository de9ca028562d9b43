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

    /**
     * Where the text comes from.
     *
     * @param marked whether the file starts with a byte order mark, which the text leaves out
     * @param onDisk fingerprint of the file when it was read, if it was
     */
    private record TextSource(Path file, String text, boolean marked, Optional<String> onDisk) {}

    /**
     * What became of the text.
     *
     * @param root absent if the text is no YAML that can be used
     * @param asFarAsRead what stands before the first fault
     */
    private record Read(Optional<Tree> root, Optional<Tree> asFarAsRead, List<Problem> problems) {
        static Read nothing(Problem why) {
            return new Read(Optional.empty(), Optional.empty(), List.of(why));
        }
    }

    private final TextSource source;
    private final Read read;
    private final DocumentPlaces places;

    private YamlDocument(TextSource source, Read read) {
        this.source = source;
        this.read = read;
        this.places = new DocumentPlaces(source.file, source.text, read.root);
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
            Place at = Place.endOf(out.flip().toString());
            String wrong =
                    String.format(
                            Locale.ROOT,
                            "the byte 0x%02X is no text in UTF-8",
                            bytes[in.position()] & 0xff);
            return refused(file, at.line(), at.column(), wrong, "save the file as UTF-8");
        }
        return of(file, out.flip().toString(), Optional.of(FileReplacement.fingerprint(bytes)));
    }

    /** Reads text as if it came from a file; saving it makes a new file. */
    public static YamlDocument of(Path file, String text) {
        return of(file, text, Optional.empty());
    }

    private static YamlDocument of(Path file, String text, Optional<String> onDisk) {
        if (text.length() > MOST_BYTES) {
            return refused(file, 1, 1, "the text is larger than 4 MB", "split it");
        }
        boolean marked = text.startsWith(BYTE_ORDER_MARK);
        return read(new TextSource(file, marked ? text.substring(1) : text, marked, onDisk));
    }

    private static YamlDocument read(TextSource source) {
        Optional<Problem> unprintable = unprintable(source.file, source.text);
        if (unprintable.isPresent()) {
            return new YamlDocument(source, Read.nothing(unprintable.get()));
        }
        Composer composer = new Composer(source.file, source.text);
        Optional<Tree> root = composer.compose();
        return new YamlDocument(
                source, new Read(root, composer.asFarAsRead(), composer.problems()));
    }

    private static YamlDocument refused(
            Path file, int line, int column, String wrong, String right) {
        return new YamlDocument(
                new TextSource(file, "", false, Optional.empty()),
                Read.nothing(new Problem(file, line, column, "", wrong, right)));
    }

    private static Optional<Problem> unprintable(Path file, String text) {
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            int c = text.codePointAt(at);
            if (!isPrintable(c)) {
                Place place = Place.endOf(text.substring(0, at));
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

    /** The file it was read from. */
    public Path file() {
        return source.file;
    }

    /** The text as it was read, without a byte order mark. */
    public String text() {
        return source.text;
    }

    /**
     * Fingerprint of the file when it was read or saved; absent if it was never on disk, or could
     * not be read as text.
     */
    public Optional<String> onDisk() {
        return source.onDisk;
    }

    /** What is wrong with it as YAML, in order; with duplicate keys alone it can still be bound. */
    public List<Problem> problems() {
        return Collections.unmodifiableList(read.problems);
    }

    /** Where its values and keys stand. */
    public DocumentPlaces places() {
        return places;
    }

    /** The plain value at a path, if one stands there. */
    public Optional<String> textAt(String path) {
        return places.text(path);
    }

    /**
     * The document with one place of its text replaced; it may have problems of its own.
     *
     * @throws IllegalArgumentException if the text does not hold what the splice removes
     */
    public YamlDocument with(Splice splice) {
        return read(
                new TextSource(
                        source.file, splice.appliedTo(source.text), source.marked, source.onDisk));
    }

    /**
     * Writes the text to its file, whole or not at all; the content before stays beside it as a
     * file with {@code ~} behind its name.
     *
     * @return the same document, as it is now on disk
     * @throws ChangedOnDisk if the file is not what it was when it was read
     * @throws IOException if it cannot be written
     */
    public YamlDocument save() throws IOException {
        byte[] bytes =
                ((source.marked ? BYTE_ORDER_MARK : "") + source.text)
                        .getBytes(StandardCharsets.UTF_8);
        FileReplacement.write(source.file, bytes, source.onDisk);
        Optional<String> onDisk = Optional.of(FileReplacement.fingerprint(bytes));
        return new YamlDocument(
                new TextSource(source.file, source.text, source.marked, onDisk), read);
    }

    /**
     * Takes the file away; its content stays beside it as a file with {@code ~} behind its name.
     *
     * @throws ChangedOnDisk if the file is not what it was when it was read
     * @throws IOException if it cannot be taken away
     */
    public void delete() throws IOException {
        FileReplacement.remove(source.file, source.onDisk);
    }

    /** Everything that stands in it, if it can be read. */
    public Optional<YamlValue> value() {
        return read.root.map(Tree::value);
    }

    public Optional<Tree> root() {
        return read.root;
    }

    /** What stands before the first fault, to be shown and never to be computed with. */
    public Optional<Tree> asFarAsRead() {
        return read.asFarAsRead;
    }
}
