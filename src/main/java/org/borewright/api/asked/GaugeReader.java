package org.borewright.api.asked;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.borewright.api.problem.ProblemType;
import org.borewright.api.problem.UnknownName;
import org.borewright.catalog.Catalogue;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Gauge.Calibration;
import org.borewright.measure.Gauge.Kind;
import org.borewright.measure.Gauge.Source;
import org.borewright.measure.Length;
import org.borewright.measure.SettingRing;
import org.borewright.measure.Temperature;
import org.borewright.measure.Temperature.Scale;

/**
 * Reads what things of one kind were measured with.
 *
 * @param ruler for its lengths
 * @param scale of the temperature of its setting ring; empty when that could not be read
 * @param catalogue whose register a gauge may be named in
 * @param usual the kind that measures such things, and so the one it is where nothing is said
 */
public record GaugeReader(Ruler ruler, Optional<Scale> scale, Catalogue catalogue, Kind usual) {

    /** A gauge worse than half a millimetre measures no bore and no deck. */
    public static final Length WORST_GAUGE = Length.ofMicrometres(500);

    private static final int LONGEST_NAME = 60;

    /** No ring grows more than aluminium does, with room to spare. */
    private static final BigDecimal MOST_EXPANSION = BigDecimal.valueOf(30);

    private static final BigDecimal WORST_EXPANSION = BigDecimal.valueOf(5);

    /**
     * The gauge of the register, where it is named there; else what is said of it, and what is not said is that of the usual one of its
     * kind, and that kind where none is named.
     */
    public Gauge read(Place place) {
        if (!place.isObject(
                "kind", "name", "uncertainty", "resolution", "repeatability", "calibratedOn", "due", "ring")) {
            return usual.usual();
        }
        Gauge described = described(place);
        Gauge gauge =
                described.name().map(name -> called(name, described, place)).orElse(described);
        checkKind(place.at(gauge.statedBy() == Source.REGISTER ? "name" : "kind"), gauge.kind());
        return gauge;
    }

    /** What gets into a hole gets round no piston, and the other way round. */
    private void checkKind(Place place, Kind kind) {
        if (kind != usual) {
            place.fault(
                    ProblemType.WRONG_GAUGE,
                    "A " + kind.label() + " measures no " + (usual == Kind.BORE_GAUGE ? "hole" : "piston") + ".",
                    "a " + usual.label());
        }
    }

    /** A gauge that is not in the register must say itself what it is worth: a name misspelt is not passed over in silence. */
    private Gauge called(String name, Gauge described, Place place) {
        Optional<Gauge> registered = catalogue.gauge(name);
        if (registered.isPresent()) {
            new GaugeAgreement(place, ruler).check(described, registered.get());
            return registered.get().zeroedOn(described.ring());
        }
        if (Stream.of("uncertainty", "resolution", "repeatability")
                .noneMatch(figure -> place.at(figure).isGiven())) {
            place.add(UnknownName.gauge(place.at("name").pointer(), name, catalogue));
        }
        return described;
    }

    private Gauge described(Place place) {
        return new Gauge(
                place.at("kind").word(List.of(Kind.values()), Kind::label).orElse(usual),
                name(place.at("name")),
                calibration(place),
                ruler.above(place.at("resolution"), WORST_GAUGE),
                ruler.upTo(place.at("repeatability"), WORST_GAUGE).orElse(Length.ZERO),
                ring(place.at("ring")),
                Source.REQUEST);
    }

    private static Optional<String> name(Place place) {
        Optional<String> name = place.text();
        if (name.isPresent() && (name.get().isBlank() || name.get().length() > LONGEST_NAME)) {
            place.fault(
                    ProblemType.WRONG_FORM,
                    "The name of the gauge is empty or too long.",
                    "1 to " + LONGEST_NAME + " characters");
            return Optional.empty();
        }
        return name;
    }

    private Calibration calibration(Place place) {
        Optional<LocalDate> on = DateReader.read(place.at("calibratedOn"));
        Optional<LocalDate> due = DateReader.read(place.at("due"));
        if (on.isPresent() && due.isPresent() && due.get().isBefore(on.get())) {
            place.at("due")
                    .fault(
                            ProblemType.BAD_DATE,
                            "The calibration falls due before it was made.",
                            on.get() + " or later");
            due = Optional.empty();
        }
        return new Calibration(ruler.above(place.at("uncertainty"), WORST_GAUGE), on, due);
    }

    private Optional<SettingRing> ring(Place place) {
        if (!place.isObject("size", "temperature", "expansion", "expansionUncertainty")) {
            return Optional.empty();
        }
        place.at("size").need("The marked size of the setting ring is missing.");
        place.at("temperature")
                .need("The temperature of the setting ring is missing; leave the ring out when it was at 20 °C.");
        Optional<Length> size = ruler.nearHole(place.at("size"));
        Optional<Temperature> temperature = ClimateReader.temperature(place.at("temperature"), scale);
        Expansion expansion =
                new Expansion(expansion(place.at("expansion")), expansionUncertainty(place.at("expansionUncertainty")));
        return size.flatMap(marked -> temperature.map(warm -> new SettingRing(marked, warm, expansion)));
    }

    private static double expansion(Place place) {
        return millionths(place, MOST_EXPANSION, "No setting ring expands so.").orElseGet(SettingRing.STEEL::perKelvin);
    }

    private static double expansionUncertainty(Place place) {
        return millionths(place, WORST_EXPANSION, "No setting ring is known so badly.")
                .orElseGet(SettingRing.STEEL::standardUncertainty);
    }

    /** In millionths per kelvin, as the engine's own is shown. */
    private static Optional<Double> millionths(Place place, BigDecimal most, String no) {
        Optional<BigDecimal> typed = place.number();
        if (typed.filter(figure -> figure.signum() < 0 || figure.compareTo(most) > 0)
                .isPresent()) {
            place.fault(ProblemType.BAD_FIGURE, no, "0 to " + most + " millionths per kelvin");
            return Optional.empty();
        }
        return typed.map(figure -> figure.movePointLeft(6).doubleValue());
    }
}
