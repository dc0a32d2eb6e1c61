package soapstone.web;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.function.IntFunction;
import org.eclipse.jetty.http.HttpException;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** Our own page for what Jetty refuses before a route is asked. */
final class PlainErrors extends ErrorHandler {

    private final IntFunction<Reply> page;
    private final SafeHeaders safe;

    PlainErrors(IntFunction<Reply> page, SafeHeaders safe) {
        this.page = page;
        this.safe = safe;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        Object cause = request.getAttribute(ERROR_EXCEPTION);
        int status = cause instanceof HttpException known ? known.getCode() : response.getStatus();
        Reply reply = page.apply(status);
        response.setStatus(reply.status());
        putHeaders(response.getHeaders(), reply);
        response.write(true, ByteBuffer.wrap(reply.body()), callback);
        return true;
    }

    @Override
    public ByteBuffer badMessageError(int status, String reason, HttpFields.Mutable fields) {
        Reply reply = page.apply(status);
        putHeaders(fields, reply);
        return ByteBuffer.wrap(reply.body());
    }

    private void putHeaders(HttpFields.Mutable headers, Reply reply) {
        safe.addTo(headers);
        headers.put(HttpHeader.CONTENT_TYPE, reply.type());
        headers.put(HttpHeader.CACHE_CONTROL, reply.cache());
        if (reply.status() == 503) {
            headers.put(HttpHeader.RETRY_AFTER, "5");
        }
    }
}
