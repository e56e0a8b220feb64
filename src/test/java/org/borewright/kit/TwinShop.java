package org.borewright.kit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.borewright.catalog.BaseGasket;
import org.borewright.catalog.Bearing;
import org.borewright.catalog.Bolt;
import org.borewright.catalog.BoreSpec;
import org.borewright.catalog.Box;
import org.borewright.catalog.Build;
import org.borewright.catalog.Clip;
import org.borewright.catalog.Construction;
import org.borewright.catalog.Cylinder;
import org.borewright.catalog.Engine;
import org.borewright.catalog.EngineName;
import org.borewright.catalog.Fastener;
import org.borewright.catalog.GasketKit;
import org.borewright.catalog.Hand;
import org.borewright.catalog.HeadGasket;
import org.borewright.catalog.Layout;
import org.borewright.catalog.Money;
import org.borewright.catalog.Offer;
import org.borewright.catalog.Offers;
import org.borewright.catalog.PartNumber;
import org.borewright.catalog.Parts;
import org.borewright.catalog.Pin;
import org.borewright.catalog.Piston;
import org.borewright.catalog.PistonDesign;
import org.borewright.catalog.Revision;
import org.borewright.catalog.RingSet;
import org.borewright.catalog.RodEnd;
import org.borewright.catalog.ServiceLimits;
import org.borewright.catalog.Shelf;
import org.borewright.catalog.ShopOperation;
import org.borewright.catalog.Size;
import org.borewright.catalog.Strokes;
import org.borewright.catalog.TorqueStage;
import org.borewright.catalog.Withdrawal;
import org.borewright.fit.DeckFlatness;
import org.borewright.fit.shape.BoltShape;
import org.borewright.fit.shape.BoreSurface;
import org.borewright.fit.shape.Choke;
import org.borewright.fit.shape.ClearanceWindow;
import org.borewright.fit.shape.ClipSeat;
import org.borewright.fit.shape.ClipShape;
import org.borewright.fit.shape.Crown;
import org.borewright.fit.shape.DeckShape;
import org.borewright.fit.shape.GasketShape;
import org.borewright.fit.shape.GrooveShape;
import org.borewright.fit.shape.HeadShape;
import org.borewright.fit.shape.MassRange;
import org.borewright.fit.shape.MetricThread;
import org.borewright.fit.shape.PinSeat;
import org.borewright.fit.shape.PinShape;
import org.borewright.fit.shape.PistonShape;
import org.borewright.fit.shape.PropertyClass;
import org.borewright.fit.shape.RingFace;
import org.borewright.fit.shape.RingSection;
import org.borewright.fit.shape.RingShape;
import org.borewright.fit.shape.ThreadCondition;
import org.borewright.fit.shape.WallShape;
import org.borewright.kit.bill.KitFinder;
import org.borewright.kit.choice.FitTable;
import org.borewright.kit.request.Condition;
import org.borewright.kit.request.Deck;
import org.borewright.kit.request.MatchRequest;
import org.borewright.kit.request.PresentSize;
import org.borewright.measure.Climate;
import org.borewright.measure.Expansion;
import org.borewright.measure.Gauge;
import org.borewright.measure.Length;
import org.borewright.measure.LengthUnit;
import org.borewright.measure.Limits;
import org.borewright.measure.Temperature;
import org.borewright.measure.Torque;
import org.borewright.measure.survey.CylinderSurvey;
import org.borewright.measure.survey.Finding;
import org.borewright.measure.survey.SingleDiameter;
import org.borewright.measure.survey.Wall;

/**
 * A small shop with one invented twin of 70.000 mm bore and round figures: a piston of a size needs a hole of exactly 70.000 mm
 * + oversize at target, so that a machinist can check every case in the head. Tests change one thing and ask again.
 */
public final class TwinShop {

    private static final Currency EUR = Currency.getInstance("EUR");

    /** The day every request is made on. */
    public static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    public final List<Size> sizes = new ArrayList<>();
    public final List<Piston> pistons = new ArrayList<>();
    public final List<RingSet> rings = new ArrayList<>();
    public final List<Box> boxes = new ArrayList<>();
    public final List<GasketKit> gaskets = new ArrayList<>();
    public final List<HeadGasket> headGaskets = new ArrayList<>();
    public final List<BaseGasket> baseGaskets = new ArrayList<>();
    public final List<Pin> pins = new ArrayList<>();
    public final List<Clip> clips = new ArrayList<>();
    public final List<Bearing> bearings = new ArrayList<>();
    public final Map<PartNumber, Withdrawal> withdrawals = new HashMap<>();
    public final Map<PartNumber, Offer> offers = new HashMap<>();
    public Strokes strokes = Strokes.FOUR;
    public boolean torquePlate;
    public Optional<Choke> choke = Optional.empty();
    public Length honedShape = mm("0.010");
    public Length honeCleanUp = mm("0.005");
    public List<Hand> hands = List.of(Hand.ANY, Hand.ANY);
    public Construction construction = Construction.IRON_BARREL;
    public BoreSurface surface = BoreSurface.IRON;
    public RodEnd rodEnd = new RodEnd(
            new PinSeat(new Limits(mm("18.010"), mm("18.020")), new Limits(mm("0.005"), mm("0.03"))), false, false);
    public WallShape wall = new WallShape(
            Optional.of(mm("78")), Optional.of(mm("2.5")), Optional.empty(), Optional.empty(), Optional.empty());
    public Optional<Length> pitch = Optional.empty();
    public Length shapeAllowed = mm("0.05");
    public Length largestOversize = mm("1");
    public Optional<Length> wearLimit = Optional.of(mm("0.140"));
    private Optional<MetricThread> boltThread = Optional.of(new MetricThread(mm("8"), mm("1.25")));
    public Limits pistonToHead = new Limits(mm("0.6"), mm("2.4"));

    /** The shop with sizes standard to +1.00, everything on the shelf. */
    public TwinShop() {
        size("standard", "0");
        size("+0.25", "0.25");
        size("+0.50", "0.50");
        size("+0.75", "0.75");
        size("+1.00", "1.00");
        gaskets.add(gasket("GK-1", "73"));
        pins.add(new Pin(
                no("PIN-1"),
                "DESIGN-1",
                new PinShape(new Limits(mm("17.996"), mm("18.000")), new Limits(mm("55.2"), mm("55.4")))));
        clips.add(new Clip(no("CLIP-1"), "DESIGN-1", new ClipShape(new Limits(mm("1.18"), mm("1.20")))));
        offer("PIN-1", "6", 20);
        offer("CLIP-1", "0.50", 40);
        offer("GK-1", "30", 5);
        offer("BOLT-1", "2", 50);
    }

    /** A length in millimetres. */
    public static Length mm(String millimetres) {
        return Length.parseMillimetres(millimetres);
    }

    /** A number. */
    public static PartNumber no(String number) {
        return new PartNumber(number);
    }

    /** Makes the engine in another size, with its pistons and rings on the shelf. */
    public void size(String label, String oversize) {
        sizes.add(new Size(label, mm(oversize), false));
        sizes.sort(null);
        String suffix = suffix(label);
        pistons.add(piston("P-" + suffix, label, oversize, Optional.empty()));
        rings.add(ringSet("R-" + suffix, label, mm("70").plus(mm(oversize))));
        offer("P-" + suffix, "40", 10);
        offer("R-" + suffix, "20", 10);
    }

    private static String suffix(String label) {
        return label.equals("standard") ? "STD" : label.replace("+", "").replace(".", "");
    }

    /** A wall of which nothing is known but how far it stands off the axis. */
    public static Wall probed(Wall.Reach reach) {
        return new Wall(
                Optional.empty(), Optional.empty(), Optional.of(reach), Optional.empty(), Optional.empty(), false);
    }

    /** A piston of an oversize: 69.940 to 69.950 mm + oversize, clearance 0.040, 0.060, 0.100 mm. */
    public static Piston piston(String number, String size, String oversize, Optional<String> grade) {
        Length over = mm(oversize);
        PistonShape shape = new PistonShape(
                new Limits(mm("69.940"), mm("69.950")).plus(over),
                mm("70").plus(over),
                new ClearanceWindow(mm("0.040"), mm("0.060"), mm("0.100")),
                new Crown(mm("34"), Length.ZERO, 0),
                List.of(new GrooveShape(
                        "top",
                        RingSection.RECTANGULAR,
                        new Limits(mm("1.52"), mm("1.54")),
                        new Limits(mm("63.9"), mm("64.0")).plus(over),
                        new Limits(mm("0.2"), mm("0.8")),
                        new Limits(mm("0.01"), mm("0.08")),
                        mm("0.1"))),
                new PinSeat(new Limits(mm("18.000"), mm("18.006")), new Limits(mm("0"), mm("0.012"))),
                Optional.of(new ClipSeat(
                        new Limits(mm("58.0"), mm("58.1")),
                        new Limits(mm("1.2"), mm("1.25")),
                        new Limits(mm("0.1"), mm("0.6")),
                        mm("0.1"))),
                new MassRange(200_000, 201_000));
        return new Piston(no(number), "DESIGN-1", size, Hand.ANY, grade, shape);
    }

    /** Rings of a size with another gap as made, and so much that may be filed off them. */
    public void gapOfRings(String size, Length least, Length fileAllowance) {
        rings.replaceAll(set -> set.size().equals(size)
                ? new RingSet(
                        set.number(),
                        set.design(),
                        set.size(),
                        set.nominalBore(),
                        set.rings().stream()
                                .map(ring -> new RingShape(
                                        ring.groove(),
                                        ring.section(),
                                        ring.axialWidth(),
                                        ring.radialWall(),
                                        new Limits(least, least.plus(mm("0.150"))),
                                        ring.gaugeBore(),
                                        fileAllowance,
                                        ring.face()))
                                .toList())
                : set);
    }

    private static RingSet ringSet(String number, String size, Length bore) {
        return new RingSet(
                no(number),
                "DESIGN-1",
                size,
                bore,
                List.of(new RingShape(
                        "top",
                        RingSection.RECTANGULAR,
                        new Limits(mm("1.48"), mm("1.50")),
                        new Limits(mm("2.7"), mm("2.8")),
                        new Limits(mm("0.30"), mm("0.45")),
                        bore,
                        Length.ZERO,
                        RingFace.PLAIN)));
    }

    /** A gasket kit with an opening. */
    public static GasketKit gasket(String number, String opening) {
        return new GasketKit(
                no(number),
                new GasketShape(
                        new Limits(mm(opening), mm(opening).plus(mm("0.2"))),
                        new Limits(mm("1.0"), mm("1.1")),
                        new Limits(mm("0.5"), mm("0.5")),
                        mm("0.5")),
                2);
    }

    /** Puts a number on the shelf, more in ten days. */
    public void offer(String number, String price, int onHand) {
        offers.put(no(number), new Offer(no(number), money(price), onHand, OptionalInt.of(10)));
    }

    /** Puts the last of a number on the shelf: no more can be had. */
    public void lastOf(String number, int onHand) {
        Offer old = offers.get(no(number));
        offers.put(no(number), new Offer(no(number), old.price(), onHand, OptionalInt.empty()));
    }

    /** A box of parts with counts, such as {@code P-050 2 R-050 2}, and its offer. */
    public void box(String number, Box.Kind kind, String contents, String price, int onHand) {
        TreeMap<PartNumber, Integer> parts = new TreeMap<>();
        String[] words = contents.split(" ", -1);
        for (int i = 0; i < words.length; i += 2) {
            parts.put(no(words[i]), Integer.valueOf(words[i + 1]));
        }
        boxes.add(new Box(no(number), kind, parts));
        offer(number, price, onHand);
    }

    /** What became of a number. */
    public void withdraw(String number, Withdrawal.State state) {
        withdrawals.put(no(number), new Withdrawal(no(number), state, Optional.empty(), "test"));
    }

    /** Another number took its place. */
    public void replace(String number, String by) {
        withdrawals.put(no(number), new Withdrawal(no(number), Withdrawal.State.REPLACED, Optional.of(no(by)), "test"));
    }

    public static Money money(String amount) {
        return new Money(new BigDecimal(amount), EUR);
    }

    /** The shelf as it stands. */
    public Shelf shelf() {
        Parts parts = new Parts(
                List.of(new PistonDesign(
                        "DESIGN-1",
                        "Testwright",
                        new Expansion(19.4e-6, 1e-6),
                        mm("12"),
                        PistonDesign.Coating.NONE,
                        wearLimit)),
                pistons,
                rings,
                pins,
                clips,
                bearings,
                gaskets,
                headGaskets,
                baseGaskets);
        return new Shelf(
                new Revision("test-fit", "test-offers"),
                engine(),
                sizes,
                parts,
                fasteners(),
                operations(),
                boxes,
                withdrawals);
    }

    private Engine engine() {
        return new Engine(
                new EngineName("TWIN-1", "Twin", "Testwright"),
                new Build(strokes, Layout.PARALLEL_TWIN, construction, surface, torquePlate, LengthUnit.MILLIMETRE),
                List.of(new Cylinder("1", hands.get(0), pitch), new Cylinder("2", hands.get(1), Optional.empty())),
                new BoreSpec(
                        mm("70"),
                        new Limits(mm("70.000"), mm("70.020")),
                        new Expansion(11.4e-6, 1e-6),
                        BoreSpec.LabelNames.BORE,
                        mm("0.05"),
                        honeCleanUp,
                        mm("0.02"),
                        largestOversize),
                wall,
                new DeckShape(
                        new Limits(mm("199.4"), mm("199.5")),
                        mm("80"),
                        mm("125"),
                        pistonToHead,
                        new HeadShape(42, true, Optional.of(mm("72")), mm("76"), 9_500_000)),
                rodEnd,
                new ServiceLimits(
                        mm("0.1"), shapeAllowed, shapeAllowed, choke, honedShape, mm("0.05"), mm("0.3"), 2_000));
    }

    /** Bolts whose pull the proof loads of ISO 898-1 say nothing of. */
    public void headBoltsOfInchThread() {
        boltThread = Optional.empty();
    }

    private List<Fastener> fasteners() {
        return List.of(new Fastener(
                "cylinder head bolts",
                6,
                new BoltShape(boltThread, Optional.of(PropertyClass.CLASS_8_8), ThreadCondition.OILED, true),
                Optional.of(new Bolt(no("BOLT-1"))),
                List.of(new TorqueStage.ToTorque(new Torque(20_000))),
                "crosswise from the middle",
                List.of("strip")));
    }

    private static List<ShopOperation> operations() {
        return List.of(
                operation("strip", ShopOperation.When.ALWAYS, ShopOperation.Per.ENGINE, "50"),
                operation("plate", ShopOperation.When.PLATE, ShopOperation.Per.ENGINE, "25"),
                operation("bore", ShopOperation.When.BORE, ShopOperation.Per.HOLE, "35"),
                operation("hone", ShopOperation.When.HONE, ShopOperation.Per.HOLE, "15"),
                operation("skim", ShopOperation.When.SKIM, ShopOperation.Per.ENGINE, "40"),
                operation("ports", ShopOperation.When.PORTS, ShopOperation.Per.HOLE, "10"));
    }

    private static ShopOperation operation(String code, ShopOperation.When when, ShopOperation.Per per, String price) {
        return new ShopOperation(code, code, when, per, money(price), 1);
    }

    /** The answer for worn holes of a present size, each with one largest diameter; {@code -} for a hole not measured. */
    public Match worn(String present, String... diameters) {
        return ask(request(Condition.WORN, present, surveys(diameters)));
    }

    /** The answer for finished holes. */
    public Match finished(String... diameters) {
        return ask(request(Condition.FINISHED, "", surveys(diameters)));
    }

    /** The answer to any request. */
    public Match ask(MatchRequest request) {
        Shelf shelf = shelf();
        return Match.of(FitTable.of(shelf), new KitFinder(shelf, new Offers(offers)), request);
    }

    /** The size of a label; empty where it is made in none. */
    public Optional<Size> size(String label) {
        return sizes.stream().filter(size -> size.label().equals(label)).findFirst();
    }

    /** A request at a stated 20 °C with the usual gauge. */
    public MatchRequest request(Condition condition, String present, List<CylinderSurvey> surveys) {
        PresentSize known = size(present)
                .map(size -> new PresentSize(Optional.of(size), PresentSize.KnownFrom.RECORD))
                .orElse(PresentSize.NOT_KNOWN);
        return new MatchRequest(
                condition,
                known,
                surveys,
                Gauge.Kind.BORE_GAUGE.usual(),
                Climate.at(Temperature.REFERENCE),
                skimmed("0"),
                Optional.empty(),
                DAY);
    }

    /** A deck that is proven flat, was never skimmed, and is to be skimmed by so much. */
    public static Deck skimmed(String skim) {
        return new Deck(
                Optional.of(new DeckFlatness(mm("0.02"), Optional.empty())), mm(skim), Optional.of(Length.ZERO));
    }

    /** Surveys of holes 1 and 2 by one diameter each. */
    public static List<CylinderSurvey> surveys(String... diameters) {
        return IntStream.range(0, diameters.length)
                .mapToObj(i -> survey(String.valueOf(i + 1), diameters[i]))
                .toList();
    }

    /** One hole by one diameter, with findings. */
    public static CylinderSurvey survey(String cylinder, String diameter, Finding... findings) {
        CylinderSurvey empty = CylinderSurvey.unsurveyed(cylinder);
        return diameter.equals("-")
                ? new CylinderSurvey(cylinder, empty.asRead(), Wall.UNKNOWN, List.of(findings))
                : new CylinderSurvey(cylinder, new SingleDiameter(mm(diameter)), Wall.UNKNOWN, List.of(findings));
    }

    /** The label of the size an answer names; {@code -} when it names none. */
    public static String named(Match match) {
        return match.ruling().row().map(row -> row.size().label()).orElse("-");
    }

    /** The certainty of every size in an answer's table, as {@code standard:no +0.25:possible …}. */
    public static String table(Match match) {
        return match.table().stream()
                .map(row -> row.size().label() + ":" + row.certainty().label())
                .reduce((a, b) -> a + " " + b)
                .orElse("");
    }
}
