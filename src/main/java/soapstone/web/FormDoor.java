package soapstone.web;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpHeaderValue;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import org.eclipse.jetty.util.thread.Scheduler;

/**
 * Waits for the whole form before anybody works on it, without holding a thread, and turns away what is too large or
 * too slow. The bytes then stand in the request's attribute {@link #FORM}.
 *
 * <p>A browser shows an answer only after it has sent all: one that is cut off in the middle of a file shows a broken
 * connection. So what is too large is taken in to its end and thrown away before it is refused, up to {@link #THROWN_AWAY}.
 */
final class FormDoor extends Handler.Wrapper {

    static final String FORM = "soapstone.form";
    static final int LARGEST = 64 * 1024;
    /** Nobody chooses a larger file by mistake: the connection is closed on it. */
    static final long THROWN_AWAY = 64L * 1024 * 1024;

    private static final int BAD = 400;
    private static final int SLOW = 408;
    private static final int LARGE = 413;

    private final Duration whole;

    /** @param whole how long a form may take to arrive, however steadily it drips */
    FormDoor(Handler next, Duration whole) {
        super(next);
        this.whole = whole;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (!HttpMethod.POST.is(request.getMethod())) {
            return super.handle(request, response, callback);
        }
        if (request.getLength() > (waits(request) ? LARGEST : THROWN_AWAY)) {
            refuse(request, response, callback, LARGE);
        } else {
            new Arrival(request, response, callback).begin();
        }
        return true;
    }

    /** Whether the client asks before it sends anything. */
    private static boolean waits(Request request) {
        return request.getHeaders().contains(HttpHeader.EXPECT, HttpHeaderValue.CONTINUE.asString());
    }

    private static void refuse(Request request, Response response, Callback callback, int status) {
        response.getHeaders().put(HttpHeader.CONNECTION, "close");
        Response.writeError(request, response, callback, status);
    }

    /** One form on its way in. Whatever ends it first, the last byte, a failure or the clock, ends it alone. */
    private final class Arrival implements Runnable {

        private final Request request;
        private final Response response;
        private final Callback callback;
        private final ByteArrayOutputStream form = new ByteArrayOutputStream();
        private final AtomicBoolean over = new AtomicBoolean();
        private Scheduler.Task clock;
        private volatile long arrived;

        Arrival(Request request, Response response, Callback callback) {
            this.request = request;
            this.response = response;
            this.callback = callback;
        }

        void begin() {
            Scheduler scheduler = request.getComponents().getScheduler();
            clock = scheduler.schedule(() -> end(isLarge() ? LARGE : SLOW), whole.toMillis(), TimeUnit.MILLISECONDS);
            run();
        }

        @Override
        public void run() {
            while (!over.get()) {
                Content.Chunk chunk = request.read();
                if (chunk == null) {
                    request.demand(this);
                    return;
                }
                if (Content.Chunk.isFailure(chunk)) {
                    end(chunk.getFailure() instanceof TimeoutException ? SLOW : BAD);
                    return;
                }
                take(chunk);
            }
        }

        private void take(Content.Chunk chunk) {
            ByteBuffer bytes = chunk.getByteBuffer();
            byte[] some = new byte[bytes.remaining()];
            bytes.get(some);
            boolean last = chunk.isLast();
            chunk.release();
            arrived += some.length;
            if (isLarge()) {
                form.reset();
            } else {
                form.write(some, 0, some.length);
            }
            if (isLarge() && (last || arrived > THROWN_AWAY)) {
                end(LARGE);
            } else if (last && over.compareAndSet(false, true)) {
                clock.cancel();
                goOn();
            }
        }

        private boolean isLarge() {
            return arrived > LARGEST;
        }

        private void goOn() {
            request.setAttribute(FORM, form.toByteArray());
            try {
                if (!getHandler().handle(request, response, callback)) {
                    Response.writeError(request, response, callback, 404);
                }
            } catch (Throwable e) {
                Response.writeError(request, response, callback, e);
            }
        }

        private void end(int status) {
            if (over.compareAndSet(false, true)) {
                clock.cancel();
                refuse(request, response, callback, status);
            }
        }
    }
}
