package org.borewright.api.hook;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Optional;
import org.borewright.api.asked.Place;
import org.borewright.api.guard.Parameters;
import org.borewright.api.order.Counter;
import org.borewright.api.order.Numbers;
import org.borewright.api.order.request.Caller;
import org.borewright.api.order.request.ShortBody;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.order.desk.Hooks;
import org.borewright.order.store.HookRow;

/** Who is told of changes. */
@Path("/api/hooks")
@Consumes(MediaType.APPLICATION_JSON)
@Produces(MediaType.APPLICATION_JSON)
public class HookResource {

    private static final int LONGEST_URL = 500;
    private static final int GREATEST_PORT = 65_535;

    private final Counter counter;
    private final Hooks hooks;

    HookResource(Counter counter, Hooks hooks) {
        this.counter = counter;
        this.hooks = hooks;
    }

    /** Tells somebody of every line of the journal from now on. */
    @POST
    public Response make(@Context UriInfo called, @Context HttpHeaders headers, byte[] body) {
        Caller caller = Caller.making(called, headers, body);
        return counter.answer(caller, () -> {
            HookRow hook = hooks.make(url(body), caller.by());
            return counter.made("/api/hooks/" + hook.id, HookAnswer.withSecret(hook));
        });
    }

    private static String url(byte[] body) {
        return ShortBody.only(
                body,
                "url",
                "It is not said where the messages go.",
                "\"https://store.example/told\"",
                HookResource::url);
    }

    private static Optional<String> url(Place place) {
        Optional<String> url = place.text();
        if (url.isPresent() && !isUsable(url.get())) {
            place.fault(
                    ProblemType.WRONG_FORM,
                    "No message can be sent there.",
                    "an absolute http or https URI in ASCII, without user and fragment, with a port from 1 to 65535 or none, up to "
                            + LONGEST_URL + " characters");
        }
        return url;
    }

    private static boolean isUsable(String text) {
        try {
            URI uri = new URI(text);
            return text.length() <= LONGEST_URL
                    && text.equals(uri.toASCIIString())
                    && ("https".equals(uri.getScheme()) || "http".equals(uri.getScheme()))
                    && uri.getHost() != null
                    && uri.getPort() != 0
                    && uri.getPort() <= GREATEST_PORT
                    && uri.getRawUserInfo() == null
                    && uri.getRawFragment() == null;
        } catch (URISyntaxException noUri) {
            return false;
        }
    }

    /** All who are told, and how far they are. */
    @GET
    @Transactional
    public List<HookAnswer> hooks(@Context UriInfo called) {
        Parameters.none(called);
        return HookRow.all().stream().map(HookAnswer::of).toList();
    }

    /** One of them. */
    @GET
    @Path("/{hook}")
    @Transactional
    public HookAnswer hook(@PathParam("hook") String id, @Context UriInfo called) {
        Parameters.none(called);
        return HookAnswer.of(known(id));
    }

    /** Tells them no more; done again it finds nothing. */
    @DELETE
    @Path("/{hook}")
    public void end(@PathParam("hook") String id, @Context UriInfo called) {
        String by = Caller.by(called);
        long number = Numbers.hook(id);
        if (!hooks.end(number, by)) {
            throw unknown(number);
        }
    }

    private static HookRow known(String text) {
        long id = Numbers.hook(text);
        return HookRow.<HookRow>findByIdOptional(id).orElseThrow(() -> unknown(id));
    }

    private static ProblemException unknown(long id) {
        return new ProblemException(Problem.of(ProblemType.UNKNOWN_HOOK, "There is no hook " + id + "."));
    }
}
