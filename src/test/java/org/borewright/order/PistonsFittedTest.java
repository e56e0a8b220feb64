package org.borewright.order;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pistons as sold, as paired and as built: each difference is named, and what is the same is none. */
class PistonsFittedTest {

    private static final PistonsFitted PAIRED = fitted("NORTH +0.50 1:A:N-050 2:B:N-050");

    /** Design, size, then each hole with tag and number; a hyphen stands for no tag. */
    private static PistonsFitted fitted(String told) {
        String[] parts = told.split(" ", -1);
        SortedMap<String, PistonsFitted.Piston> holes = new TreeMap<>();
        for (String hole : List.of(parts).subList(2, parts.length)) {
            String[] piston = hole.split(":", -1);
            holes.put(
                    piston[0],
                    new PistonsFitted.Piston(Optional.of(piston[1]).filter(tag -> !tag.equals("-")), piston[2]));
        }
        return new PistonsFitted(parts[0], parts[1], holes);
    }

    private static String said(List<Difference> found) {
        return found.stream()
                .map(one -> one.what() + ": " + one.asked() + " for " + one.ordered())
                .collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NORTH +0.50 1:A:N-050 2:B:N-050 | ''",
                "NORTH +0.50 1:B:N-050 2:A:N-050 | piston of cylinder 1: B (N-050) for A (N-050); piston of cylinder 2: A (N-050) for B (N-050)",
                "NORTH +0.50 1:A:N-050 2:C:N-050 | piston of cylinder 2: C (N-050) for B (N-050)",
                "NORTH +0.50 1:A:N-050 2:B:N-050A | piston of cylinder 2: B (N-050A) for B (N-050)",
                "NORTH +0.50 1:A:N-050 2:-:N-050 | piston of cylinder 2: N-050 for B (N-050)",
                "NORTH +0.50 1:A:N-050 3:B:N-050 | piston of cylinder 3: B (N-050) for none",
                "NORTH +0.25 1:A:N-050 2:B:N-050 | size: +0.25 for +0.50",
                "SOUTH +0.50 1:A:N-050 2:B:N-050 | design: SOUTH for NORTH",
            })
    void anEngineIsBuiltAsItWasPaired(String built, String differences) {
        assertThat(said(PAIRED.from(fitted(built)))).isEqualTo(differences);
    }

    /** A spare that is sold may go in; what did not come out of the boxes may not, whatever it measures. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NORTH +0.50 1:A:N-050A 2:B:N-050B | ''",
                "NORTH +0.50 1:A:N-050B 2:B:N-050B 3:C:N-050B | piston of cylinder 3: C (N-050B) for 2 of N-050B",
                "NORTH +0.50 1:A:N-050A 2:B:N-050A 3:C:N-050B | piston of cylinder 2: B (N-050A) for 1 of N-050A",
                "NORTH +0.50 1:A:N-050A 2:B:N-050C | piston of cylinder 2: B (N-050C) for N-050A or N-050B",
                "SOUTH +0.50 1:A:S-050 2:B:N-050A | design: SOUTH for NORTH; piston of cylinder 1: A (S-050) for N-050A or N-050B",
                "NORTH +0.25 1:A:N-050A 2:B:N-050B | size: +0.25 for +0.50",
                "NORTH +0.50 | ''",
            })
    void thePistonsOfAQuoteAreThoseOfItsBoxes(String paired, String differences) {
        assertThat(said(sold("NORTH", Map.of("N-050A", 1, "N-050B", 2)).from(fitted(paired))))
                .isEqualTo(differences);
    }

    /** A piston too many bears a number that was sold: perhaps one of them was misread. One that was not sold is set aside. */
    @ParameterizedTest
    @CsvSource({
        "NORTH +0.50 1:A:N-050A 2:B:N-050A, No more of that number came out of the boxes",
        "NORTH +0.50 1:A:N-050C 2:B:N-050B, Set it aside",
    })
    void theWayOutTellsTooManyFromNotSold(String paired, String wayOut) {
        assertThat(sold("NORTH", Map.of("N-050A", 1, "N-050B", 2)).from(fitted(paired)))
                .singleElement()
                .satisfies(one -> assertThat(one.wayOut()).startsWith(wayOut));
    }

    /** Of quotes given long ago less is known, and that much is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "NORTH | NORTH +0.50 1:A:N-050A 2:B:N-050A | ''",
                "NORTH | NORTH +0.50 1:A:N-050A 2:B:N-050C | piston of cylinder 2: B (N-050C) for N-050A",
                "NORTH | SOUTH +0.50 1:A:N-050A | design: SOUTH for NORTH",
                "-     | SOUTH +0.50 1:A:S-050 | ''",
                "-     | SOUTH +0.25 1:A:S-025 | size: +0.25 for +0.50",
            })
    void whatWasNotNotedIsNotAsked(String design, String paired, String differences) {
        PistonsSold sold = sold(design, design == null ? Map.of() : Map.of("N-050A", 0));

        assertThat(said(sold.from(fitted(paired)))).isEqualTo(differences);
    }

    @ParameterizedTest
    @CsvSource({
        "NORTH +0.50 1:A:N-050A 2:B:N-050C, ''",
        "SOUTH +0.50 1:A:S-050, design: SOUTH for NORTH",
        "NORTH +0.25 1:A:N-025, size: +0.25 for +0.50"
    })
    void theOwnersPistonsAreOfTheirDesignAndSizeWhateverTheirNumber(String paired, String differences) {
        PistonsSold own = PistonsSold.ofOwner("NORTH", "+0.50", new TreeSet<>());

        assertThat(said(own.from(fitted(paired)))).isEqualTo(differences);
        assertThat(own.areOwn()).isTrue();
        assertThat(sold("NORTH", Map.of("N-050A", 0)).areOwn()).isFalse();
        assertThat(sold(null, Map.of()).areOwn()).isFalse();
    }

    /** Rings of another set have gaps that nobody quoted; of what neither was told nor noted nothing is asked. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "R-050       | R-050  | ''",
                "R-050 R-051 | R-051  | ''",
                "R-050       | R-050F | ring set: R-050F for R-050",
                "R-050 R-051 | R-050F | ring set: R-050F for R-050 or R-051",
                "R-050       | -      | ''",
                "''          | R-050F | ''",
            })
    void theRingsAreOfASetThatWasSold(String sold, String built, String differences) {
        TreeSet<String> sets = new TreeSet<>(List.of(sold.split(" ")));
        sets.remove("");

        assertThat(said(PistonsSold.ofOwner("NORTH", "+0.50", sets).inRings(PAIRED.with(Optional.ofNullable(built)))))
                .isEqualTo(differences);
    }

    private static PistonsSold sold(String design, Map<String, Integer> counts) {
        return new PistonsSold(Optional.ofNullable(design), "+0.50", new TreeMap<>(counts), new TreeSet<>());
    }
}
