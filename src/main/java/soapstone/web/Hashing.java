package soapstone.web;

import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;
import soapstone.school.PasswordHash;

/**
 * Hashes passwords, few at a time: each takes 19 MiB and a core for a while, and a class that signs in at the same minute
 * would fill a small machine. Whoever comes later waits in line.
 */
final class Hashing {

    private static final int MOST = 4;
    private static final Semaphore PLACES = new Semaphore(Math.max(1, Math.min(MOST, Runtime.getRuntime().availableProcessors())), true);

    private static final AtomicLong DONE = new AtomicLong();

    private Hashing() {}

    /** How many were hashed or compared so far: what a sign-in costs must not tell whether there is such a login. */
    static long done() {
        return DONE.get();
    }

    /** Whether it is the password; where there is none it takes the same work, and it is not. */
    static boolean fits(String typed, Optional<String> encoded) {
        return inTurn(() -> encoded.isPresent() ? PasswordHash.fits(typed, encoded.get()) : PasswordHash.fitsNobody(typed));
    }

    static String hash(String typed) {
        return inTurn(() -> PasswordHash.hash(typed));
    }

    private static <T> T inTurn(Supplier<T> work) {
        PLACES.acquireUninterruptibly();
        try {
            DONE.incrementAndGet();
            return work.get();
        } finally {
            PLACES.release();
        }
    }
}
