package soapstone.figure;

/** Several views of one part on a sheet: side by side, or one under the other, each with its caption. */
final class Views {

    private static final double BETWEEN = 36;
    private static final double UNDER = 22;
    private static final double CAPTION = 22;

    private final Sheet sheet;
    private final boolean beside;
    private double end;

    private Views(Sheet sheet, boolean beside) {
        this.sheet = sheet;
        this.beside = beside;
    }

    /** Views from left to right, the middles of their heights on one line. */
    static Views beside(Sheet sheet) {
        return new Views(sheet, true);
    }

    /** Views from the top down, their middles over each other. */
    static Views under(Sheet sheet) {
        return new Views(sheet, false);
    }

    /** The room that views side by side do not have for themselves, for each view after the first. */
    static double between() {
        return BETWEEN;
    }

    Views add(Sheet view, String caption) {
        Label label = Label.text(caption);
        Box b = view.bounds();
        double low = b.bottom() + (label.isEmpty() ? 0 : CAPTION);
        view.letter(label, Lettering.NOTE, (b.left() + b.right()) / 2, low - 4, Anchor.MIDDLE);
        Box all = view.bounds();
        if (beside) {
            sheet.add(view, end - all.left(), -(all.top() + all.bottom()) / 2);
            end += all.width() + BETWEEN;
        } else {
            sheet.add(view, -(all.left() + all.right()) / 2, end - all.top());
            end += all.height() + UNDER;
        }
        return this;
    }
}
