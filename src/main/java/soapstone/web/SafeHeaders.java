package soapstone.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Request;

/**
 * The headers that every answer carries, also the ones that no page of ours was asked for. What a page needs comes from
 * this site alone; nothing may be put round it.
 */
final class SafeHeaders implements HttpConfiguration.Customizer {

    static final Map<String, String> ALL = new LinkedHashMap<>();

    static {
        ALL.put("Content-Security-Policy", String.join("; ",
                "default-src 'none'", "script-src 'self'", "style-src 'self'", "img-src 'self'", "font-src 'self'",
                "connect-src 'self'", "form-action 'self'", "base-uri 'none'", "object-src 'none'",
                "frame-ancestors 'none'"));
        ALL.put("X-Content-Type-Options", "nosniff");
        ALL.put("Referrer-Policy", "no-referrer");
        ALL.put("Cross-Origin-Opener-Policy", "same-origin");
        ALL.put("Cross-Origin-Resource-Policy", "same-origin");
        ALL.put("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
    }

    /** The same as bytes: they go out with every answer. */
    private static final List<HttpField> FIELDS = ALL.entrySet().stream()
            .map(e -> (HttpField) new PreEncodedHttpField(e.getKey(), e.getValue())).toList();

    /** Pages and errors are not kept anywhere on the way. */
    static final String NO_STORE = "no-store";

    /** A year; RFC 6797. Said over TLS only, as section 7.2 asks. */
    private static final HttpField TLS_ONLY = new PreEncodedHttpField("Strict-Transport-Security", "max-age=31536000");

    private final boolean secure;

    /** @param secure whether browsers reach the site over TLS only */
    SafeHeaders(boolean secure) {
        this.secure = secure;
    }

    @Override
    public Request customize(Request request, HttpFields.Mutable headers) {
        addTo(headers);
        return request;
    }

    void addTo(HttpFields.Mutable headers) {
        FIELDS.forEach(headers::put);
        if (secure) {
            headers.put(TLS_ONLY);
        }
    }
}
