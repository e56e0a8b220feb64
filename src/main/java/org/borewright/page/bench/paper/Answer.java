package org.borewright.page.bench.paper;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.borewright.api.order.answer.PaperAnswer;
import org.borewright.page.Told;
import org.jspecify.annotations.Nullable;

/**
 * A part of an answer, to be looked into by name.
 *
 * @param told object, list or text as {@link Told} has it; absent where the answer does not have it
 */
public record Answer(@Nullable Object told) {

    /** The whole of an answer. */
    public static Answer of(byte[] answer) {
        return new Answer(Told.of(answer));
    }

    /** The whole of an answer that was kept. */
    public static Answer of(String answer) {
        return of(answer.getBytes(StandardCharsets.UTF_8));
    }

    /** The whole of what was answered on a paper that was fetched whole. */
    public static Answer of(PaperAnswer paper) {
        return of(Objects.requireNonNull(paper.answer(), "a whole paper has its answer"));
    }

    /** A member. */
    public Answer at(String name) {
        return new Answer(told instanceof Map<?, ?> object ? object.get(name) : null);
    }

    /** The members of a list; none where it is no list. */
    public List<Answer> items() {
        return told instanceof List<?> list ? list.stream().map(Answer::new).toList() : List.of();
    }

    /** Whether a member is exactly this word. */
    public boolean says(String name, String word) {
        return at(name).text().filter(word::equals).isPresent();
    }

    /** The very text of a figure or a word; empty where there is none. */
    public Optional<String> text() {
        return told instanceof String text ? Optional.of(text) : Optional.empty();
    }
}
