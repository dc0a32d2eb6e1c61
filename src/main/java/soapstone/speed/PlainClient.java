package soapstone.speed;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * One connection over which pages are asked for one after the other: as little as possible stands between clock and server.
 * After a long silence it is a new one, and opening it is part of the next request.
 * The cookie that a page sets is sent from then on.
 */
public final class PlainClient implements AutoCloseable {

    private static final int MILLIS = 20_000;
    /** A server closes a connection on which nothing is said for long; a browser that finds it closed opens another one. */
    private static final long STALE_NANOS = 3_000_000_000L;

    private final int port;
    private Socket socket;
    private InputStream in;
    private OutputStream out;
    private long last;
    private String cookie = "";

    /**
     * What came back.
     *
     * @param location where to go next; empty when nothing was said
     */
    public record Reply(int status, String location, byte[] body) {

        public String text() {
            return new String(body, StandardCharsets.UTF_8);
        }
    }

    /** Connects to a port of this machine. */
    public PlainClient(int port) throws IOException {
        this.port = port;
        connect();
    }

    private void connect() throws IOException {
        this.socket = new Socket(InetAddress.getByName("127.0.0.1"), port);
        socket.setTcpNoDelay(true);
        socket.setSoTimeout(MILLIS);
        this.in = new BufferedInputStream(socket.getInputStream(), 1 << 16);
        this.out = socket.getOutputStream();
        this.last = System.nanoTime();
    }

    /** Signed in already: with the cookie of a session. */
    public PlainClient(int port, String cookie) throws IOException {
        this(port);
        this.cookie = "Cookie: " + cookie + "\r\n";
    }

    public Reply get(String path) throws IOException {
        return send("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\n" + cookie + "\r\n");
    }

    /** @param form already encoded */
    public Reply post(String path, String form) throws IOException {
        return send("POST " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\n" + cookie + "Content-Type: application/x-www-form-urlencoded\r\nContent-Length: "
                + form.length() + "\r\n\r\n" + form);
    }

    private Reply send(String request) throws IOException {
        if (System.nanoTime() - last > STALE_NANOS) {
            socket.close();
            connect();
        }
        out.write(request.getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
        int status = Integer.parseInt(line().split(" ")[1]);
        int length = -1;
        boolean chunked = false;
        String location = "";
        for (String line = line(); !line.isEmpty(); line = line()) {
            String lower = line.toLowerCase(Locale.ROOT);
            length = lower.startsWith("content-length:") ? Integer.parseInt(line.substring(15).strip()) : length;
            cookie = lower.startsWith("set-cookie:") ? "Cookie:" + line.substring(11).split(";")[0] + "\r\n" : cookie;
            location = lower.startsWith("location:") ? line.substring(9).strip() : location;
            chunked |= lower.startsWith("transfer-encoding:") && lower.contains("chunked");
        }
        Reply reply = new Reply(status, location, chunked ? chunks() : in.readNBytes(Math.max(0, length)));
        last = System.nanoTime();
        return reply;
    }

    private byte[] chunks() throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        for (int size = Integer.parseInt(line(), 16); size > 0; size = Integer.parseInt(line(), 16)) {
            body.write(in.readNBytes(size));
            line();
        }
        line();
        return body.toByteArray();
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder(64);
        for (int c = in.read(); c != '\n'; c = in.read()) {
            if (c < 0) {
                throw new EOFException("the server closed the connection");
            }
            if (c != '\r') {
                line.append((char) c);
            }
        }
        return line.toString();
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
