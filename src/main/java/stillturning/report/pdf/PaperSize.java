package stillturning.report.pdf;

import java.util.Locale;
import java.util.Optional;

/**
 * Paper that a document is set on.
 *
 * @see "ISO 216 for A4 and A5; ANSI/ASME Y14.1 for Letter (8.5 in by 11 in), both from memory"
 */
public enum PaperSize {
    A4("210mm 297mm", "297mm 210mm"),
    LETTER("215.9mm 279.4mm", "279.4mm 215.9mm");

    private final String upright;
    private final String broad;

    PaperSize(String upright, String broad) {
        this.upright = upright;
        this.broad = broad;
    }

    /** The paper that somebody calls so. */
    public static Optional<PaperSize> named(String words) {
        for (PaperSize size : values()) {
            if (size.words().equals(words.toLowerCase(Locale.ROOT))) {
                return Optional.of(size);
            }
        }
        return Optional.empty();
    }

    /** What people call it. */
    public String words() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** Width and height for a style sheet. */
    public String upright() {
        return upright;
    }

    /** The same, lying on its side. */
    public String broad() {
        return broad;
    }
}
