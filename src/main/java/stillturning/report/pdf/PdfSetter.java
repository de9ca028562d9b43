package stillturning.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.Diagnostic;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.function.Consumer;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import stillturning.report.fonts.Letters;
import stillturning.report.page.Document;
import stillturning.report.page.Document.Imprint;
import stillturning.report.page.Printable;
import stillturning.report.page.Sleeves;

/** A document as a PDF. */
public final class PdfSetter {

    private static final int PLAIN = 400;
    private static final int BOLD = 700;

    /** Stands in every document's metadata, and tells them from other people's. */
    public static final String MADE_BY = "Stillturning, an aid for comparing designs";

    private final String text;
    private final Imprint imprint;
    private final Consumer<String> complaints;

    private PdfSetter(String text, Imprint imprint, Consumer<String> complaints) {
        this.text = text;
        this.imprint = imprint;
        this.complaints = complaints;
    }

    /** The bytes of its PDF; the same document, the same bytes. */
    public static byte[] pdf(Document document, PaperSize paper) {
        return pdf(document, paper, complaint -> {});
    }

    /**
     * The same.
     *
     * @param complaints told what the setter did not understand, in its words
     */
    static byte[] pdf(Document document, PaperSize paper, Consumer<String> complaints) {
        return set(text(document, paper), document.imprint(), complaints);
    }

    /** Sheets of labels to cut out; the same labels, the same bytes. */
    public static byte[] sleeves(Sleeves sleeves, Imprint imprint, PaperSize paper) {
        return sleeves(sleeves, imprint, paper, complaint -> {});
    }

    /**
     * The same.
     *
     * @param complaints told what the setter did not understand, in its words
     */
    static byte[] sleeves(
            Sleeves sleeves, Imprint imprint, PaperSize paper, Consumer<String> complaints) {
        String text =
                rendered(
                        "sleevepaper.jte",
                        Map.of("sleeves", sleeves, "imprint", imprint, "paper", paper));
        return set(text, imprint, complaints);
    }

    private static byte[] set(String text, Imprint imprint, Consumer<String> complaints) {
        XRLog.setLoggingEnabled(false);
        try {
            return new PdfSetter(text, imprint, complaints).bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the document cannot be set in memory", e);
        }
    }

    /** The document as the text that is set. */
    static String text(Document document, PaperSize paper) {
        return rendered("paper.jte", Map.of("document", document, "paper", paper));
    }

    private static String rendered(String template, Map<String, Object> of) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html).render(template, of, output);
        return Printable.of(output.toString());
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder().toStream(out).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            try (PDDocument made = renderer.getPdfDocument()) {
                Fixed.of(imprint).put(made);
                LinkWords.put(made);
                made.save(out);
            }
        }
        return out.toByteArray();
    }

    private PdfRendererBuilder builder() {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(SetText.of(text), null);
        builder.usePdfUaAccessibility(true);
        builder.usePdfAConformance(PdfAConformance.PDFA_3_A);
        builder.useColorProfile(ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.withProducer(MADE_BY);
        for (ExternalResourceControlPriority when : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((address, type) -> false, when);
        }
        builder.withDiagnosticConsumer(this::heard);
        for (Letters letters : Letters.all()) {
            builder.useFont(
                    letters::open,
                    letters.family(),
                    letters.bold() ? BOLD : PLAIN,
                    FontStyle.NORMAL,
                    true);
        }
        return builder;
    }

    private void heard(Diagnostic diagnostic) {
        if (diagnostic.getLevel().intValue() >= Level.WARNING.intValue()) {
            complaints.accept(diagnostic.getFormattedMessage());
        }
    }
}
