package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.SerializedString;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializerProvider;
import java.io.IOException;

/**
 * A piece of JSON written once and copied into every answer that repeats it: it says what the value it was cut from would say.
 *
 * @param json one whole value
 * @param <T> what it was cut from
 */
@SuppressWarnings("UnusedTypeParameter") // it tells readers of an answer what stands there
public record Stencil<T>(SerializableString json) implements WritesItself {

    /** Cut from a value that the mapper can write; any record of the wire is one. */
    public static <T> Stencil<T> of(ObjectMapper mapper, T value) {
        try {
            return new Stencil<>(new SerializedString(mapper.writeValueAsString(value)));
        } catch (JsonProcessingException unwritable) {
            throw new IllegalStateException(unwritable);
        }
    }

    @Override
    public void serialize(JsonGenerator generator, SerializerProvider provider) throws IOException {
        generator.writeRawValue(json);
    }
}
