package org.borewright.page.block;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toList;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.borewright.api.guard.Parameters;
import org.borewright.api.lookup.Named;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.lookup.engine.EngineLookup;
import org.borewright.api.order.BlockResource;
import org.borewright.api.order.answer.BlockAnswer;
import org.borewright.api.order.answer.BlockAnswer.LifeAnswer;
import org.borewright.catalog.store.Shelves;
import org.borewright.order.BlockKind;
import org.borewright.order.store.BlockRow;
import org.borewright.page.Page;

/** The pages of blocks and barrels: found by tag, and the life of one. */
@Path("/blocks")
@Produces(Page.MEDIA_TYPE)
public class Blocks {

    private static final int BLOCKS_SHOWN = 100;

    private final BlockResource blocks;
    private final EngineLookup engines;
    private final Shelves shelves;

    Blocks(BlockResource blocks, EngineLookup engines, Shelves shelves) {
        this.blocks = blocks;
        this.engines = engines;
        this.shelves = shelves;
    }

    /**
     * The blocks and barrels that are known.
     *
     * @param tag how it begins, as far as it was typed
     * @param blocks the first that bear such a tag, by tag
     * @param isCut whether there are more
     */
    @CheckedTemplate(basePath = "page")
    record BlocksPage(String tag, List<BlockRow> blocks, boolean isCut) implements TemplateInstance {}

    /**
     * One block or barrel.
     *
     * @param block as it is answered
     * @param holes its holes one by one
     * @param sizes of its engine; none where the catalogue has it no longer
     */
    @CheckedTemplate(basePath = "page")
    record BlockPage(BlockAnswer block, List<HoleLife> holes, List<EngineAnswer.SizeAnswer> sizes)
            implements TemplateInstance {}

    /** The blocks and barrels whose tag begins as typed; the life of the one that bears it whole. */
    @GET
    @Transactional
    public Response search(@Context UriInfo called) {
        Parameters parameters = new Parameters(called);
        String tag = parameters.text("tag").orElse("");
        parameters.end();
        List<BlockRow> found = BlockRow.beginning(tag, BLOCKS_SHOWN + 1);
        return found.size() == 1 && found.get(0).tag.equalsIgnoreCase(tag)
                ? Page.seeOther("/blocks/" + found.get(0).tag)
                : Page.of(new BlocksPage(
                        tag, found.subList(0, Math.min(BLOCKS_SHOWN, found.size())), found.size() > BLOCKS_SHOWN));
    }

    /** The life of one. */
    @GET
    @Path("/{block}")
    public Response life(@PathParam("block") String tag, @Context UriInfo called) {
        BlockAnswer block = blocks.block(tag, called);
        List<EngineAnswer.SizeAnswer> sizes =
                shelves.catalogue().shelf(block.engine()).isPresent()
                        ? engines.known(block.engine(), Named.unitOf(called)).sizes()
                        : List.of();
        return Page.of(new BlockPage(block, holes(block, sizes), sizes));
    }

    private static List<HoleLife> holes(BlockAnswer block, List<EngineAnswer.SizeAnswer> sizes) {
        LifePicture.Scale scale = LifePicture.Scale.of(block.life(), sizes);
        Map<String, List<LifeAnswer>> byHole =
                block.life().stream().collect(groupingBy(visit -> name(block, visit), LinkedHashMap::new, toList()));
        return byHole.entrySet().stream()
                .map(hole -> new HoleLife(hole.getKey(), hole.getValue(), LifePicture.of(hole.getValue(), scale)))
                .toList();
    }

    /** Where one barrel took the place of another at a cylinder, that is another hole. */
    private static String name(BlockAnswer block, LifeAnswer visit) {
        if (block.kind().equals(BlockKind.BARREL.label())) {
            return "Barrel " + block.block();
        }
        return "Hole " + visit.cylinder() + (visit.barrel() == null ? "" : ", barrel " + visit.barrel());
    }
}
