package piecewright.plan.search;

import piecewright.plan.Setup;

/** The tables that all searches for one piece share. Scratch space, filled as it is used, by one thread. */
public final class QuickForms {
    private final Setup setup;
    private final Stops stops;
    private final SteepRates steep;
    private final BedRates floor;
    private final BedRates wither;
    private final KilnTables kiln;

    private QuickForms(Setup setup) {
        this.setup = setup;
        this.stops = Stops.of(setup);
        this.steep = new SteepRates(
                setup.models().steep(), setup.models().metabolism(), setup.air().steep());
        this.floor = FloorLegs.floorBed(setup);
        this.wither = FloorLegs.witherBed(setup);
        this.kiln = new KilnTables(setup, stops);
    }

    public static QuickForms of(Setup setup) {
        return new QuickForms(setup);
    }

    Setup setup() {
        return setup;
    }

    Stops stops() {
        return stops;
    }

    SteepRates steep() {
        return steep;
    }

    /** The bed on the floor. */
    BedRates floor() {
        return floor;
    }

    /** The bed where it withers. */
    BedRates wither() {
        return wither;
    }

    KilnTables kiln() {
        return kiln;
    }
}
