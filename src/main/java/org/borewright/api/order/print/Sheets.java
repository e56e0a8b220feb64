package org.borewright.api.order.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.logging.Level;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * A text in XHTML that becomes pages of paper, of the size that its style names, tagged so that it can be read aloud too (PDF/UA-1).
 *
 * @param html of characters that XML allows
 */
public record Sheets(String html) {

    /** Comes with PDFBox under the SIL Open Font License 1.1; has Latin, Greek, Cyrillic and Hebrew letters. */
    private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private static final int REGULAR = 400;
    private static final int NOT_IN_XML = 0xFFFD;

    static {
        // Below that it tells of every style sheet and font, past the log of the service.
        XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
    }

    /** What XML has no sign for is shown as the sign for what cannot be shown. */
    public static Sheets of(String html) {
        return new Sheets(html.codePoints()
                .map(sign -> isInXml(sign) ? sign : NOT_IN_XML)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString());
    }

    /** Production Char of XML 1.0, fifth edition. */
    private static boolean isInXml(int sign) {
        return sign == '\t'
                || sign == '\n'
                || sign == '\r'
                || (sign >= 0x20 && sign <= 0xD7FF)
                || (sign >= 0xE000 && sign <= 0xFFFD)
                || sign >= 0x10000;
    }

    /**
     * The file.
     *
     * @param made when: the clock of the day it is printed would make each print another file
     * @param id likewise its identity
     */
    public byte[] pdf(Instant made, long id) {
        PdfRendererBuilder builder = new PdfRendererBuilder()
                .useFont(Sheets::font, "Liberation Sans", REGULAR, FontStyle.NORMAL, true)
                .usePdfUaAccessibility(true)
                .useReplacementText("?")
                .withProducer("Borewright")
                .withHtmlContent(html, null);
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
                PDDocument document = renderer.createPDFKeepOpen();
                ByteArrayOutputStream file = new ByteArrayOutputStream()) {
            PDDocumentInformation about = document.getDocumentInformation();
            about.setCreationDate(GregorianCalendar.from(ZonedDateTime.ofInstant(made, ZoneOffset.UTC)));
            document.setDocumentId(id);
            document.save(file);
            return file.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static InputStream font() {
        InputStream font = PDDocument.class.getResourceAsStream(FONT);
        if (font == null) {
            throw new IllegalStateException("PDFBox comes without " + FONT);
        }
        return font;
    }
}
