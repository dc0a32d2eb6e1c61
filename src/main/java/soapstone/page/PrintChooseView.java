package soapstone.page;

import java.util.List;

/**
 * What of an assignment can be printed.
 *
 * @param open   whether it can be now
 * @param spares spare sheets that nobody has yet
 * @param made   what was asked for today, the newest first
 */
public record PrintChooseView(long id, String title, long inClass, String className, boolean open, int spares, FormView form, List<Made> made) {

    /** @param state a key: {@code making}, {@code done}, {@code ended}, {@code failed}, {@code left} */
    public record Made(long id, String kind, String state, String asked) {}

    public PrintChooseView {
        made = List.copyOf(made);
    }
}
