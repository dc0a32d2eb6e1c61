package soapstone.figure;

import java.util.List;
import org.assertj.core.data.Offset;

/** What measuring a drawing like a sheet of paper takes. */
final class Measuring {

    static final Offset<Double> PIXEL = Offset.offset(1.0);

    private Measuring() {}

    /** Both layouts of a part with an answer's part over it. */
    static List<DrawnSvg> both(Inputs right, Inputs yours) {
        Figure f = FigureKinds.draw(right.build(), yours.build(), "f").orElseThrow();
        return List.of(DrawnSvg.read(f.wide()), DrawnSvg.read(f.narrow()));
    }

    static double middle(Box box) {
        return (box.left() + box.right()) / 2;
    }
}
