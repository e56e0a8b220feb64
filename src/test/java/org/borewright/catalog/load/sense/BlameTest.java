package org.borewright.catalog.load.sense;

import static org.assertj.core.api.Assertions.assertThat;

import org.borewright.catalog.load.CatalogReadme;
import org.junit.jupiter.api.Test;

/** The README of the catalogue lists every rule that is asked of parts, in its order, with the cell to look at first. */
class BlameTest {

    @Test
    void readmeListsEveryRuleWithTheCellToLookAtFirst() {
        assertThat(CatalogReadme.table("### What does not go together"))
                .extracting(row -> row.get(0) + ": " + row.get(1))
                .isEqualTo(Blame.CELLS.stream()
                        .map(cell -> "%s: %s, %s".formatted(cell.rule().title(), cell.file(), cell.column()))
                        .toList());
    }

    @Test
    void readmeSaysOfEveryRuleWhenItRefuses() {
        assertThat(CatalogReadme.table("### What does not go together"))
                .allSatisfy(row -> assertThat(row.get(2)).isNotBlank());
    }
}
