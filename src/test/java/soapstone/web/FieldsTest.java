package soapstone.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class FieldsTest {

    @Test
    void readsWhatBrowsersSend() {
        Fields fields = Fields.parse("box-a=3%27+5-3%2F8%22&box-b=%E2%85%9D&empty=&bare&=");
        assertThat(fields.text("box-a")).isEqualTo("3' 5-3/8\"");
        assertThat(fields.startingWith("box-")).containsEntry("b", "⅝").hasSize(2);
        assertThat(fields.get("bare")).contains("");
        assertThat(fields.get("none")).isEmpty();
        assertThat(Fields.parse(null).startingWith("")).isEmpty();
    }

    @Test
    void keepsLineEndsAndRefusesOtherControls() {
        assertThat(Fields.parse("a=1%0D%0A2%09").text("a")).isEqualTo("1\r\n2\t");
        assertThatThrownBy(() -> Fields.parse("a=%07")).isInstanceOf(Trouble.class);
        assertThatThrownBy(() -> Fields.parse("a%00=1")).isInstanceOf(Trouble.class);
    }

    @Test
    void refusesHalfLettersAndHalfEscapes() {
        assertThatThrownBy(() -> Fields.parse("a=%E2%85")).isInstanceOf(Trouble.class);
        assertThatThrownBy(() -> Fields.parse("a=%C0%AF")).isInstanceOf(Trouble.class);
        assertThatThrownBy(() -> Fields.parse("a=%4")).isInstanceOf(Trouble.class);
        assertThatThrownBy(() -> Fields.parse("a=%+1")).isInstanceOf(Trouble.class);
    }

    @Test
    void takesTwoHundredFieldsAndNotOneMore() {
        StringBuilder many = new StringBuilder("f0=1");
        for (int i = 1; i < Fields.MOST; i++) {
            many.append("&f").append(i).append("=1");
        }
        assertThat(Fields.parse(many.toString()).startingWith("f")).hasSize(Fields.MOST);
        assertThatThrownBy(() -> Fields.parse(many + "&one=more")).isInstanceOf(Trouble.class);
    }
}
