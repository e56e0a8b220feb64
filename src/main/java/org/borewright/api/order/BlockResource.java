package org.borewright.api.order;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import org.borewright.api.lookup.Named;
import org.borewright.api.order.answer.BlockAnswer;
import org.borewright.api.order.request.OrderReader;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;
import org.borewright.catalog.store.Shelves;
import org.borewright.measure.LengthUnit;
import org.borewright.order.BlockKind;
import org.borewright.order.store.BlockRow;
import org.borewright.order.store.HoleLifeRow;

/** The life of a block over all its orders, or of a barrel over all blocks. */
@Path("/api/blocks")
@Produces(MediaType.APPLICATION_JSON)
public class BlockResource {

    private final Shelves shelves;

    BlockResource(Shelves shelves) {
        this.shelves = shelves;
    }

    /** One block, or one barrel: whatever bears the tag. */
    @GET
    @Path("/{block}")
    @Transactional
    public BlockAnswer block(@PathParam("block") String tag, @Context UriInfo called) {
        LengthUnit unit = Named.unitOf(called);
        BlockRow block = Optional.of(tag.strip())
                // What no tag can be is not looked for: a NUL is no text to every database.
                .filter(OrderReader::isTag)
                .flatMap(BlockRow::bearing)
                .orElseThrow(() -> new ProblemException(
                        Problem.of(ProblemType.UNKNOWN_BLOCK, "No block bears the tag \"" + tag + "\".")));
        List<HoleLifeRow> life =
                block.kind == BlockKind.BARREL ? HoleLifeRow.ofBarrel(block.tag) : HoleLifeRow.ofBlock(block.tag);
        return BlockAnswer.of(block, life, shelves.catalogue().shelf(block.engine), unit);
    }
}
