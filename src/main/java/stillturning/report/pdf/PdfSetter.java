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
import stillturning.report.page.Printable;

/** A document as a PDF. */
public final class PdfSetter {

    private static final int PLAIN = 400;
    private static final int BOLD = 700;

    /** Stands in every document's metadata, and tells them from other people's. */
    public static final String MADE_BY = "Stillturning, an aid for comparing designs";

    private final Document document;
    private final PaperSize paper;
    private final Consumer<String> complaints;

    private PdfSetter(Document document, PaperSize paper, Consumer<String> complaints) {
        this.document = document;
        this.paper = paper;
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
        XRLog.setLoggingEnabled(false);
        try {
            return new PdfSetter(document, paper, complaints).bytes();
        } catch (IOException e) {
            throw new UncheckedIOException("the document cannot be set in memory", e);
        }
    }

    /** The document as the text that is set. */
    static String text(Document document, PaperSize paper) {
        StringOutput output = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render(
                        "paper.jte",
                        Map.<String, Object>of("document", document, "paper", paper),
                        output);
        return Printable.of(output.toString());
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder().toStream(out).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
            try (PDDocument made = renderer.getPdfDocument()) {
                Fixed.of(document.imprint()).put(made);
                LinkWords.put(made);
                made.save(out);
            }
        }
        return out.toByteArray();
    }

    private PdfRendererBuilder builder() {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.withW3cDocument(SetText.of(text(document, paper)), null);
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
