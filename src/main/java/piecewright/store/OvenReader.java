package piecewright.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import piecewright.style.ColourLever;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;
import piecewright.style.StewSchedule;

/** Reads what a style does in the oven: its blocks "stew" and "roast", both optional. */
final class OvenReader {
    private OvenReader() {}

    static OvenSchedule oven(JsonBlock root) throws StoreException {
        Optional<JsonBlock> stewed = root.optionalBlock("stew");
        Optional<JsonBlock> roasted = root.optionalBlock("roast");
        Optional<StewSchedule> stew = stewed.isPresent() ? Optional.of(stew(stewed.get())) : Optional.empty();
        Optional<RoastSchedule> roast = roasted.isPresent() ? Optional.of(roast(roasted.get())) : Optional.empty();
        return root.make(() -> new OvenSchedule(stew, roast));
    }

    /** What makes the colour; the cure where nothing is said. */
    static ColourLever lever(JsonBlock finish) throws StoreException {
        if (!finish.has("colourBy")) return ColourLever.CURE_HOURS;
        String word = finish.text("colourBy");
        List<String> known =
                Arrays.stream(ColourLever.values()).map(ColourLever::key).toList();
        for (ColourLever lever : ColourLever.values()) if (lever.key().equals(word)) return lever;
        throw finish.refused("colourBy", "is not known; " + Nearest.hint(word, known));
    }

    private static StewSchedule stew(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "ovenC", "minutes", "deepestCm");
        StyleFile.sourced(block);
        double ovenC = block.number("ovenC", 60, 80);
        double[] minutes = block.pair("minutes", 30, 480);
        double deepestCm = block.number("deepestCm", 1, 10);
        return block.make(() -> new StewSchedule(ovenC, minutes[0], minutes[1], deepestCm));
    }

    private static RoastSchedule roast(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "depthCm", "steps", "endMoistureWetBasisFraction");
        StyleFile.sourced(block);
        double depthCm = block.number("depthCm", 0.5, 5);
        List<HeatStep> steps = new ArrayList<>();
        for (JsonBlock step : block.blocks("steps")) steps.add(step(step));
        double endFraction = block.number("endMoistureWetBasisFraction", 0.01, 0.12);
        return block.make(() -> new RoastSchedule(depthCm, steps, endFraction));
    }

    private static HeatStep step(JsonBlock block) throws StoreException {
        block.onlyKeys("ovenC", "minutes");
        double ovenC = block.number("ovenC", 60, 260);
        double[] minutes = block.pair("minutes", 1, 300);
        return block.make(() -> new HeatStep(ovenC, minutes[0], minutes[1]));
    }
}
