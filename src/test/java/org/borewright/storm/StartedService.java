package org.borewright.storm;

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
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * The packaged service in a process of its own, on a port that was free.
 *
 * @param process its process
 * @param port it is to listen on
 * @param log what it printed
 * @param deadline in nanoseconds of the machine, after which nobody waits for it any longer
 */
public record StartedService(Process process, int port, Path log, long deadline) implements AutoCloseable {

    private static final String FOR_H2 = "quarkus-app";
    private static final Duration PATIENCE = Duration.ofSeconds(90);
    private static final int BETWEEN_TWO_TRIES_MILLISECONDS = 20;

    /** Starts the service beside the data and the catalogue files of a folder. */
    public static StartedService in(Path home) throws IOException {
        return of(FOR_H2, home, List.of(Shop.SHORT_LIVED));
    }

    /** Starts what was packaged into a folder below target, with these options of Java. */
    static StartedService of(String folder, Path home, List<String> options) throws IOException {
        Path packaged = Path.of("target", folder, "quarkus-run.jar").toAbsolutePath();
        assertThat(packaged).as("packaged by mvn package").exists();
        int port = freePort();
        Path log = Files.createTempFile(home, "start", ".log");
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(
                List.of("-Dborewright.home=" + home, "-Dquarkus.http.port=" + port, "-jar", packaged.toString()));
        Process process = new ProcessBuilder(command)
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
    public boolean isRunning() throws InterruptedException, IOException {
        assertThat(System.nanoTime()).as(output()).isLessThan(deadline);
        return !process.waitFor(BETWEEN_TWO_TRIES_MILLISECONDS, TimeUnit.MILLISECONDS);
    }

    public boolean listens() throws IOException {
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            return socket.isConnected();
        } catch (ConnectException closed) {
            return false;
        }
    }

    public int exitCode() {
        return process.exitValue();
    }

    public String output() throws IOException {
        return Files.readString(log);
    }

    /** What it answers with 200 as soon as it listens. */
    public String answerOnceItListens(String path) throws IOException, InterruptedException {
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

    /** Ends it as a power cut would: it is asked nothing, and closes nothing. */
    void kill() {
        process.destroyForcibly().onExit().join();
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
