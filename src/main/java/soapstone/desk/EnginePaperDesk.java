package soapstone.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import soapstone.exercise.Ask;
import soapstone.page.FormulaView;
import soapstone.paper.KeySheet;
import soapstone.school.Difficulty;
import soapstone.variant.Effect;
import soapstone.variant.Variant;
import soapstone.web.PaperDesk;
import soapstone.web.WorkDesk;

/** Answers what is printed out of a library. */
public final class EnginePaperDesk implements PaperDesk {

    private final Supplier<Library> current;
    private final String language;

    /** @param language of the words in drawings */
    public EnginePaperDesk(Supplier<Library> current, String language) {
        this.current = current;
        this.language = language;
    }

    @Override
    public PaperDesk in(String reader) {
        return reader.equals(language) ? this : new EnginePaperDesk(current, reader);
    }

    @Override
    public Optional<Asked> asked(WorkDesk.Piece piece) {
        Library library = current.get();
        return EngineWorkDesk.variant(library, piece).map(v -> asked(library, v, piece.settings().decimalMark()));
    }

    /** A draw that belongs to nobody's sheet. */
    public Asked asked(Variant variant) {
        return asked(current.get(), variant, Sheets.POINT);
    }

    private Asked asked(Library library, Variant variant, char decimalMark) {
        Links links = new Links(library);
        Books books = new Books(library, links);
        List<FormulaView> formulas = library.formulasOf(variant.exercise()).stream().map(books::formula).toList();
        return new Asked(new Sheets(library, links, language, decimalMark).asked(variant), formulas);
    }

    @Override
    public Optional<KeySheet.Problem> key(WorkDesk.Piece piece) {
        Library library = current.get();
        return EngineWorkDesk.variant(library, piece).map(v -> key(library, v, piece.problem().place()));
    }

    /** The key of a draw that belongs to nobody's sheet. */
    public KeySheet.Problem key(Variant variant, int place) {
        return key(current.get(), variant, place);
    }

    private static KeySheet.Problem key(Library library, Variant variant, int place) {
        Links links = new Links(library);
        Difficulty hard = Difficulty.of(variant.exercise(), variant.system());
        List<KeySheet.Answer> answers = new ArrayList<>();
        for (Ask ask : variant.model().asks()) {
            List<KeySheet.Slip> slips = variant.outcomes().stream().filter(o -> o.ask().equals(ask) && o.effect() == Effect.SEEN)
                    .map(o -> new KeySheet.Slip(o.slip().name(), Boxes.lower(links.family(o.slip().family())), Boxes.answer(variant.model(), o.theirs(), ask))).toList();
            answers.add(new KeySheet.Answer(ask.letter(), Boxes.answer(variant.model(), variant.right(), ask),
                    ask.isNumber() ? Optional.of(variant.right().number(ask.slot())) : Optional.empty(), slips));
        }
        return new KeySheet.Problem(place, variant.exercise().id(), variant.exercise().title(), hard.level(), hard.lines(), answers);
    }
}
