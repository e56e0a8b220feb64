package org.borewright.page.bench;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import org.borewright.api.order.answer.OrderAnswer;
import org.borewright.page.Page;
import org.borewright.page.Past;
import org.borewright.page.bench.paper.Answer;
import org.borewright.page.bench.paper.Folder;
import org.borewright.page.bench.paper.Folders;
import org.borewright.page.bench.paper.OfOrder;
import org.jspecify.annotations.Nullable;

/** What each hole is bored and honed to, in figures that are read from an arm's length. */
@Path("/orders/{order}/hone")
@Produces(Page.MEDIA_TYPE)
public class HoneSheet {

    private final Folders folders;

    HoneSheet(Folders folders) {
        this.folders = folders;
    }

    /**
     * The page.
     *
     * @param order that is honed
     * @param confirmed whether its pistons are, so that the figures stand
     * @param ringsOnly whether nothing is honed at all
     * @param size of the pistons that were sold; absent before the yes, and for rings only
     * @param plan the answer of the bench that was confirmed; absent before
     * @param rings the ring sets that were sold: the gaps of others are nobody's concern
     * @param past that its holes are signed, in a sentence; absent before
     */
    @CheckedTemplate(basePath = "page")
    record HonePage(
            OrderAnswer order,
            boolean confirmed,
            boolean ringsOnly,
            @Nullable String size,
            @Nullable Object plan,
            List<String> rings,
            @Nullable String past)
            implements TemplateInstance {}

    /** The sheet; before the pistons are confirmed there is none, and it says so. */
    @GET
    public Response sheet(@BeanParam OfOrder of) {
        Folder folder = folders.open(of);
        Optional<Object> plan = folder.last("bench")
                .filter(paper -> folder.isConfirmed() && !folder.isRingsOnly())
                .map(paper -> Answer.of(paper).told());
        return Page.of(new HonePage(
                folder.order(),
                folder.isConfirmed(),
                folder.isRingsOnly(),
                folder.size().orElse(null),
                plan.orElse(null),
                folder.ringSets(),
                Past.says(folder.state()).orElse(null)));
    }
}
