package org.borewright.catalog.load;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import org.borewright.catalog.Revision;
import org.borewright.catalog.load.sheet.Sheet;
import org.borewright.catalog.load.sheet.Sheets;
import org.borewright.catalog.load.table.Table;
import org.borewright.catalog.load.table.Tables;

/**
 * The revision of a catalogue: the first twelve hex digits of SHA-256 over what its files say. The order of columns, quotes and line
 * ends do not count; the order of lines does, for parts are listed in it.
 */
final class Fingerprint {

    private static final int DIGITS = 12;

    private Fingerprint() {}

    static Revision of(Sheets sheets) {
        return new Revision(over(Tables.fit(), sheets), over(Tables.offers(), sheets));
    }

    private static String over(List<Table<?>> tables, Sheets sheets) {
        MessageDigest digest = sha256();
        for (Table<?> table : tables) {
            put(digest, table.file());
            for (Sheet.Line line : sheets.of(table.file()).lines()) {
                line.cells(table.columnNames()).forEach(cell -> put(digest, cell));
            }
        }
        return HexFormat.of().formatHex(digest.digest()).substring(0, DIGITS);
    }

    /** Each text with its length before it, so that no two different catalogues read the same. */
    private static void put(MessageDigest digest, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        digest.update((bytes.length + ":").getBytes(StandardCharsets.UTF_8));
        digest.update(bytes);
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("every Java has SHA-256", absent);
        }
    }
}
