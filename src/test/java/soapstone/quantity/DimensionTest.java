package soapstone.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DimensionTest {

    @ParameterizedTest
    @CsvSource({"length,length", "area,area", "length^2,area", "length*length,area", "volume/area,length", "force/area,pressure",
        "mass/volume,density", "length/time,speed", "force*length,moment", "energy,moment", "number,number", "mass/mass,number",
        "mass/area,mass/length^2", "length^4,length^4", "number/length,number/length", "area*time,length^2*time", "mass / volume,density"})
    void wordsAreReadAndPrinted(String typed, String printed) {
        assertThat(Dimension.parse(typed).orElseThrow()).hasToString(printed);
    }

    @Test
    void whatIsPrintedIsReadBack() {
        for (Unit unit : Units.all()) {
            for (Unit other : Units.all()) {
                Dimension d = unit.dimension().over(other.dimension());
                assertThat(Dimension.parse(d.toString())).as(d.toString()).contains(d);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "width", "length^", "length^x", "length^-2", "length/", "/time", "length**time", "length^999"})
    void anythingElseIsNone(String typed) {
        assertThat(Dimension.parse(typed)).isEmpty();
    }

    @Test
    void onlySomeHaveAWord() {
        assertThat(Dimension.AREA.isNamed()).isTrue();
        assertThat(Dimension.MASS.over(Dimension.AREA).isNamed()).isFalse();
        assertThat(Dimension.MASS).isNotEqualTo(Dimension.FORCE);
    }

    @Test
    void powersAndRoots() {
        assertThat(Dimension.VOLUME.root(3)).contains(Dimension.LENGTH);
        assertThat(Dimension.VOLUME.root(2)).isEmpty();
        assertThat(Dimension.LENGTH.power(12).isSensible()).isTrue();
        assertThat(Dimension.LENGTH.power(13).isSensible()).isFalse();
    }
}
