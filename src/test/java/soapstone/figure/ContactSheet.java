package soapstone.figure;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a page of all drawings to look at: {@code mvn -q test-compile} and run this with target/classes on the path. */
final class ContactSheet {

    /** Shows both layouts side by side on a wide screen. */
    private static final String BOTH = ".drawings{display:flex;gap:12px;container-type:normal}.drawing-wide,.drawing-narrow{display:block;margin:0;flex:none}";

    private ContactSheet() {}

    private static boolean both() {
        return Boolean.getBoolean("both");
    }

    /** @param args the file to write; by default {@code target/contact-sheet.html} */
    public static void main(String[] args) throws IOException {
        Path to = Path.of(args.length > 0 ? args[0] : "target/contact-sheet.html");
        Files.writeString(to, page(args.length > 1 ? args[1] : ""), StandardCharsets.UTF_8);
    }

    private static String page(String only) throws IOException {
        String css = Files.readString(Path.of("src/main/resources/soapstone/site/drawing.css"));
        StringBuilder out = new StringBuilder("<!doctype html><html lang=\"en\"><meta charset=\"utf-8\"><meta name=\"viewport\""
                + " content=\"width=device-width\"><title>All drawings</title><style>body{font:17px/26px B612,sans-serif;"
                + "margin:12px}h2{font-size:15px;border-top:1px solid #4A555B;margin:8px 0}"
                + "svg{outline:1px solid #eee}\n")
                .append(css).append(both() ? BOTH : "").append("</style>\n");
        int id = 0;
        for (Samples.Sample s : Samples.all()) {
            if (!s.name().matches(only.isEmpty() ? ".*" : only)) {
                continue;
            }
            Figure f = FigureKinds.draw(s.right(), s.yours(), "f" + id++).orElse(null);
            out.append("<section><h2>").append(s.name()).append("</h2>")
                    .append(f == null ? "<p>no drawing</p>" : "<div class=\"drawings\">" + f.wide() + f.narrow() + "</div>").append("</section>\n");
        }
        return out.append("</html>\n").toString();
    }
}
