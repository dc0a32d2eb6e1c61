package soapstone.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What holds for every drawing, whatever it shows. */
public final class Drawn {

    private static final int MOST_CHARACTERS = 60_000;
    /** Numbers as a drawing prints them: 41 3/8, 3/4, 0.078, 2400. */
    private static final Pattern NUMBER = Pattern.compile("\\d+ \\d+/\\d+|\\d+/\\d+|\\d+\\.\\d+|\\d+");

    private Drawn() {}

    /** Checks both layouts of a drawing; {@code what} goes into every failure. */
    public static void isSound(Figure figure, String what) {
        isSound(figure, DrawnSvg.read(figure.wide()), DrawnSvg.read(figure.narrow()), what);
    }

    /** The same of layouts that are read already. */
    public static void isSound(Figure figure, DrawnSvg wide, DrawnSvg narrow, String what) {
        assertThat(figure.title()).as(what).isNotBlank();
        check(wide, 720, figure, what + " wide");
        check(narrow, 340, figure, what + " narrow");
    }

    private static void check(DrawnSvg drawn, int width, Figure figure, String what) {
        assertThat(drawn.text().length()).as(what).isLessThan(MOST_CHARACTERS);
        assertThat(drawn.text()).as(what).doesNotContain("NaN", "Infinity", "style=", "<script", "href", "null");
        assertThat(drawn.viewBox()).as(what).isEqualTo("0 0 " + width + " " + (int) drawn.height());
        assertThat(drawn.width()).as(what).isEqualTo(width);
        assertThat(drawn.attribute("role")).isEqualTo("img");
        assertThat(drawn.attribute("aria-labelledby")).isEqualTo(drawn.idOf("title") + " " + drawn.idOf("desc"));
        assertThat(drawn.content("title")).isEqualTo(figure.title());
        assertThat(drawn.content("desc")).isEqualTo(figure.desc());
        inside(drawn, what);
        apart(drawn, what);
        clearOfThickLines(drawn, what);
        told(drawn, figure.desc(), what);
    }

    private static void inside(DrawnSvg drawn, String what) {
        Box extent = drawn.extent();
        assertThat(extent.left()).as(what + " left").isGreaterThanOrEqualTo(-0.5);
        assertThat(extent.top()).as(what + " top").isGreaterThanOrEqualTo(-0.5);
        assertThat(extent.right()).as(what + " right").isLessThanOrEqualTo(drawn.width() + 0.5);
        assertThat(extent.bottom()).as(what + " bottom").isLessThanOrEqualTo(drawn.height() + 0.5);
    }

    private static void apart(DrawnSvg drawn, String what) {
        List<DrawnSvg.Lettered> all = drawn.lettering();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (all.get(i).box().overlaps(all.get(j).box())) {
                    fail("%s: '%s' and '%s' overlap%n%s", what, all.get(i).text(), all.get(j).text(), drawn.text());
                }
            }
        }
    }

    private static void clearOfThickLines(DrawnSvg drawn, String what) {
        List<Pt[]> thick = drawn.pieces("visible|phantom|bend|yours-mark");
        for (DrawnSvg.Lettered l : drawn.lettering()) {
            for (Pt[] piece : thick) {
                if (l.box().isCrossedBy(piece[0], piece[1])) {
                    fail("%s: a thick line runs through '%s'%n%s", what, l.text(), drawn.text());
                }
            }
        }
    }

    private static void told(DrawnSvg drawn, String desc, String what) {
        List<String> said = numbers(desc);
        for (DrawnSvg.Lettered l : drawn.lettering()) {
            if (l.group().equals("number") || l.group().equals("yours-number")) {
                continue;
            }
            for (String n : numbers(l.text())) {
                assertThat(said).as("%s: '%s' is not described: %s", what, l.text(), desc).contains(n);
            }
            if (l.group().equals("letter")) {
                assertThat(desc).as(what).containsAnyOf("letter " + l.text(), "letra " + l.text());
            }
        }
    }

    static List<String> numbers(String text) {
        List<String> all = new ArrayList<>();
        Matcher m = NUMBER.matcher(text.replace('\u00A0', ' '));
        while (m.find()) {
            all.add(m.group());
        }
        return all;
    }
}
