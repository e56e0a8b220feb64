package org.borewright.bench;

import io.quarkus.arc.profile.IfBuildProfile;
import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The yardstick: takes a body and gives one of a size, and does nothing between. Only there while benchmarks run. */
@Path("/bench/echo")
@IfBuildProfile("bench")
public class EchoResource {

    private final Map<Integer, byte[]> answers = new ConcurrentHashMap<>();

    /** As many bytes as asked for. */
    @POST
    @NonBlocking
    @Consumes(MediaType.APPLICATION_JSON)
    @Produces(MediaType.APPLICATION_JSON)
    public byte[] echo(byte[] body, @QueryParam("bytes") int bytes) {
        return answers.computeIfAbsent(bytes, EchoResource::text);
    }

    private static byte[] text(int bytes) {
        byte[] text = new byte[bytes];
        Arrays.fill(text, (byte) 'x');
        text[0] = '"';
        text[bytes - 1] = '"';
        return text;
    }
}
