package soapstone.quantity;

import java.util.List;
import soapstone.quantity.Spellings.Role;
import soapstone.quantity.Spellings.Spelling;
import soapstone.source.Near;

/** What to say about a word that is no unit. */
final class UnknownWord {

    private static final int LONGEST = 24;
    private static final int SHORT = 2;

    private UnknownWord() {}

    static Reading.Again why(Token word, String text, ReadAs as) {
        String typed = word.in(text);
        Spelling known = Spellings.find(word.word);
        if (known != null && known.role() == Role.NUMBER_WORD) {
            return Reason.DIGITS_PLEASE.at(word.from, typed);
        }
        if (known != null && known.role() == Role.NOT_A_NUMBER) {
            return Reason.NOT_A_NUMBER.at(word.from, typed);
        }
        List<String> near = known != null || Spellings.isThing(word.word) ? List.of() : near(word.word, as);
        if (!near.isEmpty()) {
            return Reason.NEARLY_A_WORD.at(word.from, typed, String.join(", ", near));
        }
        return as.unit().symbol().isEmpty() || as.kind() == ReadAs.Kind.COUNT ? Reason.ONLY_A_NUMBER.at(word.from, typed)
                : Reason.UNKNOWN_WORD.at(word.from, typed, as.unit().symbol());
    }

    /** Near words that would fit what is asked go first; short words are near to too many others. */
    private static List<String> near(String word, ReadAs as) {
        if (word.length() < SHORT || word.length() > LONGEST) {
            return List.of();
        }
        List<String> fitting = Near.near(word, Spellings.words(Role.UNIT, as.unit().dimension()));
        return fitting.isEmpty() && word.length() > SHORT ? Near.near(word, Spellings.words(Role.UNIT, null)) : fitting;
    }
}
