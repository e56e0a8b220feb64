package org.borewright.api.problem;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds the names a person may have meant: those that begin alike, and those a few slips of the hand away. */
public final class NearNames {

    private static final int MOST_OFFERED = 3;
    private static final int LONGEST_COMPARED = 64;

    private NearNames() {}

    /** The nearest of the known names, nearest first; empty when none is near. */
    public static List<String> of(String typed, Collection<String> known) {
        if (typed.length() > LONGEST_COMPARED) {
            return List.of();
        }
        String bare = bare(typed);
        return known.stream()
                .distinct()
                .filter(name -> distance(bare, bare(name)) <= allowed(bare))
                .sorted(Comparator.<String>comparingInt(name -> distance(bare, bare(name)))
                        .thenComparing(Comparator.naturalOrder()))
                .limit(MOST_OFFERED)
                .toList();
    }

    /** Names joined as in a sentence: {@code A, B or C}. */
    public static String either(List<String> names) {
        int last = names.size() - 1;
        return last < 1 ? String.join("", names) : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    /** One slip in three letters; none in fewer, where every name would be near. */
    private static int allowed(String bare) {
        return 2 * (bare.length() / 3);
    }

    /** Letters and digits alone: case, blanks and hyphens are what people change most. */
    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}+]", "");
    }

    /** Twice the number of slips between the two; where one is the beginning of the other, half a slip. */
    private static int distance(String typed, String name) {
        int slips = 2 * edits(typed, name);
        boolean begins =
                typed.length() >= 3 && (name.startsWith(typed) || (name.length() >= 2 && typed.startsWith(name)));
        return begins ? Math.min(1, slips) : slips;
    }

    /** The least number of letters put in, left out, changed or exchanged with their neighbour (optimal string alignment). */
    private static int edits(String from, String to) {
        int[][] best = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                best[i][j] = i == 0 || j == 0 ? i + j : step(best, from, to, i, j);
            }
        }
        return best[from.length()][to.length()];
    }

    private static int step(int[][] best, String from, String to, int i, int j) {
        int changed = best[i - 1][j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        int least = Math.min(changed, 1 + Math.min(best[i - 1][j], best[i][j - 1]));
        boolean exchanged =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return exchanged ? Math.min(least, best[i - 2][j - 2] + 1) : least;
    }
}
