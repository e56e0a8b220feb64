package org.borewright.api.guard;

import io.restassured.RestAssured;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A bare connection to the service, for what no HTTP client would send. */
public final class Wire implements AutoCloseable {

    private static final int PATIENCE_MILLISECONDS = 10_000;

    private final Socket socket;
    private final InputStream in;
    private final OutputStream out;

    private Wire(Socket socket) throws IOException {
        this.socket = socket;
        in = socket.getInputStream();
        out = socket.getOutputStream();
    }

    public static Wire open() throws IOException {
        Socket socket = new Socket(InetAddress.getLoopbackAddress(), RestAssured.port);
        socket.setSoTimeout(PATIENCE_MILLISECONDS);
        // Head and body go out one by one; the second would wait for the first to be acknowledged.
        socket.setTcpNoDelay(true);
        return new Wire(socket);
    }

    /** Sends text as it stands, each line ended as HTTP wants it. */
    public Wire send(String text) throws IOException {
        out.write(text.replace("\n", "\r\n").getBytes(StandardCharsets.UTF_8));
        out.flush();
        return this;
    }

    /** Sends a request with a body whose length is told. */
    Wire post(String path, String body) throws IOException {
        return post(path, body.getBytes(StandardCharsets.UTF_8));
    }

    /** Sends bytes as the body of a request. */
    Wire post(String path, byte[] body) throws IOException {
        return post(path, "Content-Type: application/json", body);
    }

    /** Sends bytes as the body of a request, with what the header says of them. */
    Wire post(String path, String fields, byte[] body) throws IOException {
        send("POST " + path + " HTTP/1.1\nHost: shop\n" + fields + "\nContent-Length: " + body.length + "\n\n");
        out.write(body);
        out.flush();
        return this;
    }

    /** Sends a request with a body in chunks whose total is not told. */
    Wire postInChunks(String path, String body, int chunk) throws IOException {
        send("POST " + path + " HTTP/1.1\nHost: shop\nContent-Type: application/json\nTransfer-Encoding: chunked\n\n");
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        for (int from = 0; from < bytes.length; from += chunk) {
            int length = Math.min(chunk, bytes.length - from);
            send(Integer.toHexString(length) + "\n");
            out.write(bytes, from, length);
            send("\n");
        }
        return send("0\n\n");
    }

    /** The next answer, head and body. */
    public String answer() throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = in.read();
            if (next < 0) {
                return head + "(closed)";
            }
            head.append((char) next);
        }
        return head + (head.indexOf("transfer-encoding: chunked") < 0 ? body(length(head.toString())) : chunks());
    }

    private String chunks() throws IOException {
        StringBuilder all = new StringBuilder();
        for (int length = Integer.parseInt(line(), 16); length > 0; length = Integer.parseInt(line(), 16)) {
            all.append(body(length));
            line();
        }
        line();
        return all.toString();
    }

    private String body(int length) throws IOException {
        return new String(in.readNBytes(length), StandardCharsets.UTF_8);
    }

    private String line() throws IOException {
        StringBuilder line = new StringBuilder();
        for (int next = in.read(); next >= 0 && next != '\n'; next = in.read()) {
            line.append((char) next);
        }
        return line.toString().strip();
    }

    private static int length(String head) {
        String lower = head.toLowerCase(Locale.ROOT);
        int at = lower.indexOf("content-length: ");
        return at < 0 ? 0 : Integer.parseInt(lower.substring(at + 16, lower.indexOf('\r', at)));
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
