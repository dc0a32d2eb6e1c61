package soapstone.figure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Loads, shares of a whole, welds and layers. */
final class LoadMeasures {

    /** The shaft of an arrow ends in its head. */
    private static final double HEAD = 12;

    private LoadMeasures() {}

    static void put(Map<String, Consumer<Paper>> all) {
        all.put("trailer", LoadMeasures::trailer);
        all.put("loaded-skid", LoadMeasures::skid);
        all.put("sling", LoadMeasures::sling);
        all.put("load-bar", p -> shares(p, "rating", "rating", "trailer", "tank", "load"));
        all.put("order-bar", LoadMeasures::order);
        all.put("price-bar", p -> shares(p, "price", "price", "material", "labor"));
        all.put("fillet-weld", LoadMeasures::weld);
        all.put("stack", LoadMeasures::stack);
        all.put("drill", p -> p.same("drill and its edge", p.path("drill").width(), 2 * p.svg.radius("edge")));
    }

    static void trailer(Paper p) {
        double bed = p.has("bed") ? p.at("bed") : 0;
        double ball = p.svg.circles("ball").get(0).x();
        double scale = (p.svg.circles("axle").get(0).x() - ball) / (bed + p.at("axle"));
        p.same("balance point", Measuring.middle(p.path("weight")) - ball, (bed + p.at("center")) * scale);
        if (bed > 0) {
            p.same("front of the bed", p.svg.rectangle("bed").left() - ball, bed * scale);
        }
        if (p.isAsCut() && p.shows("yours-weight")) {
            p.yours("balance point", Measuring.middle(p.path("yours-weight")) - ball, (bed + p.theirs("place")) * scale);
        }
    }

    private static void skid(Paper p) {
        Box skid = p.part();
        double scale = skid.width() / p.at("length");
        List<Box> weights = p.paths("weight");
        double most = Arrays.stream(p.all("weights")).max().orElseThrow();
        double longest = weights.stream().mapToDouble(Box::height).max().orElseThrow() + HEAD;
        for (int i = 0; i < weights.size(); i++) {
            p.same("place of load " + (i + 1), Measuring.middle(weights.get(i)) - skid.left(), p.all("places")[i] * scale);
            p.same("arrow of load " + (i + 1), weights.get(i).height() + HEAD, Math.max(HEAD + 1, longest * p.all("weights")[i] / most));
        }
        for (Box balance : p.paths("balance")) {
            p.same("balance point", Measuring.middle(balance) - skid.left(), p.at("balance") * scale);
        }
        for (Box balance : p.paths("yours-balance")) {
            p.yours("balance point", Measuring.middle(balance) - skid.left(), p.theirs("balance") * scale);
        }
    }

    private static void sling(Paper p) {
        Box legs = p.path("legs");
        p.same("angle of a leg", Math.toDegrees(Math.atan2(legs.height(), legs.width() / 2)), p.at("angle"), 0.5);
        double per = (p.path("weight").height() + HEAD) / p.at("load");
        if (p.has("pull")) {
            p.same("pull", Paper.diagonal(p.path("pull")) + HEAD, Math.max(HEAD + 1, p.at("pull") * per));
        }
        if (p.isAsCut() && p.shows("yours-pull")) {
            p.yours("pull", Paper.diagonal(p.path("yours-pull")) + HEAD, Math.max(HEAD + 1, p.theirs("pull") * per));
        }
    }

    private static void shares(Paper p, String whole, String widest, String... names) {
        Box bar = p.part();
        double scale = bar.width() / p.at(whole);
        double sum = 0;
        double theirs = 0;
        for (int i = 0; i < names.length; i++) {
            Box share = p.svg.rectangles("share").get(i);
            p.same("start of " + names[i], share.left() - bar.left(), sum * scale);
            p.same(names[i], share.width(), p.at(names[i]) * scale);
            sum += p.at(names[i]);
            theirs += p.theirs(names[i]);
        }
        double most = 1.6 * Math.max(p.at(whole), sum);
        for (Box yours : p.isAsCut() ? p.svg.rectangles("yours-part") : List.<Box>of()) {
            p.yours("bar", yours.width(), Math.min(most, Math.max(p.theirs(widest), theirs)) * scale);
        }
    }

    private static void order(Paper p) {
        shares(p, "order", "order", "good");
        Box bar = p.part();
        List<Box> pieces = p.paths("piece");
        if (p.has("piece")) {
            double each = p.at("piece") * bar.width() / p.at("order");
            p.row("piece", Paper.from(bar.left(), Paper.lefts(pieces)), pieces.size(), each, each);
        }
    }

    private static void weld(Paper p) {
        Box weld = p.path("weld");
        p.same("two equal legs", weld.width(), weld.height());
        if (p.has("throat")) {
            p.same("throat", (p.path("throat").right() - weld.left()) * Math.sqrt(2), Math.min(1, p.at("throat") / p.at("leg")) * weld.width(), 2);
        }
        if (p.isAsCut() && p.has("seam") && p.differs("welded")) {
            Box seam = p.path("seam");
            p.yoursBar(seam.bottom() + 8, seam.left(), seam.width(), p.theirs("welded") / p.at("seam") * seam.width());
        }
    }

    /** Very thin layers are drawn three pixels thick. */
    private static void stack(Paper p) {
        double[] layers = p.all("layers");
        List<Box> drawn = p.svg.rectangles("layer").stream().sorted(Comparator.comparingDouble(Box::top)).toList();
        int each = p.has("bolt") ? 2 : 1;
        double sum = Arrays.stream(layers).sum();
        double scale = Math.max(150, Math.min(340, layers.length * 34)) / sum;
        double top = drawn.get(0).top();
        for (int i = 0; i < layers.length; i++) {
            p.same("layer " + (i + 1), drawn.get(i * each).height(), Math.max(3, layers[i] * scale));
            p.same("top of layer " + (i + 1), drawn.get(i * each).top(), top);
            top = drawn.get(i * each).bottom();
        }
        double first = drawn.get(0).top();
        if (p.has("bolt")) {
            p.same("bolt", p.svg.rectangle("bolt").bottom() - first, p.at("bolt") * scale);
        }
        if (p.isAsCut() && p.shows("yours-end")) {
            String name = p.has("bolt") && p.differs("bolt") ? "bolt" : "grip";
            p.yours("end of the bolt", p.path("yours-end").top() - first, Math.min(2 * (top - first), p.theirs(name) * scale));
        }
    }
}
