package piecewright.process.germination;

import piecewright.grain.GrainKind;
import piecewright.process.GrainMass;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;

/** What hands do to a piece, as pure functions of its state. */
public final class FloorActs {
    /** Judgement: a turning takes half the bed's warmth over the air. */
    public static final double WARMTH_LEFT_RATIO = 0.5;
    /** Judgement: rootlets per day as if at 15 °C, share of the dry matter steeped; 3 % after five days. */
    public static final double ROOTLETS_PER_DAY = 0.006;
    /** Judgement: most that rootlets come to. */
    public static final double ROOTLETS_CAP_FRACTION = 0.05;
    /** Judgement: wheat roots less. */
    public static final double WHEAT_ROOTLETS_RATIO = 0.7;

    private FloorActs() {}

    /** After turning: halfway to the air's temperature. */
    public static PieceState turned(PieceState state, double airC) {
        return state.withGrainC(airC + WARMTH_LEFT_RATIO * (state.grainC() - airC));
    }

    /** After sprinkling, kg of water that stayed on the grain, 0 or more. */
    public static PieceState sprinkled(PieceState state, double waterKg) {
        GrainMass mass = state.mass();
        Ledgers.Water water = state.ledgers().water();
        return state.withMass(new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg(), mass.waterKg() + waterKg))
                .withLedgers(state.ledgers()
                        .withWater(new Ledgers.Water(
                                water.absorbedKg(),
                                water.sprinkledKg() + waterKg,
                                water.formedKg(),
                                water.evaporatedKg(),
                                water.removedKg())));
    }

    /** Water to sprinkle to reach a dry-basis moisture, kg; 0 when the piece is there already. */
    public static double sprinklingKg(GrainMass mass, double dryBasisRatio) {
        return Math.max(0, mass.dryMatterKg() * dryBasisRatio - mass.waterKg());
    }

    /**
     * Dry matter in the rootlets, share of the dry matter steeped.
     *
     * @param germinatingFraction share of corns that have any, [0, 1]
     */
    public static double rootletsFraction(double rootletDays, GrainKind kind, double germinatingFraction) {
        double kindRatio = kind == GrainKind.WHEAT ? WHEAT_ROOTLETS_RATIO : 1;
        return germinatingFraction * kindRatio * Math.min(ROOTLETS_CAP_FRACTION, ROOTLETS_PER_DAY * rootletDays);
    }

    /** After rubbing off the rootlets, which take their share of the water. A second time would take them twice. */
    public static PieceState derooted(PieceState state, GrainKind kind, double germinatingFraction) {
        GrainMass mass = state.mass();
        double rootletsKg =
                mass.initialDryMatterKg() * rootletsFraction(state.growth().rootletDays(), kind, germinatingFraction);
        Ledgers.DryMatter dry = state.ledgers().dryMatter();
        return removed(
                state,
                rootletsKg,
                new Ledgers.DryMatter(
                        dry.leachedKg(),
                        dry.respiredKg(),
                        dry.rootletsKg() + rootletsKg,
                        dry.handlingKg(),
                        dry.roastedKg()));
    }

    /** After spilling, sampling or sieving; lossFraction of what is there, [0, 1). */
    public static PieceState handled(PieceState state, double lossFraction) {
        if (!(lossFraction >= 0 && lossFraction < 1)) {
            throw new IllegalArgumentException("lossFraction must be in [0, 1): " + lossFraction);
        }
        double lostKg = lossFraction * state.mass().dryMatterKg();
        Ledgers.DryMatter dry = state.ledgers().dryMatter();
        return removed(
                state,
                lostKg,
                new Ledgers.DryMatter(
                        dry.leachedKg(),
                        dry.respiredKg(),
                        dry.rootletsKg(),
                        dry.handlingKg() + lostKg,
                        dry.roastedKg()));
    }

    private static PieceState removed(PieceState state, double dryKg, Ledgers.DryMatter booked) {
        GrainMass mass = state.mass();
        double waterKg = dryKg * mass.dryBasisRatio();
        Ledgers.Water water = state.ledgers().water();
        Ledgers.Water waterBooked = new Ledgers.Water(
                water.absorbedKg(),
                water.sprinkledKg(),
                water.formedKg(),
                water.evaporatedKg(),
                water.removedKg() + waterKg);
        return state.withMass(
                        new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg() - dryKg, mass.waterKg() - waterKg))
                .withLedgers(new Ledgers(waterBooked, booked, state.ledgers().gas()));
    }
}
