package soapstone.school;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Sheet numbers are short and hard to misread. */
class SheetNumbersTest {

    @Test
    void noSignIsTakenForAnotherAndNoWordComesOut() {
        SplittableRandom chance = new SplittableRandom(7);
        Set<String> numbers = new HashSet<>();
        for (int i = 0; i < 2000; i++) {
            String number = SheetNumbers.fresh(chance);
            assertThat(number).matches("[A-Z2-9]{3}-[A-Z2-9]{3}").doesNotContainPattern("[AEIOUYLSZ01]");
            numbers.add(number);
        }
        assertThat(numbers).hasSizeGreaterThan(1990);
    }
}
