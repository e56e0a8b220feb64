package org.borewright.api.order.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/**
 * A PDF, read back.
 *
 * @param pages the text of each, row by row
 * @param outside the letters that lie beyond the edge of their page
 * @param fonts all that are used, with whether each is part of the file
 */
public record PdfText(List<String> pages, List<String> outside, List<String> fonts) {

    public static PdfText of(byte[] file) {
        try (PDDocument document = Loader.loadPDF(file)) {
            PdfText text = new PdfText(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                text.pages.add(text.read(document, page));
                text.note(document.getPage(page - 1));
            }
            return text;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** All of it, with one blank for every gap. */
    public String whole() {
        return String.join(" ", pages).replaceAll("\\s+", " ");
    }

    private String read(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition letter) {
                super.processTextPosition(letter);
                if (letter.getX() < 0 || letter.getX() + letter.getWidth() > letter.getPageWidth()) {
                    outside.add(letter.getUnicode());
                }
            }
        };
        stripper.setSortByPosition(true);
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document);
    }

    private void note(PDPage page) throws IOException {
        PDResources resources = page.getResources();
        for (var name : resources.getFontNames()) {
            var font = resources.getFont(name);
            fonts.add(font.getName().replaceAll("^[A-Z]{6}\\+", "")
                    + (font.isEmbedded() ? ", embedded" : ", not embedded"));
        }
    }
}
