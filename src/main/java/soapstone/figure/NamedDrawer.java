package soapstone.figure;

import java.util.List;

/**
 * A kind whose words are found by its name: {@code kind.title}, {@code kind.title.yours}, {@code kind.is}, and
 * {@code kind.argument} for every argument that may be printed.
 */
abstract class NamedDrawer implements Drawer {

    private final String kind;
    private final List<FigureArgument> arguments;

    NamedDrawer(String kind, FigureArgument... arguments) {
        this.kind = kind;
        this.arguments = List.of(arguments);
    }

    final String word(String of) {
        return kind + "." + of;
    }

    @Override
    public List<FigureArgument> arguments() {
        return arguments;
    }

    @Override
    public String title(Brief brief) {
        return brief.say(word(brief.isAsCut() ? "title.yours" : "title"));
    }

    @Override
    public void tell(Brief brief, Telling t) {
        t.say(word("is"));
        tellValues(brief.right(), t);
        if (brief.isAsCut()) {
            t.say("tank.yours");
            tellValues(brief.yours(), t);
            String miss = miss(brief);
            t.sentence(miss.isEmpty() ? miss : miss + ".");
        }
        String said = brief.isAsCut() ? miss(brief) : "";
        notes(brief).stream().filter(n -> !n.spoken().equals(said)).forEach(n -> t.sentence(n.spoken() + "."));
    }

    private void tellValues(Values v, Telling t) {
        for (FigureArgument a : arguments) {
            if (a.list() && v.has(a.name())) {
                t.values(v, a.name(), word(a.name()));
            } else if (!a.list()) {
                t.value(v, a.name(), word(a.name()));
            }
        }
    }

    /** The largest miss of an answer's part in words; empty when there is none. */
    String miss(Brief brief) {
        return "";
    }

    /** The word for what is counted, of a kind with words for one and for many; one that is asked is never said to be one. */
    final String pieces(Brief brief, Values v) {
        return brief.say(word(v.count("count") == 1 && !v.isHidden("count") ? "piece" : "pieces"));
    }

    /** The miss in a length, such as "1 1/2 in short". */
    static String lengthMiss(Brief brief, double off) {
        return brief.say(off < 0 ? "miss.short" : "miss.long", brief.size(off));
    }
}
