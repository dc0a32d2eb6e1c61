package soapstone.bank;

import java.util.List;

/** Does pieces of work that do not need each other, in any order or at once, and returns when all are done. */
public interface Workers {

    /** One piece after the other. */
    Workers ONE = pieces -> pieces.forEach(Runnable::run);

    void all(List<Runnable> pieces);
}
