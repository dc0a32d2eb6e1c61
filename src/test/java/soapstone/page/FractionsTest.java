package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fractions are found where they are fractions, and the text stays what it was. */
class FractionsTest {

    private static final String NB = "\u00A0";

    private static String bare(String markup) {
        return markup.replaceAll("<[^>]*>", "").replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"41 3/8 in|3|8", "7-5/16|5|16", "within 1/32|1|32", "±1/64 in|1|64", "22/7|22|7", "(1/2)|1|2", "1/2, then|1|2"})
    void aFractionIsSet(String text, String upper, String lower) {
        String markup = Fractions.markup(text);
        assertThat(markup).contains("<span class=\"upper\">" + upper + "</span>/<span class=\"lower\">" + lower + "</span>");
        assertThat(bare(markup)).isEqualTo(text);
        assertThat(Fractions.pieces(text).stream().map(Fractions.Piece::text).collect(Collectors.joining())).isEqualTo(text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"and/or", "3/16/2027", "a/2", "1/2/3", "1.5/2", "no fraction", "", "lb/ft", "< 3 & \"4\" >"})
    void whatIsNoneIsLeftAlone(String text) {
        assertThat(Fractions.markup(text)).doesNotContain("upper");
        assertThat(bare(Fractions.markup(text))).isEqualTo(text);
    }

    @Test
    void neitherAFractionNorARateBreaksOverALine() {
        assertThat(Fractions.markup("is 41" + NB + "3/8" + NB + "in long")).contains("<span class=\"unbroken\">41" + NB + "<span");
        assertThat(Fractions.markup("weighs 1.6" + NB + "lb/ft.")).isEqualTo("weighs <span class=\"unbroken\">1.6" + NB + "lb/ft</span>.");
    }

    @Test
    void tagsOfMarkupAreLeftAlone() {
        assertThat(Fractions.inMarkup(new Html("<p title=\"1/2\">1/2 &amp; <b>3</b></p>")).markup())
                .isEqualTo("<p title=\"1/2\"><span class=\"unbroken\"><span class=\"upper\">1</span>/<span class=\"lower\">2</span></span> &amp; <b>3</b></p>");
    }
}
