package soapstone.figure;

import java.util.List;
import java.util.function.BiConsumer;
import org.assertj.core.data.Offset;

/** What measuring a drawing like a sheet of paper takes. */
final class Measuring {

    static final Offset<Double> PIXEL = Offset.offset(1.0);
    private static final int PARTS = 60;

    private Measuring() {}

    /** Draws parts of a kind and gives the amounts and each layout to a check. */
    static void eachLayout(String kind, boolean asCut, BiConsumer<Inputs, DrawnSvg> check) {
        for (int seed = 0; seed < PARTS; seed++) {
            RandomInputs random = new RandomInputs(seed);
            Inputs right = random.draw(kind);
            Inputs yours = random.off(right, FigureKinds.kind(kind).orElseThrow());
            Figure f = FigureKinds.draw(right.build(), asCut ? yours.build() : null, "f").orElseThrow();
            for (String svg : List.of(f.wide(), f.narrow())) {
                check.accept(right, DrawnSvg.read(svg));
            }
        }
    }

    /** Both layouts of a part with an answer's part over it. */
    static List<DrawnSvg> both(Inputs right, Inputs yours) {
        Figure f = FigureKinds.draw(right.build(), yours.build(), "f").orElseThrow();
        return List.of(DrawnSvg.read(f.wide()), DrawnSvg.read(f.narrow()));
    }

    static double one(Inputs in, String name) {
        return in.amounts(name)[0];
    }

    static double middle(Box box) {
        return (box.left() + box.right()) / 2;
    }
}
