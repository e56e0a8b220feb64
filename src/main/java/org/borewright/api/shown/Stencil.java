package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;

/**
 * A piece of JSON that many answers repeat word for word: cut once and copied, or still uncut where no other answer repeats it. Either way
 * it says what the value it stands for would say.
 *
 * @param <T> what it stands for
 */
@SuppressWarnings("UnusedTypeParameter") // it tells readers of an answer what stands there
public sealed interface Stencil<T> extends WritesItself {

    /** Cut from a value that the mapper can write; any record of the wire is one. */
    static <T> Stencil<T> of(ObjectMapper mapper, T value) {
        try {
            return new Cut<>(new SerializedString(mapper.writeValueAsString(value)));
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }

    /** A value that this answer alone holds: writing it apart first would cost more than it saves. */
    static <T> Stencil<T> uncut(T value) {
        return new Uncut<>(value);
    }

    /**
     * Cut, to be copied.
     *
     * @param json one whole value
     * @param <T> what it was cut from
     */
    record Cut<T>(SerializableString json) implements Stencil<T> {

        @Override
        public void serialize(JsonGenerator generator, SerializerProvider provider) throws IOException {
            generator.writeRawValue(json);
        }
    }

    /**
     * To be written where it stands.
     *
     * @param value any record of the wire
     * @param <T> what it is
     */
    record Uncut<T>(T value) implements Stencil<T> {

        @Override
        public void serialize(JsonGenerator generator, SerializerProvider provider) throws IOException {
            provider.defaultSerializeValue(value, generator);
        }
    }
}
