package org.borewright.fit;

import org.borewright.measure.Length;

/** Every rule that is asked, in the order a machinist asks them: hole, piston, rings, pin, clips, gasket, deck, set, torque. */
public enum Rule {
    /** The hole comes out clean at the size. */
    CLEAN_UP("clean-up", "geometry of the bar; ISO 14253-1", "probe the wall, or take the next size"),
    /** The probed wall does not lie nearer the axis than half the diameter. */
    PROBED_WALL(
            "probed wall",
            "geometry; ISO 14253-1",
            "probe the wall again: the diameter and the probe contradict each other"),
    /** The wall of sleeve or block left around the hole. */
    WALL_LEFT("wall left", "limit: engines.csv; geometry; ISO 14253-1", "take a smaller size, or fit a new sleeve"),
    /** The wall left of the spigot. */
    SPIGOT_WALL("spigot wall left", "limit: engines.csv; geometry", "take a smaller size, or fit a new sleeve"),
    /** The metal left between two holes. */
    BRIDGE("bridge to the next hole", "limit: engines.csv; geometry", "take a smaller size"),
    /** The piston is made for this place. */
    PISTON_PART(
            "piston made for design, size and hole",
            "pistons.csv, cylinders.csv",
            "set it aside, and find the piston made for this place"),
    /** The reading of a piston is one across its thrust faces. */
    PISTON_READING(
            "reading of the piston",
            "limit: least diameter of pistons.csv less 0.05 mm, common practice",
            "measure again at the gauge height across the thrust faces: was it across the pin, or at the wrong height?"),
    /** A measured piston against the least of its tolerance. */
    PISTON_LEAST(
            "least diameter of the piston",
            "limit: pistons.csv; ISO 1, JCGM 106",
            "do not fit this piston: it is not of its size, or worn"),
    /** A measured piston against the greatest of its tolerance. */
    PISTON_GREATEST(
            "greatest diameter of the piston",
            "limit: pistons.csv; ISO 1, JCGM 106",
            "do not fit this piston: it is not of its size"),
    /** The clearance honed for against the least, as the two gauges will show it. */
    TARGET_LEAST(
            "target clearance above the least",
            "limit: piston_designs.csv; ISO 14253-1",
            "move the target off the least clearance"),
    /** The clearance honed for against the greatest, as the two gauges will show it. */
    TARGET_GREATEST(
            "target clearance below the greatest",
            "limit: piston_designs.csv; ISO 14253-1",
            "move the target off the greatest clearance"),
    /** Nothing on the wall must be cut out. */
    NOTHING_TO_CUT("nothing to be cut out of the wall", "common practice", "rebore: rings only do not mend it"),
    /** The largest diameter of a hole that is to run on. */
    SERVICE_WEAR(
            "largest diameter in service",
            "limit: smallest hole of the present size + allowance of engines.csv; ISO 14253-1",
            "rebore: the hole is too large for rings only"),
    /** The taper of a hole that is to run on. */
    SERVICE_TAPER(
            "taper in service",
            "limit: allowance of engines.csv; ISO 14253-1",
            "hone or rebore: the hole is no longer straight enough"),
    /** How far from round a hole may be that is to run on. */
    SERVICE_OUT_OF_ROUND(
            "out-of-round in service",
            "limit: allowance of engines.csv; ISO 14253-1",
            "hone or rebore: the hole is no longer round enough"),
    /** The piston in the hole is one of its size, as in the other holes. */
    PRESENT_PISTON(
            "present piston",
            "common practice: pistons of one design and size in every hole",
            "find out the present size, or fit new pistons"),
    /** The measured present piston in the hole where its skirt runs. */
    SERVICE_CLEARANCE(
            "clearance in service",
            "limit: wear limit of piston_designs.csv; ISO 1, JCGM 106",
            "fit new pistons: the present one has too much clearance"),
    /** The grooves of the present piston. */
    GROOVES(
            "ring grooves of the present piston",
            "common practice",
            "fit new pistons: new rings do not seal in worn grooves"),
    /** The ridge above the travel of the top ring. */
    RIDGE(
            "ridge above the ring travel",
            "common practice: a new top ring strikes a ridge and breaks",
            "take the ridge off, then measure again"),
    /** The glaze of the wall. */
    GLAZE(
            "glaze of the wall",
            "common practice: new rings do not bed in on a glazed wall",
            "break the glaze, wash, then measure again"),
    /** The smallest hole against the largest piston. */
    CLEARANCE_LEAST(
            "least clearance", "limit: piston_designs.csv; ISO 1, JCGM 106", "hone further, or take a smaller piston"),
    /** The largest hole against the smallest piston. */
    CLEARANCE_GREATEST(
            "greatest clearance",
            "limit: piston_designs.csv; ISO 1, JCGM 106",
            "take the next size that is offered, or ask a specialist about a sleeve"),
    /** The hole narrows no more than a finished hole may. */
    FINISHED_TAPER(
            "taper after honing",
            "limit: engines.csv, else common practice, 0.010 mm; ISO 14253-1",
            "hone until straight"),
    /** The hole is wider at the bottom by the least that its maker wants. */
    CHOKE_LEAST(
            "least choke after honing",
            "limit: engines.csv, bottom minus top; ISO 14253-1",
            "hone the bottom wider, while the clearance allows"),
    /** The hole is no wider at the bottom than its maker wants. */
    CHOKE_GREATEST(
            "greatest choke after honing",
            "limit: engines.csv, bottom minus top; ISO 14253-1",
            "hone the top wider, while the clearance allows"),
    /** The hole widens evenly from end to end. */
    CHOKE_EVEN(
            "evenness of the choke after honing",
            "limit: engines.csv, else common practice, 0.010 mm; ISO 14253-1",
            "hone until no place is wider or narrower than both ends"),
    /** The hole is round enough for a finished hole. */
    FINISHED_OUT_OF_ROUND(
            "out-of-round after honing",
            "limit: engines.csv, else common practice, 0.010 mm; ISO 14253-1",
            "hone until round"),
    /** The ring set is made for the piston's bore. */
    RING_BORE("nominal bore of the rings", "ISO 6621-2", "take the ring set of the piston's size"),
    /** The ring's section is the groove's. */
    RING_SECTION("section of ring and groove", "ISO 6621-1", "take the ring made for this piston"),
    /** The ring's face may run on this surface. */
    RING_FACE(
            "ring face on the bore's surface",
            "common practice: like does not run on like plating",
            "take rings with another face"),
    /** The ring gap in the smallest hole. */
    RING_GAP_LEAST(
            "least ring gap",
            "ISO 6621-2: gap in a gauge of nominal bore, π per diameter; ISO 14253-1",
            "wrong ring: take the ring made for this bore"),
    /** What is filed off a ring that is made for it, until its gap in the smallest hole is the least. */
    RING_GAP_TO_FILE(
            "what is filed off the ring",
            "ISO 6621-2; the ring maker's file allowance; ISO 14253-1",
            "file the ends to the least gap at the narrowest place of the hole, square and free of burrs"),
    /** The ring gap in the smallest place of a finished hole, of a ring that must be filed for it. */
    RING_FILED(
            "least ring gap of a ring to be filed",
            "limit: grooves.csv; ISO 6621-2: gap in a gauge of nominal bore, π per diameter; ISO 14253-1",
            "try each ring square at the narrowest place of its hole, file its ends until the gap there is within the limits told for its hole (fileTo), then say"
                    + " that it is done (ringsFiled)"),
    /** The ring gap in the largest hole. */
    RING_GAP_GREATEST(
            "greatest ring gap",
            "ISO 6621-2: gap in a gauge of nominal bore, π per diameter; ISO 14253-1",
            "wrong ring: take the ring made for this bore"),
    /** The ring gap at the largest place of a hole that is to run on. */
    SERVICE_RING_GAP(
            "greatest ring gap in service",
            "limit: grooves.csv; ISO 6621-2: gap in a gauge of nominal bore, π per diameter; ISO 14253-1",
            "rebore: the hole is too large for rings of its size"),
    /** The least play of the ring in its groove. */
    RING_PLAY_LEAST("least axial play of the ring", "limit: grooves.csv; ISO 6621-2", "wrong ring for this groove"),
    /** The greatest play of the ring in its groove. */
    RING_PLAY_GREATEST(
            "greatest axial play of the ring", "limit: grooves.csv; ISO 6621-2", "wrong ring for this groove"),
    /** The room behind the ring. */
    RING_BACK("back clearance of the ring", "limit: grooves.csv; geometry", "wrong ring for this groove"),
    /** The least fit of the pin in the piston. */
    PIN_IN_PISTON_LEAST(
            "least clearance of the pin in the piston",
            "limit: piston_designs.csv; ISO 286-1",
            "take the pin made for this piston"),
    /** The greatest fit of the pin in the piston. */
    PIN_IN_PISTON_GREATEST(
            "greatest clearance of the pin in the piston",
            "limit: piston_designs.csv; ISO 286-1",
            "take the pin made for this piston"),
    /** The least fit of the pin in the rod. */
    PIN_IN_ROD_LEAST(
            "least clearance of the pin in the rod", "limit: engines.csv; ISO 286-1", "check bush and pin of the rod"),
    /** The greatest fit of the pin in the rod. */
    PIN_IN_ROD_GREATEST(
            "greatest clearance of the pin in the rod",
            "limit: engines.csv; ISO 286-1",
            "check bush and pin of the rod"),
    /** The least float of the pin between its clips. */
    CLIP_FLOAT_LEAST(
            "least end float of the pin",
            "limit: piston_designs.csv; geometry",
            "take pin and clips made for this piston"),
    /** The greatest float of the pin between its clips. */
    CLIP_FLOAT_GREATEST(
            "greatest end float of the pin",
            "limit: piston_designs.csv; geometry",
            "take pin and clips made for this piston"),
    /** The wire goes into its groove. */
    CLIP_PLAY_LEAST("clip wire in its groove", "geometry: never negative", "take the clip made for this piston"),
    /** The wire does not rattle in its groove. */
    CLIP_PLAY_GREATEST(
            "side play of the clip", "limit: piston_designs.csv; geometry", "take the clip made for this piston"),
    /** The gasket stands back from the hole. */
    GASKET_OPENING(
            "opening of the head gasket",
            "limit: largest finish + 2 × margin; margin: gasket_kits.csv, gaskets.csv or common practice, 0.5 mm",
            "take the gasket kit for large sizes"),
    /** The gasket still sits on its land. */
    GASKET_LAND("head gasket on its land", "limit: engines.csv; geometry", "take the gasket kit for this size"),
    /** The crown goes into the head. */
    CROWN_IN_MOUTH(
            "crown in the chamber mouth", "limit: engines.csv; geometry", "take a smaller size, or open the register"),
    /** How far the deck is out of flat. */
    DECK_FLATNESS(
            "flatness of the deck",
            "limit: engines.csv; ISO 14253-1",
            "skim the deck as needed: its out-of-flat and the uncertainty of that at the least"),
    /** A skim takes away all that the deck is out of flat. */
    SKIM_TO_FLAT(
            "skim that makes the deck flat",
            "geometry: the out-of-flat found and its uncertainty",
            "skim at least so much, or measure the deck closer"),
    /** All skims of the deck together. */
    DECK_SKIM(
            "all skims of the deck together",
            "limit: engines.csv, or what is left below it from piston to head; geometry",
            "skim less; where earlier skims leave no less, ask a specialist about another block or barrel"),
    /** The same where the gaskets bear less than the engine itself does. */
    ENGINE_SKIM(
            "all skims of the deck together, whatever gaskets go on",
            "limit: engines.csv",
            "skim less; where earlier skims leave no less, ask a specialist about another block or barrel"),
    /** The least distance from piston to head. */
    PISTON_TO_HEAD_LEAST(
            "least piston-to-head distance", "limit: engines.csv; geometry", "take a thicker gasket, or skim less"),
    /** The greatest distance from piston to head. */
    PISTON_TO_HEAD_GREATEST(
            "greatest piston-to-head distance", "limit: engines.csv; geometry", "take a thinner gasket"),
    /** The compression ratio. */
    COMPRESSION_RATIO(
            "compression ratio",
            "limit: engines.csv; geometry, V = π/4·B²·S",
            "take a thicker gasket, or pistons with less crown"),
    /** The mass of a piston beside that of its number. */
    PISTON_MASS(
            "mass of the piston",
            "listed: pistons.csv; common practice: a tenth beside it, with pin and clips twice as much",
            "weigh it again: a digit may have slipped, or it is another piston, or weighed otherwise than was said"),
    /** The spread of the piston masses. */
    MASS_SPREAD("spread of the piston masses", "limit: engines.csv", "weigh and match the set"),
    /** The pull of a torque against the proof load. */
    PRELOAD(
            "pull of the torque against the proof load",
            "ISO 898-1 proof load; T = K·d·F",
            "do not use this torque: ask the engine maker"),
    /** The piston belongs to the size it is listed under. */
    PISTON_SIZE(
            "piston against its size",
            "limit: new bore limits of engines.csv + oversize",
            "correct the size or the diameter");

    private final String title;
    private final String source;
    private final String wayOut;

    Rule(String title, String source, String wayOut) {
        this.title = title;
        this.source = source;
        this.wayOut = wayOut;
    }

    /** What is checked, in the words of the trade. */
    public String title() {
        return title;
    }

    /** Where rule and limit come from: a standard, a catalogue file, or common practice. */
    public String source() {
        return source;
    }

    /** What to do when the answer is out. */
    public String wayOut() {
        return wayOut;
    }

    Comparison atLeast(String place, Length value, Length limit) {
        return Comparison.exact(this, place, Amount.of(value), Sense.AT_LEAST, Amount.of(limit));
    }

    Comparison atMost(String place, Length value, Length limit) {
        return Comparison.exact(this, place, Amount.of(value), Sense.AT_MOST, Amount.of(limit));
    }

    Comparison atLeast(String place, Amount value, Amount limit) {
        return Comparison.exact(this, place, value, Sense.AT_LEAST, limit);
    }

    Comparison atMost(String place, Amount value, Amount limit) {
        return Comparison.exact(this, place, value, Sense.AT_MOST, limit);
    }

    Unchecked notChecked(String place, String reason) {
        return new Unchecked(this, place, Outcome.NOT_CHECKED, reason);
    }

    Unchecked unknown(String place, String reason) {
        return new Unchecked(this, place, Outcome.UNKNOWN, reason);
    }
}
