package soapstone.desk;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A PDF as a reader of its own sees it. */
final class Pdf implements AutoCloseable {

    private static final int DOTS_AN_INCH = 200;

    final PDDocument document;

    Pdf(byte[] bytes) throws IOException {
        document = Loader.loadPDF(bytes);
    }

    int pages() {
        return document.getNumberOfPages();
    }

    /** All text, line by line, its gaps and line ends as single spaces. */
    String text() throws IOException {
        return text(1, pages());
    }

    String text(int from, int to) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(from);
        stripper.setEndPage(to);
        // As one reads: line by line, wherever the pieces of a line stand in the file.
        stripper.setSortByPosition(true);
        return plain(stripper.getText(document));
    }

    /** As texts are compared here: what only holds signs together counts as a gap. */
    static String plain(String text) {
        return text.replaceAll("[\\s\\u00A0\\u2060]+", " ").strip();
    }

    /** Without any gap at all: what stands in a cell may have been set on two lines. */
    static String dense(String text) {
        return text.replaceAll("[\\s\\u00A0\\u2060]+", "");
    }

    /** The names of all fonts, and of those among them that are not in the file. */
    Set<String> fonts(boolean missing) throws IOException {
        Set<String> names = new TreeSet<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                if (!missing || !font.isEmbedded()) {
                    names.add(font.getName());
                }
            }
        }
        return names;
    }

    /** What a scanner reads on a page. */
    List<String> codes(int page) throws IOException {
        PDFRenderer renderer = new PDFRenderer(document);
        BinaryBitmap image = new BinaryBitmap(new HybridBinarizer(new BufferedImageLuminanceSource(renderer.renderImageWithDPI(page - 1, DOTS_AN_INCH))));
        try {
            Result[] found = new QRCodeMultiReader().decodeMultiple(image, Map.of(DecodeHintType.TRY_HARDER, true));
            return Arrays.stream(found).map(Result::getText).sorted().toList();
        } catch (NotFoundException e) {
            return new ArrayList<>();
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
