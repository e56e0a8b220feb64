package org.borewright.api.lookup.engine;

import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.core.UriInfo;
import java.math.BigDecimal;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.borewright.api.shown.ShownLength;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Engine;
import org.borewright.measure.LengthUnit;
import org.jspecify.annotations.Nullable;

/**
 * One page of the engines found.
 *
 * @param engines sorted by code
 * @param total how many were found in all
 * @param page which page this is, from 1
 * @param size how many are on a page
 * @param links to the pages beside it
 * @param unit of the lengths
 * @param revision of the catalogue as to what fits
 */
public record EnginesAnswer(
        List<Found> engines, int total, int page, int size, Links links, String unit, String revision) {

    /**
     * An engine in short.
     *
     * @param engine its code
     * @param maker who made it
     * @param model the maker's name for it
     * @param strokes two or four
     * @param layout how the cylinders stand
     * @param construction how the holes are made
     * @param cylinders how many
     * @param bore at standard
     * @param stroke of the pistons
     * @param displacement of the whole engine at standard in cm³
     */
    public record Found(
            String engine,
            String maker,
            String model,
            int strokes,
            String layout,
            String construction,
            int cylinders,
            ShownLength bore,
            ShownLength stroke,
            BigDecimal displacement) {

        static Found of(Engine engine, LengthUnit unit) {
            return new Found(
                    engine.code(),
                    engine.name().maker(),
                    engine.name().model(),
                    engine.build().strokes().count(),
                    engine.build().layout().label(),
                    engine.build().construction().label(),
                    engine.cylinders().size(),
                    ShownLength.of(engine.bore().nominal(), unit),
                    ShownLength.of(engine.deck().stroke(), unit),
                    EngineSearch.displacement(engine));
        }
    }

    /**
     * The pages beside a page.
     *
     * @param next absent on the last page
     * @param prev absent on the first page
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Links(@Nullable String next, @Nullable String prev) {}

    static EnginesAnswer of(Catalogue catalogue, EngineQuery query, UriInfo asked) {
        List<Engine> found = EngineSearch.find(catalogue.engines(), query);
        Paging paging = query.paging();
        Links links = new Links(
                paging.isFollowed(found.size()) ? link(asked, paging.page() + 1) : null,
                paging.page() > 1 ? link(asked, paging.before(found.size())) : null);
        return new EnginesAnswer(
                paging.of(found).stream()
                        .map(engine -> Found.of(engine, query.unit()))
                        .toList(),
                found.size(),
                paging.page(),
                paging.size(),
                links,
                query.unit().symbol(),
                catalogue.revision().fit());
    }

    private static String link(UriInfo asked, int page) {
        Map<String, List<String>> parameters = new TreeMap<>(asked.getQueryParameters());
        parameters.put("page", List.of(Integer.toString(page)));
        return parameters.entrySet().stream()
                .flatMap(parameter ->
                        parameter.getValue().stream().map(value -> parameter.getKey() + "=" + escaped(value)))
                .collect(Collectors.joining("&", asked.getRequestUri().getRawPath() + "?", ""));
    }

    private static String escaped(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }
}
