package soapstone.figure;

/** The sign of an answer's hole: a circle struck out with a cross. */
final class Crossed {

    private static final double LEAST_ARM = 5;

    private Crossed() {}

    static void hole(Sheet sheet, Pt c, double radius) {
        sheet.circle(Pen.YOURS_MARK, c, radius, "yours-hole");
        double arm = Math.max(LEAST_ARM, radius + 1.5);
        sheet.path(Pen.YOURS_MARK, Path.line(c.x() - arm, c.y() - arm, c.x() + arm, c.y() + arm)
                .moveTo(c.plus(-arm, arm)).lineTo(c.plus(arm, -arm)));
    }
}
