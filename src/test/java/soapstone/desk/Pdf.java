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
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

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

    /** Signs that stand outside of a page. */
    List<String> outside(int page) throws IOException {
        float width = document.getPage(page - 1).getMediaBox().getWidth();
        float height = document.getPage(page - 1).getMediaBox().getHeight();
        List<String> outside = new ArrayList<>();
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition t) {
                boolean inside = t.getXDirAdj() >= 0 && t.getXDirAdj() + t.getWidthDirAdj() <= width && t.getYDirAdj() >= 0 && t.getYDirAdj() <= height;
                if (!inside && !t.getUnicode().isBlank()) {
                    outside.add(t.getUnicode());
                }
            }

            void look() throws IOException {
                setStartPage(page);
                setEndPage(page);
                getText(Pdf.this.document);
            }
        }.look();
        return outside;
    }

    /** The size of the smallest lettering, in points. */
    float leastLettering() throws IOException {
        float[] least = {Float.MAX_VALUE};
        new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition t) {
                if (!t.getUnicode().isBlank()) {
                    least[0] = Math.min(least[0], t.getFontSizeInPt());
                }
            }
        }.getText(Pdf.this.document);
        return least[0];
    }

    /** What the pieces are, as a screen reader is told. */
    Set<String> tags() {
        Set<String> tags = new TreeSet<>();
        each(document.getDocumentCatalog().getStructureTreeRoot(), e -> tags.add(e.getStructureType()));
        return tags;
    }

    /** What is said in the place of drawings. */
    List<String> alternates() {
        List<String> all = new ArrayList<>();
        each(document.getDocumentCatalog().getStructureTreeRoot(), e -> {
            if (e.getAlternateDescription() != null) {
                all.add(e.getAlternateDescription());
            }
        });
        return all;
    }

    private static void each(PDStructureNode node, Consumer<PDStructureElement> does) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                does.accept(element);
                each(element, does);
            }
        }
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
