package org.borewright.order.store;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.util.Optional;
import org.borewright.order.PistonsFitted;

/** One piston that goes in. */
@Embeddable
public class FittedPiston {

    /** What it is marked with; none where it was not measured. */
    @Column(name = "tag")
    public String tag;

    /** It was bought by. */
    @Column(name = "number")
    public String number;

    static FittedPiston of(PistonsFitted.Piston piston) {
        FittedPiston kept = new FittedPiston();
        kept.tag = piston.tag().orElse(null);
        kept.number = piston.number();
        return kept;
    }

    PistonsFitted.Piston told() {
        return new PistonsFitted.Piston(Optional.ofNullable(tag), number);
    }
}
