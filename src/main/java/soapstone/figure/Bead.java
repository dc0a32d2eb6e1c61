package soapstone.figure;

/** A run of weld seen from above: its outline with the ripples of the puddle. */
final class Bead {

    private static final double RIPPLE = 5;
    private static final int MOST = 200;

    private Bead() {}

    static void draw(Sheet sheet, Box box) {
        double apart = Math.max(RIPPLE, box.width() / MOST);
        double middle = (box.top() + box.bottom()) / 2;
        double half = box.height() / 2;
        for (double x = box.left() + apart; x < box.right() - 1; x += apart) {
            double bow = Math.min(3, x - box.left());
            sheet.path(Pen.HATCH, Path.line(x - bow, middle - half, x, middle).lineTo(new Pt(x - bow, middle + half)));
        }
        sheet.plate(Pen.BEND, box, "bead");
    }
}
