package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import soapstone.exercise.Ask;
import soapstone.exercise.Model;
import soapstone.expression.Frame;
import soapstone.mark.AnswerReader;
import soapstone.mark.AskMark;
import soapstone.mark.Fit;
import soapstone.mark.Marked;
import soapstone.mark.Typed;
import soapstone.mark.Verdict;
import soapstone.page.Answer;
import soapstone.page.AnswerBox;
import soapstone.quantity.ReadAs;
import soapstone.quantity.Reading;
import soapstone.quantity.Show;
import soapstone.quantity.ShopPrinter;
import soapstone.source.Message;
import soapstone.variant.Shown;
import soapstone.variant.Variant;

/** Answer boxes of a sheet, and what is said about each. */
final class Boxes {

    private static final char POINT = Sheets.POINT;

    private final Links links;
    private final Variant variant;
    private final Model model;
    private final char decimalMark;

    Boxes(Links links, Variant variant) {
        this(links, variant, POINT);
    }

    /** @param decimalMark of typed answers */
    Boxes(Links links, Variant variant, char decimalMark) {
        this.decimalMark = decimalMark;
        this.links = links;
        this.variant = variant;
        this.model = variant.model();
    }

    AnswerBox box(Ask ask, Answer answer) {
        List<AnswerBox.Option> options = ask.options().stream()
                .map(o -> new AnswerBox.Option(o.name(), Shown.text(model, o.text(), variant.right(), variant.right()))).toList();
        return new AnswerBox(ask.letter(), kind(ask), Shown.text(model, ask.prompt(), variant.right(), variant.right()), size(ask, ask.to()),
                size(ask, ask.within()), ask.kind() == Ask.Kind.COUNT || ask.kind() == Ask.Kind.CHOICE ? "" : ask.unit().symbol(), reads(ask),
                options, answer);
    }

    private static AnswerBox.Kind kind(Ask ask) {
        return ask.kind() == Ask.Kind.POINTS ? AnswerBox.Kind.POINT : AnswerBox.Kind.valueOf(ask.kind().name());
    }

    private String size(Ask ask, double size) {
        return size == 0 ? "" : ShopPrinter.text(size, ask.unit(), model.system(), Show.AUTO, POINT);
    }

    /** How a box is read, in the shorthand of {@link Ways}. */
    private String reads(Ask ask) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return "";
        }
        ReadAs as = AnswerReader.readAs(model, ask, decimalMark);
        return Ways.shorthand(as);
    }

    Answer read(Ask ask, Typed typed) {
        if (typed.reading() instanceof Reading.Again again) {
            return Answer.askedAgain(typed.text(), again.why());
        }
        String understood = understood(ask, typed);
        return understood.isEmpty() ? Answer.empty() : Answer.read(typed.text(), understood);
    }

    /** What a run gives at an ask, as a page shows it: of a choice the text of its option. */
    static String answer(Model model, Frame run, Ask ask) {
        return ask.options().stream().filter(o -> o.label() == run.number(ask.slot())).findFirst()
                .map(o -> Shown.text(model, o.text(), run, run)).orElseGet(() -> Shown.answer(model, run, ask));
    }

    private String understood(Ask ask, Typed typed) {
        if (ask.kind() == Ask.Kind.CHOICE) {
            return ask.options().stream().filter(o -> o.name().equalsIgnoreCase(typed.text().strip())).findFirst()
                    .map(o -> Shown.text(model, o.text(), variant.right(), variant.right())).orElse(typed.text().strip());
        }
        return understood(typed.reading());
    }

    static String understood(Reading reading) {
        if (reading instanceof Reading.One one) {
            return one.text();
        } else if (reading instanceof Reading.Many many) {
            return String.join("; ", many.items().stream().map(Reading.One::text).toList());
        } else if (reading instanceof Reading.Points points) {
            List<String> all = new ArrayList<>();
            for (int i = 0; i < points.x().size(); i++) {
                all.add("(" + points.x().get(i).text() + ", " + points.y().get(i).text() + ")");
            }
            return String.join("; ", all);
        }
        return "";
    }

    Answer marked(AskMark mark, Marked marked) {
        String typed = mark.typed().text();
        String understood = understood(mark.ask(), mark.typed());
        return switch (mark.verdict()) {
            case RIGHT -> Answer.marked(typed, Answer.State.RIGHT, understood);
            case RIGHT_BUT -> Answer.marked(typed, Answer.State.RIGHT_BUT, understood, beside(mark.say()));
            case NEAR -> Answer.marked(typed, Answer.State.NEAR, understood, beside(mark.say()));
            case CARRIED -> Answer.carried(typed, understood, own(mark, marked));
            case SLIP -> Answer.slip(typed, understood, titles(mark));
            case UNEXPLAINED -> Answer.marked(typed, Answer.State.UNEXPLAINED, understood);
            case BLANK -> Answer.marked(typed, Answer.State.BLANK, "");
            case ASK_AGAIN -> Answer.askedAgain(typed, mark.say());
        };
    }

    /** The page says the verdict itself; beside it stands only what is more. */
    private static Message beside(Message say) {
        return new Message("beside." + say.key(), say.with());
    }

    private Answer.Own[] own(AskMark mark, Marked marked) {
        List<Answer.Own> own = new ArrayList<>();
        for (AskMark before : marked.asks()) {
            if (before == mark) {
                break;
            }
            if (before.verdict().isMarked() && !before.verdict().isRight() && before.verdict() != Verdict.CARRIED) {
                own.add(new Answer.Own(before.ask().letter(), understood(before.ask(), before.typed())));
            }
        }
        return own.toArray(new Answer.Own[0]);
    }

    private String[] titles(AskMark mark) {
        return mark.fits().stream().map(this::title).distinct().toArray(String[]::new);
    }

    /** What a fit is called: the title of its family, of both for a pair. */
    String title(Fit fit) {
        if (fit.slips().size() < 2) {
            return lower(links.family(fit.family()));
        }
        return String.join(" + ", fit.slips().stream().map(s -> lower(links.family(s.family()))).distinct().toList());
    }

    static String lower(String title) {
        boolean word = title.startsWith("A ") || title.length() > 1 && Character.isLowerCase(title.charAt(1));
        return word ? title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1) : title;
    }

    static Message verbatim(String text) {
        return soapstone.page.Words.verbatim(text);
    }
}
