package soapstone.variant;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import soapstone.exercise.Ask;
import soapstone.exercise.Conventions;
import soapstone.exercise.Model;
import soapstone.quantity.Quantity;
import soapstone.quantity.Show;

/**
 * Asks as a shop has them rounded. What an exercise marks right beyond half of its own step stays as wide as it was: that part
 * is for what is rounded on the way, which does not change with the last step. So an answer that is rounded as asked is right
 * with any step. Whether slips are still told apart is seen when numbers are drawn.
 */
final class Rounding {

    /** Models by what is set; there are as few as there are picks. As in {@link soapstone.exercise.Kept}, one made twice does no harm. */
    private Map<Conventions, Model> models = Map.of();

    private Rounding() {}

    static Model of(Model model, Conventions set) {
        Conventions own = set.only(model.asks().stream().map(Ask::convention).collect(Collectors.toSet()));
        return own.isEmpty() ? model : model.kept().get(Rounding.class, Rounding::new).model(model, own);
    }

    private Model model(Model model, Conventions own) {
        Model there = models.get(own);
        return there != null ? there : keep(own, rounded(model, own));
    }

    private Model keep(Conventions own, Model made) {
        Map<Conventions, Model> more = new HashMap<>(models);
        more.put(own, made);
        models = Map.copyOf(more);
        return made;
    }

    private static Model rounded(Model model, Conventions set) {
        return model.asking(model.asks().stream().map(a -> set.value(a.convention()).map(to -> rounded(model, a, to)).orElse(a)).toList());
    }

    private static Ask rounded(Model model, Ask ask, Quantity to) {
        double step = to.base(model.system());
        return ask.rounded(step, step / 2 + ask.within() - ask.to() / 2, show(model, ask, to, step));
    }

    /** Fractions stay fractions, with the other bottom. */
    private static Show show(Model model, Ask ask, Quantity to, double step) {
        double bottom = 1 / to.in(ask.unit(), model.system()).amount();
        boolean fraction = ask.show().form() == Show.Form.FRACTION && bottom == Math.rint(bottom);
        return fraction ? Show.fraction((int) bottom) : Show.decimal(ask.unit().fromBase(step, model.system()));
    }
}
