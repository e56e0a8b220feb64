package org.borewright.api.contract;

import io.smallrye.common.annotation.NonBlocking;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.borewright.api.guard.Parameters;

/** Hands out the contract, byte for byte as it lies in the repository: what is read there is what callers are promised. */
@Path("/api/openapi")
@NonBlocking
public class ContractPage {

    private static final String FILE = "/openapi/borewright.yaml";

    private final byte[] contract = read();

    /** The contract in OpenAPI 3.1. */
    @GET
    @Produces("application/yaml")
    public byte[] contract(@Context UriInfo asked) {
        Parameters.none(asked);
        return contract;
    }

    private static byte[] read() {
        try (InputStream file = ContractPage.class.getResourceAsStream(FILE)) {
            return Objects.requireNonNull(file, FILE).readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
