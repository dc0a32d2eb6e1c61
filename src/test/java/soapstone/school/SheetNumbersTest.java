package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheet numbers are short, hard to misread, and a number that was misread is noticed. */
class SheetNumbersTest {

    private static final String SIGNS = "23456789BCDFGHJKMNPQRTVWX";

    @Test
    void noSignIsTakenForAnotherAndNoWordComesOut() {
        SplittableRandom chance = new SplittableRandom(7);
        Set<String> numbers = new HashSet<>();
        for (int i = 0; i < 2000; i++) {
            String number = SheetNumbers.fresh(chance);
            assertThat(number).matches("[A-Z2-9]{3}-[A-Z2-9]{4}").doesNotContainPattern("[AEIOUYLSZ01]");
            assertThat(SheetNumbers.read(number)).isEqualTo(new SheetNumbers.Typed(number, true));
            numbers.add(number);
        }
        assertThat(numbers).hasSizeGreaterThan(1990);
    }

    @Test
    void aWrongSignAndTwoNeighborsInEachOthersPlaceAreNoticed() {
        SplittableRandom chance = new SplittableRandom(11);
        for (int i = 0; i < 200; i++) {
            String signs = SheetNumbers.fresh(chance).replace("-", "");
            for (int at = 0; at < signs.length(); at++) {
                for (char other : SIGNS.toCharArray()) {
                    String wrong = signs.substring(0, at) + other + signs.substring(at + 1);
                    assertThat(SheetNumbers.read(wrong).sound()).as(signs + " as " + wrong).isEqualTo(wrong.equals(signs));
                }
                if (at > 0) {
                    String swapped = signs.substring(0, at - 1) + signs.charAt(at) + signs.charAt(at - 1) + signs.substring(at + 1);
                    assertThat(SheetNumbers.read(swapped).sound()).as(signs + " as " + swapped).isEqualTo(swapped.equals(signs));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"k7m42p?,K7M-42P?,false", "K7M 42P,K7M-42P,true", "k7m–42p,K7M-42P,true", "S1,S1,true", " s12 ,S12,true", "K7M-42PA,K7M-42PA,false"})
    void itIsReadHoweverItIsTyped(String typed, String number, boolean sound) {
        SheetNumbers.Typed read = SheetNumbers.read(typed);
        assertThat(read.sound()).isEqualTo(sound);
        assertThat(read.number()).isEqualTo(number);
    }

    @Test
    void capitalsAndDashesMakeNoDifference() {
        String number = SheetNumbers.fresh(new SplittableRandom(3));
        for (String typed : new String[] {number.toLowerCase(java.util.Locale.ROOT), number.replace("-", ""), number.replace('-', ' '), " " + number + "\t", number.replace('-', '\u2011')}) {
            assertThat(SheetNumbers.read(typed)).as(typed).isEqualTo(new SheetNumbers.Typed(number, true));
        }
    }
}
