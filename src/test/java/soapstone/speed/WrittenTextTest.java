package soapstone.speed;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import soapstone.desk.Drawings;
import soapstone.desk.Library;
import soapstone.exercise.Exercise;
import soapstone.page.Figure;
import soapstone.quantity.UnitSystem;
import soapstone.variant.Drawer;

/** Speeds are compared only where both sides give the same text. */
class WrittenTextTest {

    @Test
    void putsNumbersBackWhereTheyWere() {
        WrittenText text = WrittenText.of("<path d=\"M0 -1.5L12.25 7\" class=\"c2\"/>&#188;<text x=\"-0.05\">007 1e5 3.100</text>");
        assertThat(text.write()).isEqualTo("<path d=\"M0 -1.5L12.25 7\" class=\"c2\"/>&#188;<text x=\"-0.05\">007 1e5 3.100</text>");
        assertThat(text.numbers()).isEqualTo(5);
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void writesTheDrawingsOfTheBank(UnitSystem units) throws Exception {
        int compared = 0;
        for (Exercise exercise : Library.read(null, null).library().orElseThrow().bank().exercises().values()) {
            Figure figure = Drawer.draw(exercise, units, 7).flatMap(Drawings.in("en")::asked).orElse(null);
            if (figure != null) {
                WrittenText written = WrittenText.of(figure.wide().markup());
                assertThat(written.write()).as(exercise.id()).isEqualTo(figure.wide().markup());
                assertThat(written.numbers()).as(exercise.id()).isGreaterThan(20);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(70);
    }
}
