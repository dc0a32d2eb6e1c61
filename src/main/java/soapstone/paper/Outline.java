package soapstone.paper;

import java.awt.geom.Arc2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;

/** Reads the paths that our drawings are written with: absolute moves, lines and upright elliptic arcs. */
final class Outline {

    private final String data;
    private int at;

    private Outline(String data) {
        this.data = data;
    }

    /** @throws IllegalArgumentException for a step that our drawings do not have */
    static Path2D read(String data) {
        return new Outline(data).path();
    }

    private Path2D path() {
        Path2D path = new Path2D.Double();
        while (more()) {
            char step = data.charAt(at++);
            switch (step) {
                case 'M' -> path.moveTo(number(), number());
                case 'L' -> path.lineTo(number(), number());
                case 'A' -> arc(path);
                case 'Z' -> path.closePath();
                default -> throw new IllegalArgumentException("no step of a drawing: " + step + " in " + data);
            }
        }
        return path;
    }

    private boolean more() {
        while (at < data.length() && (data.charAt(at) == ' ' || data.charAt(at) == ',')) {
            at++;
        }
        return at < data.length();
    }

    private double number() {
        more();
        int from = at;
        while (at < data.length() && (Character.isDigit(data.charAt(at)) || data.charAt(at) == '.' || data.charAt(at) == '-' && at == from)) {
            at++;
        }
        return Double.parseDouble(data.substring(from, at));
    }

    /** SVG names the ends of an arc, the paths here its center. */
    private void arc(Path2D path) {
        double rx = number();
        double ry = number();
        number();
        boolean large = number() == 1;
        boolean sweep = number() == 1;
        double x = number();
        double y = number();
        double flat = ry / rx;
        double fromX = path.getCurrentPoint().getX();
        double fromY = path.getCurrentPoint().getY() / flat;
        double half = Math.hypot(x - fromX, y / flat - fromY) / 2;
        if (half == 0) {
            return;
        }
        double radius = Math.max(rx, half);
        double rise = Math.sqrt(Math.max(0, radius * radius - half * half)) * (large == sweep ? -1 : 1);
        double centerX = (fromX + x) / 2 - (y / flat - fromY) / 2 / half * rise;
        double centerY = (fromY + y / flat) / 2 + (x - fromX) / 2 / half * rise;
        double from = Math.toDegrees(Math.atan2(fromY - centerY, fromX - centerX));
        double turn = Math.toDegrees(Math.atan2(y / flat - centerY, x - centerX)) - from;
        turn = sweep && turn < 0 ? turn + 360 : !sweep && turn > 0 ? turn - 360 : turn;
        Arc2D arc = new Arc2D.Double(centerX - radius, centerY - radius, 2 * radius, 2 * radius, -from, -turn, Arc2D.OPEN);
        path.append(arc.getPathIterator(AffineTransform.getScaleInstance(1, flat)), true);
    }
}
