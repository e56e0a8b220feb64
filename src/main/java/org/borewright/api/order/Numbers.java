package org.borewright.api.order;

import java.util.Locale;
import java.util.regex.Pattern;
import org.borewright.api.problem.Problem;
import org.borewright.api.problem.ProblemException;
import org.borewright.api.problem.ProblemType;

/** Numbers in a path; what is no number is the number of nothing. */
public final class Numbers {

    private static final Pattern FORM = Pattern.compile("[1-9][0-9]{0,17}");

    private Numbers() {}

    static long order(String text) {
        return of(text, ProblemType.UNKNOWN_ORDER, "There is no order \"%s\".");
    }

    static long quote(String text) {
        return of(text, ProblemType.UNKNOWN_QUOTE, "There is no quote \"%s\".");
    }

    static long paper(String text) {
        return of(text, ProblemType.UNKNOWN_PAPER, "There is no paper \"%s\".");
    }

    /** That of somebody who is told of changes. */
    public static long hook(String text) {
        return of(text, ProblemType.UNKNOWN_HOOK, "There is no hook \"%s\".");
    }

    private static long of(String text, ProblemType type, String sentence) {
        if (!FORM.matcher(text).matches()) {
            throw new ProblemException(Problem.of(type, String.format(Locale.ROOT, sentence, text)));
        }
        return Long.parseLong(text);
    }
}
