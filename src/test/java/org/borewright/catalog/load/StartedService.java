package org.borewright.catalog.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;

/**
 * The packaged service in a process of its own, on a port that was free.
 *
 * @param process its process
 * @param port it is to listen on
 * @param log what it printed
 * @param deadline in nanoseconds of the machine, after which nobody waits for it any longer
 */
record StartedService(Process process, int port, Path log, long deadline) implements AutoCloseable {

    private static final Path PACKAGED =
            Path.of("target", "quarkus-app", "quarkus-run.jar").toAbsolutePath();
    private static final Duration PATIENCE = Duration.ofSeconds(90);
    private static final int BETWEEN_TWO_TRIES_MILLISECONDS = 20;

    /** Starts the service beside the data and the catalogue files of a folder. */
    static StartedService in(Path home) throws IOException {
        assertThat(PACKAGED).as("packaged by mvn package").exists();
        int port = freePort();
        Path log = Files.createTempFile(home, "start", ".log");
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        // It lives for seconds only: compiling it well would take longer than it runs.
                        "-XX:TieredStopAtLevel=1",
                        "-Dborewright.home=" + home,
                        "-Dquarkus.http.port=" + port,
                        "-jar",
                        PACKAGED.toString())
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        return new StartedService(process, port, log, System.nanoTime() + PATIENCE.toNanos());
    }

    private static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return any.getLocalPort();
        }
    }

    /** Whether it still runs, a moment later. */
    boolean isRunning() throws InterruptedException, IOException {
        assertThat(System.nanoTime()).as(output()).isLessThan(deadline);
        return !process.waitFor(BETWEEN_TWO_TRIES_MILLISECONDS, TimeUnit.MILLISECONDS);
    }

    boolean listens() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return socket.isConnected();
        } catch (ConnectException closed) {
            return false;
        }
    }

    int exitCode() {
        return process.exitValue();
    }

    String output() throws IOException {
        return Files.readString(log);
    }

    /** What it answers with 200 as soon as it listens. */
    String answerOnceItListens(String path) throws IOException, InterruptedException {
        while (!listens()) {
            assertThat(isRunning()).as(output()).isTrue();
        }
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                                .timeout(PATIENCE)
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    /** Asks it to stop, and does not leave before it has: its database file is free then. */
    @Override
    public void close() {
        process.destroy();
        process.onExit()
                .completeOnTimeout(process, PATIENCE.toSeconds(), TimeUnit.SECONDS)
                .join()
                .destroyForcibly();
    }
}
