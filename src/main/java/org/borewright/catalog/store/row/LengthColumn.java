package org.borewright.catalog.store.row;

import jakarta.persistence.AttributeConverter;
import jakarta.persistence.Converter;
import org.borewright.measure.Length;

/** A length is a column of whole nanometres. */
@Converter(autoApply = true)
public class LengthColumn implements AttributeConverter<Length, Long> {

    @Override
    public Long convertToDatabaseColumn(Length length) {
        return length == null ? null : length.nanometres();
    }

    @Override
    public Length convertToEntityAttribute(Long nanometres) {
        return nanometres == null ? null : Length.ofNanometres(nanometres);
    }
}
