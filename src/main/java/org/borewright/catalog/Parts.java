package org.borewright.catalog;

import java.util.List;

/**
 * The parts made for one engine, each list in the order of its file.
 *
 * @param designs of pistons
 * @param pistons of every size
 * @param ringSets of every size
 * @param pins for the designs
 * @param clips for the designs
 * @param bearings for the engine
 * @param gasketKits for the engine; the first is what it was made with
 * @param headGaskets for the engine, sold by themselves
 * @param baseGaskets for the engine, sold by themselves
 */
public record Parts(
        List<PistonDesign> designs,
        List<Piston> pistons,
        List<RingSet> ringSets,
        List<Pin> pins,
        List<Clip> clips,
        List<Bearing> bearings,
        List<GasketKit> gasketKits,
        List<HeadGasket> headGaskets,
        List<BaseGasket> baseGaskets) {

    /** Copies the lists. */
    public Parts {
        designs = List.copyOf(designs);
        pistons = List.copyOf(pistons);
        ringSets = List.copyOf(ringSets);
        pins = List.copyOf(pins);
        clips = List.copyOf(clips);
        bearings = List.copyOf(bearings);
        gasketKits = List.copyOf(gasketKits);
        headGaskets = List.copyOf(headGaskets);
        baseGaskets = List.copyOf(baseGaskets);
    }
}
