package org.borewright.page.order;

import io.quarkus.qute.TemplateData;
import java.util.LinkedHashMap;
import java.util.Map;
import org.borewright.api.lookup.engine.EngineAnswer;
import org.borewright.api.order.request.QuoteAsked;

/**
 * What may be asked of a quote, each as it is sent and as it is shown.
 *
 * @param ways to restore the engine
 * @param sizes of its pistons, rising
 */
@TemplateData
public record Offering(Map<String, String> ways, Map<String, String> sizes) {

    static Offering of(EngineAnswer engine) {
        Map<String, String> ways = new LinkedHashMap<>();
        ways.put("", "as the survey says");
        QuoteAsked.ways().forEach(way -> ways.put(way, way));
        Map<String, String> sizes = new LinkedHashMap<>();
        sizes.put("", "as the survey says");
        engine.sizes().forEach(size -> sizes.put(size.size(), size.size()));
        return new Offering(ways, sizes);
    }
}
