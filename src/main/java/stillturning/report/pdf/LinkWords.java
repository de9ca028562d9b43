package stillturning.report.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;

/** Words for those who cannot see that a link is one, as PDF/UA asks for (7.18.5, from memory). */
final class LinkWords {

    private static final String WORDS = "to the chapter";

    private LinkWords() {}

    static void put(PDDocument made) throws IOException {
        for (PDPage page : made.getPages()) {
            for (PDAnnotation annotation : page.getAnnotations()) {
                if (annotation instanceof PDAnnotationLink) {
                    annotation.setContents(WORDS);
                }
            }
        }
    }
}
