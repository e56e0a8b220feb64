package org.borewright.api.lookup.part;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.borewright.catalog.Catalogue;
import org.borewright.catalog.Listing;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Withdrawal;
import org.jspecify.annotations.Nullable;

/**
 * Why a number is not supplied, and what to order instead.
 *
 * @param number which
 * @param state replaced, discontinued, never made
 * @param note in words
 * @param replacements each number that took the place of the one before, the one to order now last; empty unless replaced
 * @param replacement the number to order now; absent unless replaced by one that is supplied
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record WithdrawnAnswer(
        String number,
        String state,
        String note,
        List<String> replacements,
        @Nullable String replacement) {

    public static Stream<WithdrawnAnswer> of(Listing listing, Catalogue catalogue) {
        return listing.withdrawal().stream().map(withdrawal -> of(withdrawal, catalogue));
    }

    private static WithdrawnAnswer of(Withdrawal withdrawal, Catalogue catalogue) {
        List<PartNumber> chain = chain(withdrawal, catalogue);
        Optional<PartNumber> last = chain.stream()
                .reduce((before, after) -> after)
                .filter(number -> withdrawal(number, catalogue).isEmpty());
        return new WithdrawnAnswer(
                withdrawal.number().text(),
                withdrawal.state().label(),
                withdrawal.note(),
                chain.stream().map(PartNumber::text).toList(),
                last.map(PartNumber::text).orElse(null));
    }

    /** Ends where a number stands for itself, and where it would come round again. */
    private static List<PartNumber> chain(Withdrawal first, Catalogue catalogue) {
        Set<PartNumber> chain = new LinkedHashSet<>();
        Optional<PartNumber> next = first.replacedBy();
        while (next.isPresent() && !next.get().equals(first.number()) && chain.add(next.get())) {
            next = withdrawal(next.get(), catalogue).flatMap(Withdrawal::replacedBy);
        }
        return List.copyOf(chain);
    }

    private static Optional<Withdrawal> withdrawal(PartNumber number, Catalogue catalogue) {
        return catalogue.listing(number).flatMap(Listing::withdrawal);
    }
}
