package stillturning.report.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import stillturning.report.page.Document.Imprint;

/**
 * What a setter takes from the clock, taken from the document.
 *
 * @param id of the document
 * @param day on which it was made
 */
record Fixed(long id, LocalDate day) {

    /** Stands for the date of a document that has none. */
    private static final LocalDate UNDATED = LocalDate.of(2000, 1, 1);

    private static final Pattern CLOCK =
            Pattern.compile("(<xmp:(CreateDate|ModifyDate|MetadataDate)>)[^<]*(</)");

    static Fixed of(Imprint imprint) {
        String all = imprint.fingerprint() + imprint.version() + imprint.date() + imprint.title();
        long id = 0;
        for (int i = 0; i < all.length(); i++) {
            id = 31 * id + all.charAt(i);
        }
        return new Fixed(id, day(imprint.date()));
    }

    private static LocalDate day(String date) {
        try {
            return LocalDate.parse(date);
        } catch (DateTimeParseException notADay) {
            return UNDATED;
        }
    }

    void put(PDDocument made) throws IOException {
        Calendar midnight = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        midnight.setTimeInMillis(day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli());
        made.setDocumentId(id);
        made.getDocumentInformation().setCreationDate(midnight);
        made.getDocumentInformation().setModificationDate(midnight);
        PDMetadata metadata = made.getDocumentCatalog().getMetadata();
        String xmp = new String(metadata.toByteArray(), StandardCharsets.UTF_8);
        String fixed = CLOCK.matcher(xmp).replaceAll("$1" + day + "T00:00:00Z$3");
        made.getDocumentCatalog()
                .setMetadata(
                        new PDMetadata(
                                made,
                                new ByteArrayInputStream(fixed.getBytes(StandardCharsets.UTF_8))));
    }
}
