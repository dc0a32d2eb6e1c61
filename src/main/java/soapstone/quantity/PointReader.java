package soapstone.quantity;

import java.util.ArrayList;
import java.util.List;
import soapstone.quantity.Reading.Again;
import soapstone.quantity.Reading.Blank;
import soapstone.quantity.Reading.One;

/**
 * Reads points: {@code 4 1/4, 2 1/2}, {@code (4.25, 2.5)}, {@code x 4 1/4 y 2 1/2}, {@code 4 1/4; 2 1/2}. Several points
 * stand on lines of their own, in brackets, or between semicolons.
 */
final class PointReader {

    private final String text;
    private final ReadAs as;
    private final List<One> xs = new ArrayList<>();
    private final List<One> ys = new ArrayList<>();
    private Again trouble;

    private PointReader(String text, ReadAs as) {
        this.text = text;
        this.as = as;
    }

    static Reading read(String text, ReadAs as) {
        return new PointReader(text, as).points();
    }

    private Reading points() {
        if (as.kind() == ReadAs.Kind.POINT) {
            point(0, text.length());
        } else {
            lines();
        }
        if (trouble != null) {
            return trouble;
        }
        if (xs.isEmpty()) {
            return new Blank();
        }
        List<One> all = new ArrayList<>(xs);
        all.addAll(ys);
        return ShopReader.sameUnits(all, as, new Reading.Points(xs, ys));
    }

    private void lines() {
        int from = 0;
        while (from <= text.length() && trouble == null) {
            int end = from;
            while (end < text.length() && sign(end) != '\n') {
                end++;
            }
            line(from, end);
            from = end + 1;
        }
    }

    /** A line of points: in brackets, or between semicolons unless its one semicolon parts two coordinates. */
    private void line(int from, int end) {
        int open = find(from, end, '(');
        if (open >= 0 && find(open + 1, end, '(') >= 0) {
            bracketed(from, end);
            return;
        }
        int semi = find(from, end, ';');
        boolean one = semi < 0 || find(semi + 1, end, ';') < 0 && comma(from, semi) < 0 && comma(semi + 1, end) < 0
                && label(from, end, 'y') < 0 && !isEmpty(semi + 1, end);
        if (one) {
            point(from, end);
            return;
        }
        int at = from;
        while (at <= end && trouble == null) {
            int to = find(at, end, ';');
            to = to < 0 ? end : to;
            if (isEmpty(at, to) && to < end) {
                trouble = Reason.LIST_GAP.at(to);
            } else {
                point(at, to);
            }
            at = to + 1;
        }
    }

    private void bracketed(int from, int end) {
        int at = from;
        while (trouble == null) {
            int open = find(at, end, '(');
            int close = open < 0 ? -1 : find(open, end, ')');
            if (!isSeparator(at, open < 0 ? end : open) || open >= 0 && close < 0) {
                trouble = Reason.BRACKET.at(open < 0 ? at : open);
            } else if (open < 0) {
                return;
            } else {
                point(open, close + 1);
                at = close + 1;
            }
        }
    }

    private boolean isSeparator(int from, int end) {
        for (int i = from; i < end; i++) {
            char c = sign(i);
            if (c != ' ' && c != ',' && c != ';') {
                return false;
            }
        }
        return true;
    }

    // ---- one point

    private void point(int start, int stop) {
        int from = start;
        int end = stop;
        while (from < end && isSpace(from)) {
            from++;
        }
        while (end > from && isSpace(end - 1)) {
            end--;
        }
        if (from == end) {
            return;
        }
        if (xs.size() == ShopReader.MOST_VALUES) {
            trouble = Reason.TOO_MANY.at(from, String.valueOf(ShopReader.MOST_VALUES));
            return;
        }
        boolean open = sign(from) == '(';
        if (open != (sign(end - 1) == ')')) {
            trouble = Reason.BRACKET.at(open ? from : end - 1);
            return;
        }
        coordinates(open ? from + 1 : from, open ? end - 1 : end);
    }

    private void coordinates(int from, int end) {
        int x = label(from, end, 'x');
        int y = label(from, end, 'y');
        if (x >= 0 && y >= 0) {
            labelled(from, end, x, y);
            return;
        }
        int cut = find(from, end, ';');
        cut = cut < 0 ? comma(from, end) : cut;
        if (x >= 0 || y >= 0 || cut < 0) {
            trouble = whyNoTwo(from, end);
            return;
        }
        pair(from, cut, cut + 1, end);
    }

    private void labelled(int from, int end, int x, int y) {
        int first = Math.min(x, y);
        int second = Math.max(x, y);
        if (!isEmpty(from, first) || label(second + 1, end, 'x') >= 0 || label(second + 1, end, 'y') >= 0) {
            trouble = notTwo(from);
            return;
        }
        int firstEnd = second;
        while (firstEnd > first + 1 && (isSpace(firstEnd - 1) || sign(firstEnd - 1) == ',' || sign(firstEnd - 1) == ';')) {
            firstEnd--;
        }
        if (x < y) {
            pair(afterLabel(x), firstEnd, afterLabel(y), end);
        } else {
            pair(afterLabel(x), end, afterLabel(y), firstEnd);
        }
    }

    private int afterLabel(int label) {
        int at = label + 1;
        while (at < text.length() && isSpace(at)) {
            at++;
        }
        return at < text.length() && (sign(at) == ':' || sign(at) == '=') ? at + 1 : label + 1;
    }

    private void pair(int xFrom, int xEnd, int yFrom, int yEnd) {
        One x = coordinate(xFrom, Math.max(xFrom, xEnd));
        One y = trouble == null ? coordinate(yFrom, Math.max(yFrom, yEnd)) : null;
        if (trouble == null) {
            xs.add(x);
            ys.add(y);
        }
    }

    private One coordinate(int from, int end) {
        Reading reading = ValueReader.read(text, from, end, as);
        if (reading instanceof One one) {
            return one;
        }
        trouble = reading instanceof Again again && !Reason.ONE_ANSWER.isWhyOf(again) ? again
                : notTwo(from);
        return null;
    }

    private Again notTwo(int at) {
        return (as.kind() == ReadAs.Kind.POINT ? Reason.TWO_COORDINATES : Reason.POINTS_FORM).at(at);
    }

    /** One value alone, or none that can be read: its own reason when it has one, else that two are asked. */
    private Again whyNoTwo(int from, int end) {
        Reading reading = ValueReader.read(text, from, end, as);
        if (reading instanceof Again again) {
            boolean own = Reason.STRANGE_SIGN.isWhyOf(again) || Reason.BACKSLASH.isWhyOf(again)
                    || Reason.NEARLY_A_WORD.isWhyOf(again);
            return own ? again : notTwo(from);
        }
        return notTwo(from);
    }

    /**
     * The comma between two coordinates, or −1: the one comma with a space after it, or else the only comma, unless it
     * can be a decimal mark or part thousands.
     */
    private int comma(int from, int end) {
        int spaced = -1;
        int tight = -1;
        int spacedCount = 0;
        int tightCount = 0;
        for (int i = from; i < end; i++) {
            if (sign(i) != ',') {
                continue;
            }
            if (i + 1 < end && isDigit(i + 1) && i > from && isDigit(i - 1)) {
                tight = i;
                tightCount++;
            } else {
                spaced = i;
                spacedCount++;
            }
        }
        if (spacedCount > 0) {
            return spacedCount == 1 ? spaced : -1;
        }
        return tightCount == 1 && !isOfNumber(tight, from, end) ? tight : -1;
    }

    /** Whether a comma between digits can belong to the number: as decimal mark, or before three digits. */
    private boolean isOfNumber(int comma, int from, int end) {
        int start = comma;
        while (start > from && isDigit(start - 1)) {
            start--;
        }
        int to = comma + 1;
        while (to < end && isDigit(to)) {
            to++;
        }
        boolean fractionBefore = start > from && (sign(start - 1) == '/' || sign(start - 1) == '.');
        if (fractionBefore) {
            return false;
        }
        return as.decimalMark() == ',' || to - comma == 4 && comma - start <= 3;
    }

    /** Index of a lone letter x or y, or −1. */
    private int label(int from, int end, char letter) {
        for (int i = from; i < end; i++) {
            boolean lone = (i == from || !Character.isLetter(text.charAt(i - 1)))
                    && (i + 1 >= end || !Character.isLetter(text.charAt(i + 1)));
            if (lone && Signs.letter(sign(i)) == letter) {
                return i;
            }
        }
        return -1;
    }

    private int find(int from, int end, char wanted) {
        for (int i = from; i < end; i++) {
            if (sign(i) == wanted) {
                return i;
            }
        }
        return -1;
    }

    private char sign(int i) {
        char c = Signs.fold(text.charAt(i));
        return c == '[' ? '(' : c == ']' ? ')' : c;
    }

    private boolean isSpace(int i) {
        return sign(i) == ' ' || sign(i) == '\n';
    }

    private boolean isDigit(int i) {
        return sign(i) >= '0' && sign(i) <= '9';
    }

    private boolean isEmpty(int from, int end) {
        for (int i = from; i < end; i++) {
            if (!isSpace(i)) {
                return false;
            }
        }
        return true;
    }
}
