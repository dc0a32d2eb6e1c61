package soapstone.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import soapstone.source.Message;

/** Every page of every view: what is text stays text. */
class PagesTest {

    /** A text that would show at once if it came out as markup or were run as a template. */
    private static final String CANARY = "\"><svg onload=x>'{{7*7}}${7*7}&amp;";

    private final Reader reader = Reader.guest(Words.of("en"));
    private final Pages pages = new Pages("/site/0/", true);
    private final Words words = Words.of("en");

    /** A view of that type with the canary for every text, two of everything that is a list, and every choice in turn. */
    private static final class Filler {

        private final int turn;

        Filler(int turn) {
            this.turn = turn;
        }

        <T> T fill(Class<T> type) throws ReflectiveOperationException {
            return type.cast(value(type));
        }

        private Object value(Type type) throws ReflectiveOperationException {
            if (type instanceof ParameterizedType many) {
                Object one = value(many.getActualTypeArguments()[0]);
                return many.getRawType() == Optional.class ? Optional.of(one) : List.of(one, value(many.getActualTypeArguments()[0]));
            }
            Class<?> plain = (Class<?>) type;
            if (plain == String.class) {
                return CANARY;
            }
            if (plain == Html.class) {
                return new Html("<i>ours</i>");
            }
            if (plain == Message.class) {
                return Words.verbatim(CANARY);
            }
            if (plain == int.class || plain == Integer.class) {
                return 1;
            }
            if (plain == long.class) {
                return 1L;
            }
            if (plain == boolean.class) {
                return true;
            }
            return plain.isEnum() ? plain.getEnumConstants()[turn % plain.getEnumConstants().length] : record(plain);
        }

        private Object record(Class<?> type) throws ReflectiveOperationException {
            RecordComponent[] parts = type.getRecordComponents();
            Object[] values = new Object[parts.length];
            Class<?>[] types = new Class<?>[parts.length];
            for (int i = 0; i < parts.length; i++) {
                values[i] = value(parts[i].getGenericType());
                types[i] = parts[i].getType();
            }
            if (type == SheetView.class && values[4] != SheetView.Stage.MARKED) {
                values[values.length - 1] = Optional.empty();
            }
            return type.getDeclaredConstructor(types).newInstance(values);
        }
    }

    private void isText(Supplier<Page> page) {
        String html = page.get().toString();
        assertThat(html).contains("&lt;svg onload=x&gt;&#39;{{7*7}}${7*7}&amp;amp;").doesNotContain("<svg onload").doesNotContain("\">'").doesNotContain("49");
        assertThat(html).endsWith("</html>\n");
    }

    @Test
    void textsStayTextsOnEveryPageInEveryState() throws ReflectiveOperationException {
        for (int turn = 0; turn < 30; turn++) {
            Filler f = new Filler(turn);
            FrontView front = f.fill(FrontView.class);
            isText(() -> pages.front(reader, front));
            isText(() -> pages.units(reader, front.units()));
            UnitView unit = f.fill(UnitView.class);
            isText(() -> pages.unit(reader, unit));
            SheetView sheet = f.fill(SheetView.class);
            isText(() -> pages.sheet(reader, sheet));
            LessonView lesson = f.fill(LessonView.class);
            isText(() -> pages.lesson(reader, lesson));
            CourseUnit course = f.fill(CourseUnit.class);
            isText(() -> pages.lessons(reader, List.of(course)));
            FormulaView formula = f.fill(FormulaView.class);
            isText(() -> pages.formula(reader, formula));
            FormulaTopic topic = f.fill(FormulaTopic.class);
            isText(() -> pages.formulas(reader, List.of(topic)));
            BenchView bench = f.fill(BenchView.class);
            isText(() -> pages.bench(reader, bench));
            TableView table = new TableView(CANARY, CANARY, CANARY, List.of(CANARY), List.of(CANARY), List.of(List.of(CANARY)), List.of());
            isText(() -> pages.table(reader, table));
            isText(() -> pages.tables(reader, List.of(Reference.table(CANARY, CANARY))));
            FigureKindView kind = f.fill(FigureKindView.class);
            isText(() -> pages.figureKind(reader, kind));
            isText(() -> pages.figureKinds(reader, List.of(kind.link())));
            isText(() -> pages.cautions(reader, List.of(new Caution(CANARY, CANARY, CANARY))));
            AnswersView answers = f.fill(AnswersView.class);
            isText(() -> pages.answers(reader, answers));
            isText(() -> pages.about(reader, new AboutView(CANARY, 1, 1, 1, 1, 1)));
            isText(() -> pages.trouble(reader, new TroubleView(404, "trouble.404", List.of(Words.verbatim(CANARY)), List.of())));
        }
    }

    @Test
    void aTableRowMustFitItsHeads() {
        assertThatThrownBy(() -> new TableView("t", "", "", List.of(), List.of("a", "b"), List.of(List.of("1")), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void namesInAddressesAreEscaped() {
        assertThat(Address.of(Reference.formula("a/b c?d", ""))).isEqualTo("/formulas/a%2Fb%20c%3Fd");
    }

    @Test
    void whatTheScriptSaysIsWhatThePageSays() {
        assertThat(pages.reading(words, Answer.read("4 1/4", "4 1/4 in"), true)).isEqualTo("reads as 4\u00A01/4\u00A0in. Not marked yet.");
        assertThat(pages.reading(words, Answer.read("4 1/4", "4 1/4 in"), false)).isEqualTo("reads as 4\u00A01/4\u00A0in.");
        assertThat(pages.reading(words, Answer.askedAgain("x", Words.verbatim("There is no number.")), true)).isEqualTo("Please write it again. There is no number.");
        assertThat(pages.reading(words, Answer.empty(), true)).isEmpty();
    }
}
