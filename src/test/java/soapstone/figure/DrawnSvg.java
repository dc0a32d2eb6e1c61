package soapstone.figure;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Reads a drawing back from its SVG, with nothing but the SVG: what is where. */
public final class DrawnSvg {

    private static final Pattern STEP = Pattern.compile("([MLAZ])([^MLAZ]*)");
    private static final int ARC_POINTS = 24;

    /** Making one takes longer than reading a drawing with it. */
    private static final ThreadLocal<DocumentBuilder> READER = ThreadLocal.withInitial(DrawnSvg::reader);

    private final Element root;
    private final String text;

    /** One run of lettering and the box it takes, measured with the table of glyphs. */
    public record Lettered(String group, String text, Box box) {}

    private DrawnSvg(String text, Element root) {
        this.text = text;
        this.root = root;
    }

    private static DocumentBuilder reader() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            return factory.newDocumentBuilder();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Fails when the text is not well-formed XML. */
    public static DrawnSvg read(String svg) {
        try {
            Document doc = READER.get().parse(new InputSource(new StringReader(svg)));
            return new DrawnSvg(svg, doc.getDocumentElement());
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage() + "\n" + svg, e);
        }
    }

    String text() {
        return text;
    }

    double width() {
        return Double.parseDouble(root.getAttribute("width"));
    }

    double height() {
        return Double.parseDouble(root.getAttribute("height"));
    }

    String viewBox() {
        return root.getAttribute("viewBox");
    }

    String attribute(String name) {
        return root.getAttribute(name);
    }

    String content(String element) {
        return root.getElementsByTagName(element).item(0).getTextContent();
    }

    String idOf(String element) {
        return ((Element) root.getElementsByTagName(element).item(0)).getAttribute("id");
    }

    public List<Lettered> lettering() {
        List<Lettered> all = new ArrayList<>();
        for (Element t : elements("text")) {
            String group = group(t);
            double size = group.matches("note|number|yours-note|yours-number") ? 13 : 14;
            double width = Glyphs.width(t.getTextContent(), size);
            double x = number(t, "x");
            double left = switch (t.getAttribute("text-anchor")) {
                case "middle" -> x - width / 2;
                case "end" -> x - width;
                default -> x;
            };
            double y = number(t, "y");
            all.add(new Lettered(group, t.getTextContent(), new Box(left, y - 0.72 * size, left + width, y + 0.2 * size)));
        }
        return all;
    }

    /** Centers of the circles of that role, from left to right as written. */
    List<Pt> circles(String role) {
        return elements("circle").stream().filter(c -> c.getAttribute("data-part").equals(role))
                .map(c -> new Pt(number(c, "cx"), number(c, "cy"))).toList();
    }

    double radius(String role) {
        return elements("circle").stream().filter(c -> c.getAttribute("data-part").equals(role)).mapToDouble(c -> number(c, "r"))
                .findFirst().orElseThrow();
    }

    List<Box> rectangles(String role) {
        return elements("rect").stream().filter(r -> r.getAttribute("data-part").equals(role)).map(DrawnSvg::box).toList();
    }

    Box rectangle(String role) {
        return rectangles(role).get(0);
    }

    /** The bounds of the paths of that role. */
    List<Box> paths(String role) {
        return elements("path").stream().filter(p -> p.getAttribute("data-part").equals(role))
                .map(p -> bounds(points(p.getAttribute("d")))).toList();
    }

    private static Box bounds(List<List<Pt>> lines) {
        Box b = Box.NOTHING;
        for (List<Pt> line : lines) {
            for (Pt p : line) {
                b = b.union(Box.around(p, p));
            }
        }
        return b;
    }

    /** The bounds of all that is drawn, lettering included, masks left out. */
    Box extent() {
        Box b = Box.NOTHING;
        for (Element e : elements("path")) {
            b = b.union(bounds(points(e.getAttribute("d"))));
        }
        for (Element e : elements("rect")) {
            b = group(e).equals("mask") ? b : b.union(box(e));
        }
        for (Element e : elements("circle")) {
            Pt c = new Pt(number(e, "cx"), number(e, "cy"));
            b = b.union(Box.around(c, c).grown(number(e, "r")));
        }
        for (Lettered l : lettering()) {
            b = b.union(l.box());
        }
        return b;
    }

    /** Straight pieces of all lines of these groups. */
    List<Pt[]> pieces(String groups) {
        List<Pt[]> out = new ArrayList<>();
        for (Element e : elements("path")) {
            if (group(e).matches(groups)) {
                for (List<Pt> line : points(e.getAttribute("d"))) {
                    for (int i = 1; i < line.size(); i++) {
                        out.add(new Pt[] {line.get(i - 1), line.get(i)});
                    }
                }
            }
        }
        for (Element e : elements("rect")) {
            if (group(e).matches(groups)) {
                new Shape.Plate(Pen.VISIBLE, box(e), "").pieces().forEach(p -> out.add(new Pt[] {p.a(), p.b()}));
            }
        }
        return out;
    }

    /** How wide all lines of these groups are together, circles aside. */
    public double width(String groups) {
        Box b = Box.NOTHING;
        for (Pt[] piece : pieces(groups)) {
            b = b.union(Box.around(piece[0], piece[1]));
        }
        return b.width();
    }

    /** The straight pieces of the first path of that role, in the order of its outline. */
    List<Pt[]> piecesOf(String role) {
        return piecesOf(role, 0);
    }

    /** The same of another path of that role, counted from 0. */
    List<Pt[]> piecesOf(String role, int index) {
        List<Pt[]> out = new ArrayList<>();
        Element path = elements("path").stream().filter(p -> p.getAttribute("data-part").equals(role)).skip(index).findFirst().orElseThrow();
        for (List<Pt> line : points(path.getAttribute("d"))) {
            for (int i = 1; i < line.size(); i++) {
                out.add(new Pt[] {line.get(i - 1), line.get(i)});
            }
        }
        return out;
    }

    /** The first pieces of all paths of that role. */
    List<Pt[]> piecesOfAll(String role) {
        List<Pt[]> out = new ArrayList<>();
        for (int i = 0; i < paths(role).size(); i++) {
            out.add(piecesOf(role, i).get(0));
        }
        return out;
    }

    /** The thin lines of the right part that belong to a size, in the order of drawing. */
    List<Pt[]> linesOf(String size) {
        List<Pt[]> out = new ArrayList<>();
        for (Element e : elements("path")) {
            if (group(e).equals("thin") && e.getAttribute("data-size").equals(size)) {
                points(e.getAttribute("d")).stream().filter(l -> l.size() == 2).forEach(l -> out.add(new Pt[] {l.get(0), l.get(1)}));
            }
        }
        return out;
    }

    /** The straight pieces of a path between its arcs, in the order of its outline; without the one that closes it. */
    List<Pt[]> straights(String role) {
        Element path = elements("path").stream().filter(p -> p.getAttribute("data-part").equals(role)).findFirst().orElseThrow();
        List<Pt[]> out = new ArrayList<>();
        Pt at = null;
        Matcher m = STEP.matcher(path.getAttribute("d"));
        while (m.find()) {
            double[] n = numbers(m.group(2));
            if (n.length < 2) {
                continue;
            }
            Pt to = new Pt(n[n.length - 2], n[n.length - 1]);
            if (m.group(1).equals("L")) {
                out.add(new Pt[] {at, to});
            }
            at = to;
        }
        return out;
    }

    private List<Element> elements(String name) {
        NodeList list = root.getElementsByTagName(name);
        List<Element> all = new ArrayList<>();
        for (int i = 0; i < list.getLength(); i++) {
            all.add((Element) list.item(i));
        }
        return all;
    }

    private static String group(Element e) {
        return ((Element) e.getParentNode()).getAttribute("class").replaceFirst("^pen-", "");
    }

    private static Box box(Element rect) {
        double x = number(rect, "x");
        double y = number(rect, "y");
        return new Box(x, y, x + number(rect, "width"), y + number(rect, "height"));
    }

    private static double number(Element e, String attribute) {
        return Double.parseDouble(e.getAttribute(attribute));
    }

    /** The points of a path, arcs divided by the conversion of SVG 1.1, F.6.5 (from endpoints to center). */
    private static List<List<Pt>> points(String data) {
        List<List<Pt>> lines = new ArrayList<>();
        List<Pt> line = new ArrayList<>();
        Matcher m = STEP.matcher(data);
        while (m.find()) {
            double[] n = numbers(m.group(2));
            switch (m.group(1)) {
                case "M" -> {
                    line = new ArrayList<>();
                    lines.add(line);
                    line.add(new Pt(n[0], n[1]));
                }
                case "L" -> line.add(new Pt(n[0], n[1]));
                case "A" -> arc(line, n);
                default -> line.add(line.get(0));
            }
        }
        return lines;
    }

    private static double[] numbers(String text) {
        String t = text.trim();
        return t.isEmpty() ? new double[0] : java.util.Arrays.stream(t.split(" ")).mapToDouble(Double::parseDouble).toArray();
    }

    private static void arc(List<Pt> line, double[] n) {
        Pt from = line.get(line.size() - 1);
        double rx = n[0];
        double ry = n[1];
        double x = (from.x() - n[5]) / 2;
        double y = (from.y() - n[6]) / 2;
        double over = x * x / (rx * rx) + y * y / (ry * ry);
        if (over > 1) {
            rx *= Math.sqrt(over);
            ry *= Math.sqrt(over);
        }
        double under = rx * rx * y * y + ry * ry * x * x;
        double k = under == 0 ? 0 : Math.sqrt(Math.max(0, (rx * rx * ry * ry - under) / under)) * (n[3] == n[4] ? -1 : 1);
        double cx = k * rx * y / ry;
        double cy = -k * ry * x / rx;
        double a = Math.atan2((y - cy) / ry, (x - cx) / rx);
        double turn = Math.atan2((-y - cy) / ry, (-x - cx) / rx) - a;
        turn += n[4] == 1 && turn < 0 ? 2 * Math.PI : n[4] == 0 && turn > 0 ? -2 * Math.PI : 0;
        for (int i = 1; i <= ARC_POINTS; i++) {
            double t = a + turn * i / ARC_POINTS;
            line.add(new Pt(cx + (from.x() + n[5]) / 2 + rx * Math.cos(t), cy + (from.y() + n[6]) / 2 + ry * Math.sin(t)));
        }
    }
}
