package piecewright.learn;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.belief.Values;
import piecewright.grain.GrainLot;
import piecewright.history.Account;
import piecewright.history.EventLog;
import piecewright.history.Followed;
import piecewright.house.House;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.plan.Households;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.quantity.Moisture;

/** A pale batch of 5 kg in a made-up house, recorded as a person would, with a truth that can be chosen. */
final class MadeUpBatch {
    static final Instant ORIGIN = Instant.parse("2031-02-01T00:00:00Z");
    static final Instant END = ORIGIN.plusSeconds(14 * 86_400);
    static final GrainLot LOT = Households.barley();
    static final House HOUSE = Households.garage(11, 16);
    static final PlanRequest REQUEST = new PlanRequest(
            Households.pale(),
            LOT,
            HOUSE,
            new PlanRequest.Amount.RawGrain(5),
            new PlanRequest.When.StartOn(LocalDate.of(2031, 2, 1)));
    static final Setup SETUP = new SetupMaker(ModelParameters.defaults())
            .of(REQUEST, new Rooms(HOUSE, ORIGIN, END), 5, new ArrayList<>())
            .orElseThrow();

    private final List<Entry> entries = new ArrayList<>();

    /** What is believed before this lot and kit were used. */
    static Belief prior() {
        Belief belief =
                Priors.lot(LOT).and(Priors.floor(SETUP.outfit().growing().place()));
        belief = belief.and(Priors.heater(SETUP.outfit().drying().dryer()));
        return SETUP.outfit().drying().sameHeater()
                ? belief
                : belief.and(Priors.heater(SETUP.outfit().drying().curer()));
    }

    MadeUpBatch at(double hours, Report report) {
        Instant at = ORIGIN.plusSeconds(Math.round(hours * 3600));
        entries.add(new Entry(entries.size() + 1, at, at, Optional.empty(), report));
        return this;
    }

    MadeUpBatch did(double hours, ActKind act) {
        return at(hours, Report.Did.of(act));
    }

    MadeUpBatch weighed(double hours, double kg) {
        return at(hours, Report.Weighed.net(kg));
    }

    Journal journal() {
        return new Journal(entries);
    }

    Rerun rerun() {
        RerunBuilder.Horizon horizon = new RerunBuilder.Horizon(ORIGIN, END);
        Account account = EventLog.account(
                new Followed(REQUEST.style(), SETUP.dryMatterKg(), List.of()), journal(), List.of(), END);
        return RerunBuilder.of(SETUP, LOT.name(), HOUSE.kit().scale(), account, horizon)
                .orElseThrow();
    }

    /** From the first soak at 18:00 to rootlets off, weighed at drains and through the kiln; figures are placeholders. */
    static MadeUpBatch whole() {
        MadeUpBatch batch = new MadeUpBatch().did(18, ActKind.SOAK);
        batch.weighed(26, 7).did(26, ActKind.DRAIN).did(38, ActKind.SOAK);
        batch.weighed(46, 8).did(46, ActKind.DRAIN).did(58, ActKind.SOAK);
        batch.weighed(62, 8.2).did(62, ActKind.DRAIN).did(70, ActKind.FLOOR);
        for (int day = 0; day < 5; day++) batch.did(82 + 24 * day, ActKind.TURN).did(92 + 24 * day, ActKind.TURN);
        AcrospireCount count = new AcrospireCount(List.of(0, 10, 40, 10, 0, 0));
        batch.at(100, new Report.AcrospiresCounted(count)).at(100, new Report.TemperatureRead(15, Spot.CORE));
        batch.at(148, new Report.AcrospiresCounted(count)).weighed(148, 8);
        batch.at(160, new Report.SampleDried(new Moisture(0.43)));
        batch.weighed(190, 7.9).did(190, ActKind.LOAD).at(192, new Report.TemperatureRead(50, Spot.AIR_ON));
        batch.weighed(196, 7)
                .weighed(200, 6.5)
                .did(206, ActKind.RAISE)
                .weighed(206, 6)
                .did(212, ActKind.RAISE);
        batch.weighed(214, 5).did(216, ActKind.CURE).at(218, new Report.TemperatureRead(80, Spot.AIR_ON));
        batch.did(220, ActKind.OFF).weighed(220, 4.4).did(221, ActKind.DEROOT);
        return batch.at(230, new Report.ColourMeasured(3.2)).weighed(222, 4.2);
    }

    /** The same batch with what would be read if the unknowns had these values, errors drawn. */
    static Rerun read(Rerun batch, Values truth, Random random) {
        double[] figures = batch.at(truth).figures();
        List<Observation> read = new ArrayList<>();
        for (int i = 0; i < figures.length; i++) {
            Observation was = batch.observations().get(i);
            double compared = was.figure().compared(figures[i]) + was.sd() * random.nextGaussian();
            double value = Math.max(0.001, was.figure().figure(compared));
            read.add(new Observation(was.key(), was.at(), was.figure(), value, was.sd()));
        }
        return new Rerun(batch.origin(), batch.raw(), batch.stretches(), read);
    }

    /** Values drawn from a belief of unknowns that are independent of each other. */
    static Values drawn(Belief belief, Random random) {
        double[] positions = belief.positions();
        for (int i = 0; i < positions.length; i++) {
            positions[i] += belief.axisSd(belief.unknowns().get(i)) * random.nextGaussian();
        }
        return belief.valuesAt(positions);
    }
}
