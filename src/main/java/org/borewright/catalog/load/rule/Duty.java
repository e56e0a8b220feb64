package org.borewright.catalog.load.rule;

import java.util.Locale;

/**
 * What rows of the catalogue owe each other, in the order in which it is asked. Each is listed under its title in the README of the
 * catalogue.
 */
enum Duty {
    /** In the whole catalogue. */
    ONE_THING("a number names one thing", "is the number of %s line %s already"),
    /** Of boxes.csv. */
    PART_OF_A_BOX("a box holds parts", "no file of parts has this number"),
    /** Of prices.csv. */
    PRICED_THING("a price is for a part or a box", "is neither a part nor a box"),
    /** Of withdrawn.csv. */
    REPLACEMENT(
            "a replacement is a part, a box, or withdrawn itself", "is neither a part nor a box, nor withdrawn itself"),
    /** Of engines.csv: layout against cylinders.csv. */
    HOLES("as many holes as the layout says", "has %s cylinders, cylinders.csv names %s"),
    /** Of engines.csv: a pitch in cylinders.csv asks for it. */
    BRIDGE("a least bridge where holes share metal", "is empty, and cylinders.csv gives a pitch"),
    /** Of engines.csv: a plate is for bar and hone. */
    PLATE("a torque plate where the wall is cut", "a wall that is %s is never bored or honed"),
    /** Of cylinders.csv. */
    PITCH("a pitch leads to a next hole", "is the pitch to a next hole, and %s is the last"),
    /** Of sizes.csv, by value and not by how it is typed. */
    OVERSIZE("one size for each oversize", "is the oversize of %s already"),
    /** Of engines.csv. */
    STANDARD("every engine has a standard size", "sizes.csv has no size with an oversize of 0 for it"),
    /** Of piston_designs.csv. */
    CLEARANCES("clearances rise", "out of order: %s"),
    /** Of piston_designs.csv: what is allowed in a finished hole is allowed in service. */
    WEAR_LIMIT("wear limit not below greatest clearance", "is less than the greatest clearance of a finished hole"),
    /** Of piston_designs.csv: both ends of the hole must lie in the window. */
    CHOKE(
            "a choke that the clearances have room for",
            "the ends of the hole differ by %s at the least, the clearances by %s"),
    /** Of piston_designs.csv. */
    CLIP_GROOVES(
            "clip grooves unless the pin is pressed in the rod",
            "is empty, and the pin of the engine is not pressed in the rod"),
    /** Of clips.csv. */
    CLIP_SEAT("a clip for a design with clip grooves", "has no clip grooves in piston_designs.csv"),
    /** Of pistons.csv and ring_sets.csv. */
    SIZE("pistons and ring sets in sizes of their engine", "is no size of %s; sizes.csv has %s"),
    /** Of pistons.csv. */
    GRADE("grades at standard only", "a grade is for standard, and not for %s"),
    /** Of pistons.csv: a piston of a hand that no hole has goes nowhere. */
    HAND("a hand that a hole of the engine has", "no hole of %s is %s"),
    /** Of piston_designs.csv. */
    GROOVES("every design has a groove", "grooves.csv has no groove for it"),
    /** Of ring_sets.csv. */
    RING_FOR_A_GROOVE("a ring for every groove", "rings.csv has no ring for the %s groove"),
    /** Of rings.csv. */
    GROOVE_FOR_A_RING("a groove for every ring", "is no groove of %s; grooves.csv has %s"),
    /** Of gaskets.csv. */
    BASE_GASKET(
            "a base gasket where a kit holds one",
            "no gasket kit of %s holds a base gasket in whose place it could go"),
    /** Of fasteners.csv: ISO 68-1, the profile must leave a core. */
    THREAD("a pitch that leaves a core", "makes no thread: %s"),
    /** Of fasteners.csv. */
    STAGES("every fastener has a torque stage", "torque_stages.csv has no stage for it"),
    /** Of torque_stages.csv. */
    FIRST_STAGE("the first stage is a torque", "an angle is turned on after a stage before, and this is the first"),
    /** Of fasteners.csv. */
    OPERATION("operations of the shop", "%s is not in shop_operations.csv"),
    /** Of fasteners.csv. */
    OPERATION_ONCE("an operation once in a cell", "%s stands twice"),
    /** Of gauges.csv. */
    DUE("a calibration falls due on its day or later", "falls due before it was made, on %s"),
    /** Of boxes.csv. */
    PACKED("a box is packed one way", "the box is packed as %s on line %s"),
    /** Of boxes.csv. */
    PACK("a pack holds one part", "a pack holds several of one part, and %s is in it"),
    /** Of boxes.csv: engine boxes and cylinder boxes that a match must try together. */
    FEW_BOXES(
            "few boxes for one size",
            "with it the boxes of %s can be taken together in more than %s ways for all its kits"),
    /** Of boxes.csv: packs, and boxes of which no more than one part is of use. */
    FEW_PACKS("few packs of one part", "is beyond the %s packs there may be of %s"),
    /** Of withdrawn.csv: whoever orders a number that was replaced must arrive at one that was not. */
    NO_CIRCLE("replacements lead in no circle", "leads back to itself: %s"),
    /** Of shop_operations.csv and prices.csv. */
    CURRENCY("one currency for operations and prices", "the catalogue has one currency, and began with %s");

    private final String title;
    private final String reason;

    Duty(String title, String reason) {
        this.title = title;
        this.reason = reason;
    }

    /** As listed in the README of the catalogue. */
    String title() {
        return title;
    }

    /** Why a cell cannot stand, with what is owed to it. */
    String reason(Object... owed) {
        return String.format(Locale.ROOT, reason, owed);
    }
}
