package piecewright.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.house.AirTemperature;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.reading.Scene;
import piecewright.replan.Batch;
import piecewright.replan.Where;
import piecewright.text.DisplayUnits;

/** What a reader of lines is told of a batch. */
final class BatchScene {
    private BatchScene() {}

    static Scene of(Batch batch, Optional<Where> where, DisplayUnits units, Instant now) {
        Optional<Act> next = where.flatMap(known -> known.next().act());
        return new Scene(
                now,
                batch.request().house().zone(),
                units,
                batch.journal(),
                batch.planned(),
                next.map(act -> act.kind() == ActKind.SPRINKLE ? ActKind.TURN : act.kind()),
                expectedKg(where),
                limits(batch));
    }

    /** What it should weigh at the next step, or now where it lies wet and forgotten. */
    private static OptionalDouble expectedKg(Optional<Where> where) {
        if (where.isEmpty()) return OptionalDouble.empty();
        if (where.get().help().wetMalt().isPresent())
            return OptionalDouble.of(where.get().state().mass().totalKg());
        return where.get()
                .next()
                .act()
                .map(act -> OptionalDouble.of(act.expect().massKg()))
                .orElse(OptionalDouble.empty());
    }

    private static Scene.Limits limits(Batch batch) {
        House house = batch.request().house();
        Comparator<Heater> blows =
                Comparator.comparingDouble(heater -> heater.air().airFlowM3PerHour());
        OptionalDouble kilnC = house.kit().heaters().stream()
                .max(blows)
                .map(kiln -> OptionalDouble.of(kiln.air().range().highC()))
                .orElse(OptionalDouble.empty());
        OptionalDouble ovenC = house.kit().heaters().stream()
                .mapToDouble(heater -> heater.air().range().highC())
                .max();
        List<String> names = new ArrayList<>();
        double coldestC = house.steepWaterC();
        for (Place place : house.places()) {
            names.add(place.name());
            coldestC = Math.min(coldestC, coldestC(place.air()));
        }
        return new Scene.Limits(batch.dryKg(), batch.grainKg(), kilnC, ovenC, coldestC, names);
    }

    private static double coldestC(AirTemperature air) {
        if (air instanceof AirTemperature.Constant constant) return constant.airC();
        if (air instanceof AirTemperature.Daily daily) return daily.lowC();
        if (air instanceof AirTemperature.Dated dated) {
            return dated.days().values().stream()
                    .mapToDouble(AirTemperature.Daily::lowC)
                    .min()
                    .orElseThrow();
        }
        AirTemperature.Logged logged = (AirTemperature.Logged) air;
        return logged.readings().stream()
                .mapToDouble(AirTemperature.Reading::airC)
                .min()
                .orElseThrow();
    }
}
