package soapstone.quantity;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.One;

/**
 * Reads what people type in a shop: {@code 41 3/8}, {@code 3' 5-3/8"}, {@code 41.375}, {@code 1,250 lb}, {@code ⅝},
 * {@code 22° 30'}, {@code 12 pies cuadrados}. It never throws for a text and never guesses: what it cannot read, or can
 * read in two ways, comes back as {@link Again} with the reason and what would fit.
 *
 * <p>A text is cut into values first (a list at {@code ;} and line ends, a point at its comma), then each value into
 * tokens ({@link Lexer}), then the tokens are taken by the forms that a value can have ({@link ValueReader},
 * {@link AmountReader}, {@link UnitReader}). All words stand in {@link Spellings}.
 *
 * <p>Bounds: 200 signs a value, {@value #MOST_SIGNS_OF_MANY} a list or points, {@value #MOST_VALUES} values; amounts up
 * to 1e12 in their unit and 1e15 in base units. A text past its length is refused before anything else is done.
 */
public final class ShopReader {

    static final int MOST_SIGNS = 200;
    static final int MOST_SIGNS_OF_MANY = 4000;
    static final int MOST_VALUES = 200;

    private static final List<Reason> LIKE_A_LIST = List.of(Reason.TWO_NUMBERS, Reason.GAP_IN_NUMBER, Reason.ONE_ANSWER,
            Reason.DECIMAL_MARK, Reason.TWO_FRACTIONS, Reason.TWO_MARKS, Reason.RANGE);

    private ShopReader() {}

    /**
     * Reads a typed answer. Safe for any text and from any thread.
     *
     * @param text as typed; null counts as blank
     */
    public static Reading read(String text, ReadAs as) {
        if (text == null) {
            return new Reading.Blank();
        }
        boolean many = as.kind() == ReadAs.Kind.LIST || as.kind() == ReadAs.Kind.POINTS;
        int most = many ? MOST_SIGNS_OF_MANY : MOST_SIGNS;
        if (text.length() > most) {
            return Reason.TOO_LONG.at(most, String.valueOf(most));
        }
        return switch (as.kind()) {
            case LIST -> list(text, as);
            case POINT, POINTS -> PointReader.read(text, as);
            default -> ValueReader.read(text, 0, text.length(), as);
        };
    }

    private static Reading list(String text, ReadAs as) {
        List<One> items = new ArrayList<>();
        int from = 0;
        while (from <= text.length()) {
            int end = itemEnd(text, from);
            Reading item = ValueReader.read(text, from, end, as);
            if (item instanceof Again again) {
                return inList(again);
            } else if (item instanceof One one) {
                items.add(one);
            } else if (isSemicolon(text, end) && hasMore(text, end) || isSemicolon(text, end) && items.isEmpty()) {
                return Reason.LIST_GAP.at(end);
            }
            if (items.size() > MOST_VALUES) {
                return Reason.TOO_MANY.at(from, String.valueOf(MOST_VALUES));
            }
            from = end + 1;
        }
        if (items.size() == 1 && as.decimalMark() == '.' && text.indexOf(',') >= 0) {
            return Reason.LIST_SEPARATOR.at(text.indexOf(','));
        }
        return items.isEmpty() ? new Reading.Blank() : sameUnits(items, as, new Reading.Many(items));
    }

    static int itemEnd(String text, int from) {
        int end = from;
        while (end < text.length() && Signs.fold(text.charAt(end)) != ';' && Signs.fold(text.charAt(end)) != '\n') {
            end++;
        }
        return end;
    }

    private static boolean isSemicolon(String text, int at) {
        return at < text.length() && Signs.fold(text.charAt(at)) == ';';
    }

    private static boolean hasMore(String text, int from) {
        for (int i = from; i < text.length(); i++) {
            char c = Signs.fold(text.charAt(i));
            if (c != ' ' && c != '\n' && c != ';') {
                return true;
            }
        }
        return false;
    }

    /** What looks like two numbers in one is, in a list, most likely a comma or a space for the semicolon. */
    private static Again inList(Again again) {
        for (Reason reason : LIKE_A_LIST) {
            if (reason.isWhyOf(again)) {
                return Reason.LIST_SEPARATOR.at(again.at());
            }
        }
        return again;
    }

    /** In {@code 80; 160; 240 mm} where inches are asked, nobody can say whose the unit is. A bare 0 is 0 in any unit. */
    static Reading sameUnits(List<One> items, ReadAs as, Reading reading) {
        One other = null;
        boolean bare = false;
        for (One item : items) {
            bare |= item.bare() && item.base() != 0;
            other = item.bare() || item.unit().equals(as.unit()) ? other : item;
        }
        return bare && other != null ? Reason.MIXED_UNITS.at(0, other.unit().symbol(), as.unit().symbol()) : reading;
    }
}
