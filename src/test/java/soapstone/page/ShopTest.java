package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopTest {

    /** A tilde stands for the no-break space, a bar for the joiner. */
    @ParameterizedTest
    @CsvSource({"41 3/8 in long,41~3/8~in long", "3' 5-3/8\" tall,3'~5-|3/8\" tall", "9 holes,9 holes", "12 in and 3 more,12~in and 3 more",
            "5 inches,5 inches", "1051 mm.,1051~mm.", "36 1/2 − 2 × 1 1/4,36~1/2 − 2 × 1~1/4", "plain,plain", "page 3-4,page 3-4"})
    void keepsNumbersTogether(String text, String kept) {
        assertThat(Shop.keepTogether(text)).isEqualTo(kept.replace('~', '\u00A0').replace('|', '\u2060'));
    }
}
