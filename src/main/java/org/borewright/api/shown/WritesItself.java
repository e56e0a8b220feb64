package org.borewright.api.shown;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonSerializable;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.jsontype.TypeSerializer;
import java.io.IOException;

/** A value that writes its own JSON, for an answer holds hundreds of them. What kind it is stands where it is shown, so no type is added. */
interface WritesItself extends JsonSerializable {

    @Override
    default void serializeWithType(JsonGenerator json, SerializerProvider provider, TypeSerializer type)
            throws IOException {
        serialize(json, provider);
    }
}
