package soapstone.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.TimeZone;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Lays pages out and puts them into one PDF. What is added is laid out by itself, with page numbers of its own, and is then done with: so
 * a packet for a whole class takes no more memory than one sheet and its pages. The same markup in the same order with the same title and
 * day gives the same bytes. Not for several threads.
 */
public final class Press implements AutoCloseable {

    static final String FONT = "B612";
    static final String SPARE_FONT = "DejaVu";
    private static final String FOLDER = "/soapstone/paper/";
    private static final String PRODUCER = "Soapstone";
    private static final int BOLD = 700;
    private static final int NORMAL = 400;

    static {
        XRLog.setLoggingEnabled(false);
    }

    private final PDDocument document = new PDDocument();
    private final Tags tags = new Tags(document);
    private final PDFont regular = font("b612-regular.ttf");
    private final PDFont bold = font("b612-bold.ttf");
    private final PDFont spare = font("dejavu-sans.ttf");
    private final DocumentBuilder reader = reader();
    private final String title;
    private final Instant day;

    /**
     * @param title of the file
     * @param day   that the file says it was made on
     */
    public Press(String title, Instant day) {
        this.title = title;
        this.day = day;
        document.setDocumentId(day.getEpochSecond());
    }

    private PDFont font(String file) {
        try (InputStream in = Press.class.getResourceAsStream(FOLDER + file)) {
            return PDType0Font.load(document, new TTFParser().parse(new RandomAccessReadBuffer(in)), true);
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static DocumentBuilder reader() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder;
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Lays out what stands in a text and appends its pages.
     *
     * @param markup well-formed, with a title and a language
     * @return how many pages it took
     */
    public int add(String markup) {
        int before = document.getNumberOfPages();
        try (PdfBoxRenderer renderer = builder(read(markup)).buildPdfRenderer()) {
            renderer.createPDFWithoutClosing();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        tags.take(before);
        return document.getNumberOfPages() - before;
    }

    private Document read(String markup) {
        try {
            return reader.parse(new InputSource(new StringReader(markup)));
        } catch (SAXException e) {
            throw new IllegalArgumentException("a page for paper is well-formed: " + e.getMessage(), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private PdfRendererBuilder builder(Document page) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePDDocument(document).usePdfUaAccessibility(true).withProducer(PRODUCER).useSVGDrawer(new DrawingPrinter());
        builder.useFont(new PDFontSupplier(regular), FONT, NORMAL, FontStyle.NORMAL, true);
        builder.useFont(new PDFontSupplier(bold), FONT, BOLD, FontStyle.NORMAL, true);
        builder.useFont(new PDFontSupplier(spare), SPARE_FONT, NORMAL, FontStyle.NORMAL, true);
        // A page is whole in itself: nothing is ever fetched for it.
        builder.useExternalResourceAccessControl((uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.withW3cDocument(page, null);
        return builder;
    }

    public int pages() {
        return document.getNumberOfPages();
    }

    /** Ends the file and writes it. Nothing can be added after that. */
    public void write(OutputStream out) throws IOException {
        tags.finish();
        Calendar made = new GregorianCalendar(TimeZone.getTimeZone("UTC"), Locale.ROOT);
        made.setTimeInMillis(day.toEpochMilli());
        document.getDocumentInformation().setCreationDate(made);
        document.getDocumentInformation().setTitle(title);
        document.save(out);
    }

    /** Ends the file. Nothing can be added after that. */
    public byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            write(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
