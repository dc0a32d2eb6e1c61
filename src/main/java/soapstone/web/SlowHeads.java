package soapstone.web;

import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Closes connections whose bytes drip in and never make a request. The idle time does not catch them, since each byte
 * starts it anew.
 */
final class SlowHeads implements Connection.Listener {

    private final Scheduler scheduler;
    private final Duration whole;

    /** @param whole how long a request's head may take to arrive */
    SlowHeads(Scheduler scheduler, Duration whole) {
        this.scheduler = scheduler;
        this.whole = whole;
    }

    @Override
    public void onOpened(Connection connection) {
        lookAgain(connection, 0, 0);
    }

    private void lookAgain(Connection connection, long bytes, long requests) {
        scheduler.schedule(() -> look(connection, bytes, requests), whole.toMillis(), TimeUnit.MILLISECONDS);
    }

    private void look(Connection connection, long bytes, long requests) {
        if (!connection.getEndPoint().isOpen()) {
            return;
        }
        boolean working = connection.getMessagesIn() > connection.getMessagesOut();
        boolean dripped = connection.getBytesIn() > bytes && connection.getMessagesIn() == requests;
        if (dripped && !working) {
            connection.getEndPoint().close();
        } else {
            lookAgain(connection, connection.getBytesIn(), connection.getMessagesIn());
        }
    }
}
