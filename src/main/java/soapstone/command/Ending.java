package soapstone.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** When the process is told to end, the work in hand is ended first: pages are answered, the database is closed. */
final class Ending implements AutoCloseable {

    private static final int PATIENCE_SECONDS = 10;

    private final CountDownLatch ended = new CountDownLatch(1);
    private final Thread hook;

    private Ending(Thread worker) {
        hook = new Thread(() -> {
            worker.interrupt();
            try {
                ended.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }, "ending");
        Runtime.getRuntime().addShutdownHook(hook);
    }

    /** Interrupts this thread when the process ends, and waits until it is through. */
    static Ending ofThis() {
        return new Ending(Thread.currentThread());
    }

    @Override
    public void close() {
        ended.countDown();
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // The process is ending already: then the hook has done its work.
            return;
        }
    }
}
