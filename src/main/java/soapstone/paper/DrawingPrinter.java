package soapstone.paper;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.FSSupplier;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import soapstone.page.Fractions;

/**
 * Draws our own drawings straight into a PDF, with the line weights of printed sheets, black on white, and their lettering as text. It
 * knows what our drawings are made of and no other SVG; that is why it is some ten times as fast as a general one and needs no fonts of
 * the machine.
 */
final class DrawingPrinter implements SVGDrawer {

    private static final String[] FAMILIES = {Press.FONT, Press.SPARE_FONT};
    private static final FSRGBColor BLACK = new FSRGBColor(0, 0, 0);
    private static final FSRGBColor WHITE = new FSRGBColor(255, 255, 255);
    /** What a unit of a drawing is on paper: a ninety-sixth of an inch, in millimeters. */
    private static final double UNIT = 25.4 / 96;
    private static final double OUTLINE = 0.5 / UNIT;
    private static final double PHANTOM = 0.6 / UNIT;
    private static final double THIN = 0.25 / UNIT;
    /** As the style sheet has it on the screen: these pens are heavier than thin ones and lighter than outlines. */
    private static final double MIDDLE = 0.35 / UNIT;
    private static final Map<String, Double> WIDTHS = Map.of("pen-visible", OUTLINE, "pen-phantom", PHANTOM, "pen-yours-mark", OUTLINE, "pen-bend", MIDDLE, "pen-frame", MIDDLE, "pen-flag", MIDDLE);
    private static final double FRACTION = 0.74;
    private static final double RAISED = 0.28;
    private static final double LOWERED = 0.08;

    @Override
    public void importFontFaceRules(List<FontFaceRule> fontFaces, SharedContext shared) {
        // The fonts are those of the press.
    }

    @Override
    public void addFontFile(File fontFile, String family, Integer weight, BaseRendererBuilder.FontStyle style) {
        // The fonts are those of the press.
    }

    @Override
    public void addFontStream(FSSupplier<InputStream> supplier, String family, Integer weight, BaseRendererBuilder.FontStyle style) {
        // The fonts are those of the press.
    }

    @Override
    public void close() {
        // Nothing is held open.
    }

    @Override
    public SVGImage buildSVGImage(Element svg, Box box, CssContext css, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new Drawing(svg, cssWidth, cssHeight, dotsPerPixel);
    }

    /** One drawing at one size. Sizes are in dots, of which a unit has some. */
    private static final class Drawing implements SVGImage {

        private final Element svg;
        private final double width;
        private final double height;
        private final double scale;

        Drawing(Element svg, double cssWidth, double cssHeight, double dotsPerPixel) {
            this.svg = svg;
            String[] box = svg.getAttribute("viewBox").split(" ");
            double wide = Double.parseDouble(box[2]);
            double high = Double.parseDouble(box[3]);
            double fit = cssWidth >= 0 ? cssWidth / wide : cssHeight >= 0 ? cssHeight / high : dotsPerPixel;
            this.scale = cssWidth >= 0 && cssHeight >= 0 ? Math.min(fit, cssHeight / high) : fit;
            this.width = wide * scale;
            this.height = high * scale;
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(width);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(height);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            Stroke before = device.getStroke();
            AffineTransform place = AffineTransform.getTranslateInstance(x, y);
            place.scale(scale, scale);
            Hand hand = new Hand(device, context, place, scale);
            for (Node node = svg.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element layer && layer.getTagName().equals("g")) {
                    hand.layer(layer);
                }
            }
            device.setColor(BLACK);
            device.setStroke(before);
        }
    }

    /** Whatever draws a drawing, layer by layer. */
    private record Hand(OutputDevice device, RenderingContext context, AffineTransform place, double scale) {

        void layer(Element layer) {
            boolean filled = !layer.getAttribute("fill").equals("none");
            boolean lined = layer.hasAttribute("stroke") && !layer.getAttribute("stroke").equals("none");
            for (Node node = layer.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element shape && shape.getTagName().equals("text")) {
                    letter(shape, layer);
                } else if (node instanceof Element shape) {
                    shape(shape, layer, filled, lined);
                }
            }
        }

        private void shape(Element element, Element layer, boolean filled, boolean lined) {
            Shape shape = place.createTransformedShape(shape(element));
            if (filled) {
                device.setColor(isLight(layer.getAttribute("fill")) ? WHITE : BLACK);
                device.fill(shape);
            }
            if (lined) {
                device.setColor(BLACK);
                device.setStroke(stroke(layer));
                device.draw(shape);
            }
        }

        /** Paper is white, and so is a tint on it. */
        private static boolean isLight(String color) {
            return color.startsWith("#F");
        }

        private static Shape shape(Element e) {
            return switch (e.getTagName()) {
                case "path" -> Outline.read(e.getAttribute("d"));
                case "circle" -> new Ellipse2D.Double(number(e, "cx") - number(e, "r"), number(e, "cy") - number(e, "r"), 2 * number(e, "r"), 2 * number(e, "r"));
                case "rect" -> new Rectangle2D.Double(number(e, "x"), number(e, "y"), number(e, "width"), number(e, "height"));
                default -> throw new IllegalArgumentException("no shape of a drawing: " + e.getTagName());
            };
        }

        private static double number(Element e, String name) {
            return Double.parseDouble(e.getAttribute(name));
        }

        private Stroke stroke(Element layer) {
            double width = WIDTHS.getOrDefault(layer.getAttribute("class"), THIN) * scale;
            String dashes = layer.getAttribute("stroke-dasharray");
            if (dashes.isEmpty()) {
                return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER);
            }
            String[] each = dashes.split(" ");
            float[] dash = new float[each.length];
            for (int i = 0; i < each.length; i++) {
                dash[i] = (float) (Double.parseDouble(each[i]) * scale);
            }
            return new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, dash, 0);
        }

        private void letter(Element text, Element layer) {
            List<Fractions.Piece> pieces = Fractions.pieces(text.getTextContent());
            double size = number(layer, "font-size") * scale;
            boolean bold = layer.getAttribute("font-weight").equals("700");
            double all = pieces.stream().mapToDouble(p -> width(p, size, bold)).sum();
            double x = place.getTranslateX() + number(text, "x") * scale - all * before(text.getAttribute("text-anchor"));
            double y = place.getTranslateY() + number(text, "y") * scale;
            device.setColor(BLACK);
            for (Fractions.Piece piece : pieces) {
                device.setFont(font(piece, size, bold));
                double up = piece.set() == Fractions.Set.UPPER ? RAISED * size : piece.set() == Fractions.Set.LOWER ? -LOWERED * size : 0;
                context.getTextRenderer().drawString(device, piece.text(), (float) x, (float) (y - up));
                x += width(piece, size, bold);
            }
        }

        private static double before(String anchor) {
            return anchor.equals("middle") ? 0.5 : anchor.equals("end") ? 1 : 0;
        }

        private double width(Fractions.Piece piece, double size, boolean bold) {
            return context.getTextRenderer().getWidth(context.getFontContext(), font(piece, size, bold), piece.text());
        }

        private FSFont font(Fractions.Piece piece, double size, boolean bold) {
            FontSpecification wanted = new FontSpecification();
            wanted.families = FAMILIES;
            wanted.size = (float) (piece.set() == Fractions.Set.PLAIN ? size : size * FRACTION);
            wanted.fontWeight = bold ? IdentValue.FONT_WEIGHT_700 : IdentValue.NORMAL;
            wanted.fontStyle = IdentValue.NORMAL;
            wanted.variant = IdentValue.NORMAL;
            return context.getFont(wanted);
        }
    }
}
