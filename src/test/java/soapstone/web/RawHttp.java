package soapstone.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Sends bytes as they are, for requests that no proper client would make. */
final class RawHttp {

    private static final int PATIENCE_MILLIS = 15_000;

    private RawHttp() {}

    /**
     * An answer taken apart.
     *
     * @param status  0 when the server closed without a word
     * @param headers names in lower case
     * @param body    what follows the headers
     */
    record Answer(int status, Map<String, String> headers, String body) {

        static Answer parse(String text) {
            if (!text.startsWith("HTTP/")) {
                return new Answer(0, Map.of(), text);
            }
            int end = text.indexOf("\r\n\r\n");
            String[] head = (end < 0 ? text : text.substring(0, end)).split("\r\n");
            Map<String, String> headers = new LinkedHashMap<>();
            for (int i = 1; i < head.length; i++) {
                int colon = head[i].indexOf(':');
                headers.put(head[i].substring(0, colon).toLowerCase(Locale.ROOT), head[i].substring(colon + 1).trim());
            }
            return new Answer(Integer.parseInt(head[0].split(" ")[1]), headers, end < 0 ? "" : text.substring(end + 4));
        }
    }

    /** Sends the text, each character a byte, and reads until the server closes. */
    static Answer send(int port, String request) throws IOException {
        return send(port, request, false);
    }

    /** @param close whether to close our half of the connection after sending */
    static Answer send(int port, String request, boolean close) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(PATIENCE_MILLIS);
            write(socket, request);
            if (close) {
                socket.shutdownOutput();
            }
            return Answer.parse(readAll(socket.getInputStream()));
        }
    }

    /** A server may answer and close before it has taken all that is sent. */
    private static void write(Socket socket, String request) {
        try {
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            socket.getOutputStream().flush();
        } catch (IOException e) {
            // What it answered is read all the same.
        }
    }

    static String readAll(InputStream in) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        byte[] some = new byte[4096];
        try {
            for (int n = in.read(some); n >= 0; n = in.read(some)) {
                all.write(some, 0, n);
            }
        } catch (SocketTimeoutException e) {
            all.write("\r\n[still open]".getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            // A reset after the answer is as good as a close.
        }
        return all.toString(StandardCharsets.UTF_8);
    }

    /** A GET whose answer closes the connection. */
    static String get(String path) {
        return "GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
    }

    /** A form whose answer closes the connection. */
    static String post(String path, String form) {
        return "POST " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\nContent-Type: application/x-www-form-urlencoded\r\n"
                + "Content-Length: " + form.length() + "\r\n\r\n" + form;
    }
}
