package soapstone.record;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

/**
 * Lets work of many threads share a commit. While one thread writes, the others' work gathers, and the first of them
 * writes all of it at once; each comes back when its own work is on the disk. Somebody alone never waits.
 *
 * @param <W> a piece of work
 * @param <R> its result
 */
final class Gathering<W, R> {

    /** So that one transaction stays short, however many wait. */
    private static final int MOST_AT_ONCE = 64;

    private final Function<List<W>, List<R>> act;
    private final ArrayDeque<Waiting<W, R>> queue = new ArrayDeque<>();
    private boolean writing;

    /** @param act does all of it in one transaction, results in the same order; what it throws takes everything back */
    Gathering(Function<List<W>, List<R>> act) {
        this.act = act;
    }

    private static final class Waiting<W, R> {
        private final W work;
        private final CompletableFuture<Woken> woken = new CompletableFuture<>();
        /** Written before its thread is woken. */
        private R result;

        Waiting(W work) {
            this.work = work;
        }
    }

    /** Why a waiting thread goes on: its work was done, or it is its turn to write. */
    private enum Woken { DONE, WRITE }

    /**
     * Does a piece of work together with what else is waiting.
     *
     * @return its result when it is committed; empty when the shared transaction was taken back, so that it should be
     *         tried alone
     */
    Optional<R> share(W work) {
        Waiting<W, R> mine = new Waiting<>(work);
        queue(mine);
        if (mine.woken.join() == Woken.WRITE) {
            try {
                write(next());
            } finally {
                handOn();
            }
        }
        return Optional.ofNullable(mine.result);
    }

    private synchronized void queue(Waiting<W, R> mine) {
        queue.add(mine);
        if (!writing) {
            writing = true;
            mine.woken.complete(Woken.WRITE);
        }
    }

    private synchronized List<Waiting<W, R>> next() {
        List<Waiting<W, R>> group = new ArrayList<>();
        while (!queue.isEmpty() && group.size() < MOST_AT_ONCE) {
            group.add(queue.remove());
        }
        return group;
    }

    private synchronized void handOn() {
        writing = !queue.isEmpty();
        if (writing) {
            queue.peek().woken.complete(Woken.WRITE);
        }
    }

    /** How many are waiting for their turn. */
    synchronized int waiting() {
        return queue.size();
    }

    private void write(List<Waiting<W, R>> group) {
        try {
            List<R> results = act.apply(group.stream().map(w -> w.work).toList());
            for (int i = 0; i < group.size(); i++) {
                group.get(i).result = results.get(i);
            }
        } catch (RuntimeException e) {
            // Nothing of the group was kept. Whose fault it was shows when each tries alone.
        } finally {
            group.forEach(w -> w.woken.complete(Woken.DONE));
        }
    }
}
