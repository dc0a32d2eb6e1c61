package soapstone.speed;

import java.nio.ByteBuffer;
import java.util.Arrays;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.util.Callback;

/** The web server with nothing on it but one page that never changes: the least that serving a page can cost. */
public final class BareServer implements AutoCloseable {

    private final Server server = new Server();
    private final ServerConnector connector = new ServerConnector(server, 1, 1);

    private BareServer(byte[] page) {
        connector.setHost("127.0.0.1");
        connector.setPort(0);
        server.addConnector(connector);
        server.setHandler(new Handler.Abstract() {
            @Override
            public boolean handle(Request request, Response response, Callback callback) {
                response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/html;charset=utf-8");
                response.getHeaders().put(HttpHeader.CONTENT_LENGTH, page.length);
                response.write(true, ByteBuffer.wrap(page), callback);
                return true;
            }
        });
    }

    /** @param size of the page, in bytes */
    static BareServer start(int size) throws Exception {
        byte[] page = new byte[size];
        Arrays.fill(page, (byte) 'x');
        BareServer bare = new BareServer(page);
        bare.server.start();
        return bare;
    }

    int port() {
        return connector.getLocalPort();
    }

    @Override
    public void close() throws Exception {
        server.stop();
    }

    /** Runs until the process is ended; the one argument is the size of the page. */
    public static void main(String[] args) throws Exception {
        BareServer bare = start(Integer.parseInt(args[0]));
        System.out.println("http://127.0.0.1:" + bare.port() + "/");
        bare.server.join();
    }
}
