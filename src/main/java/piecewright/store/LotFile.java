package piecewright.store;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import piecewright.grain.GerminationCount;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotMoisture;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.process.steep.TestSteep;
import piecewright.quantity.Moisture;
import piecewright.text.Quoted;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads a lot of grain from its JSON file, format 1. */
public final class LotFile {
    /** Judgement: a moisture meter or oven on raw grain, points of moisture; prior of the reference. */
    private static final double MEASURED_SD_PERCENT = 0.3;

    /** Judgement: a guessed moisture of raw grain, points of moisture; prior of the reference. */
    private static final double GUESSED_SD_PERCENT = 1.0;

    private static final Map<String, Treatment> TREATMENTS =
            Map.of("no", Treatment.UNTREATED, "yes", Treatment.TREATED, "unknown", Treatment.UNKNOWN);

    private LotFile() {}

    /** The lot in this file, at most 1 MB. */
    public static GrainLot read(Path file) throws StoreException {
        return parse(file, TextFile.read(file, TextFile.SMALL_BYTES));
    }

    /** Writes a new last count of one dish, counted from 0, into the file; everything else in it stays. */
    public static void recount(Path file, int dish, int germinated) throws StoreException {
        String text = TextFile.read(file, TextFile.SMALL_BYTES);
        ObjectNode root = JsonText.parse(file, text);
        if (!(root.get("dishes") instanceof ArrayNode dishes && dishes.get(dish) instanceof ObjectNode counts)) {
            throw new StoreException(file, "has no dish " + (dish + 1) + " any more; read it again");
        }
        counts.put(counts.has("by72Hours") || !counts.has("by48Hours") ? "by72Hours" : "by48Hours", germinated);
        String changed = JsonText.write(root);
        parse(file, changed);
        AtomicFile.write(file, changed);
    }

    /** The lot in this text with what was seen of it; the file is only named in refusals. */
    public static GrainLot parse(Path file, String text) throws StoreException {
        JsonBlock root = JsonBlock.root(
                file,
                text,
                "name",
                "grain",
                "moisture",
                "dishes",
                "thousandCornG",
                "floatersPercent",
                "treated",
                "harvested",
                "learned",
                "testSteep",
                "alive",
                "brokenPercent",
                "ergotGPerKg",
                "signs");
        String name = root.text("name");
        GrainKind kind = grain(root, "grain", root.text("grain"));
        LotMoisture moisture = moisture(root.block("moisture"));
        List<GerminationCount> dishes = new ArrayList<>();
        for (JsonBlock dish : root.blocks("dishes")) dishes.add(dish(dish));
        GrainLot.LotSize size = size(root);
        Treatment treatment = treatment(root);
        Optional<JsonBlock> learned = root.optionalBlock("learned");
        LotTraits traits = learned.isPresent() ? traits(learned.get()) : LotTraits.unknown();
        GrainLot lot = root.make(() -> new GrainLot(name, kind, moisture, dishes, size, treatment, traits));
        return sharpened(lot, root).withSeen(ObservationsReader.read(root));
    }

    static GrainKind grain(JsonBlock block, String key, String word) throws StoreException {
        for (GrainKind kind : GrainKind.values()) if (kind.key().equals(word)) return kind;
        List<String> words =
                Arrays.stream(GrainKind.values()).map(GrainKind::key).toList();
        throw block.refused(key, "\"" + Quoted.shortly(word) + "\" is not a grain; " + Nearest.hint(word, words));
    }

    /** The lot with the steep rate its test steep tells, unless whole batches taught it already. */
    private static GrainLot sharpened(GrainLot lot, JsonBlock root) throws StoreException {
        Optional<JsonBlock> block = root.optionalBlock("testSteep");
        if (block.isEmpty()) return lot;
        JsonBlock test = block.get().onlyKeys("startG", "drainedG", "hours", "waterC");
        double startG = test.number("startG", 20, 5000);
        double drainedG = test.number("drainedG", 20, 10_000);
        double hours = test.number("hours", 1, 24);
        double waterC = test.number("waterC", 3, 25);
        TestSteep steep = test.make(() -> new TestSteep(startG, drainedG, hours, waterC));
        if (lot.learned().steepRateRatio().isPresent()) return lot;
        SteepModel model = SteepModel.of(lot, SteepParameters.defaults());
        double rateRatio = steep.rateRatio(lot.moisture().moisture(), model);
        if (!(rateRatio >= 0.4 && rateRatio <= 3)) {
            throw root.refused(
                    "testSteep",
                    "gives a lot that drinks " + Math.round(100 * rateRatio) / 100.0
                            + " times as fast as usual, which is past belief; weigh again, the wet net taken off");
        }
        return lot.withLearned(lot.learned().withSteepRateRatio(rateRatio));
    }

    private static LotMoisture moisture(JsonBlock block) throws StoreException {
        block.onlyKeys("wetBasisPercent", "guessedWetBasisPercent", "sdPercent");
        boolean measured = block.has("wetBasisPercent");
        if (measured == block.has("guessedWetBasisPercent")) {
            throw block.refused("wetBasisPercent", "or \"guessedWetBasisPercent\" must be given, one of the two");
        }
        double percent = block.number(measured ? "wetBasisPercent" : "guessedWetBasisPercent", 4, 25);
        double sdPercent =
                block.optionalNumber("sdPercent", 0, 10).orElse(measured ? MEASURED_SD_PERCENT : GUESSED_SD_PERCENT);
        return block.make(() -> new LotMoisture(Moisture.ofWetBasisPercent(percent), sdPercent / 100, measured));
    }

    private static GerminationCount dish(JsonBlock block) throws StoreException {
        block.onlyKeys("waterMl", "corns", "by24Hours", "by48Hours", "by72Hours");
        double waterMl = block.number("waterMl", 0.5, 50);
        int corns = block.whole("corns", 1, 10_000);
        OptionalInt by24Hours = count(block, "by24Hours");
        OptionalInt by48Hours = count(block, "by48Hours");
        OptionalInt by72Hours = count(block, "by72Hours");
        return block.make(() -> new GerminationCount(waterMl, corns, by24Hours, by48Hours, by72Hours));
    }

    private static OptionalInt count(JsonBlock block, String key) throws StoreException {
        return block.has(key) ? OptionalInt.of(block.whole(key, 0, 10_000)) : OptionalInt.empty();
    }

    private static GrainLot.LotSize size(JsonBlock root) throws StoreException {
        OptionalDouble thousandCornG = root.optionalNumber("thousandCornG", 6, 99);
        OptionalDouble floaters = root.optionalNumber("floatersPercent", 0, 50);
        OptionalDouble floatersFraction =
                floaters.isPresent() ? OptionalDouble.of(floaters.getAsDouble() / 100) : OptionalDouble.empty();
        Optional<LocalDate> harvested =
                root.has("harvested") ? Optional.of(LocalTimes.date(root, "harvested")) : Optional.empty();
        return root.make(() -> new GrainLot.LotSize(thousandCornG, floatersFraction, harvested));
    }

    private static Treatment treatment(JsonBlock root) throws StoreException {
        String word = root.text("treated");
        Treatment treatment = TREATMENTS.get(word);
        if (treatment == null) {
            throw root.refused(
                    "treated", "must be \"no\", \"yes\" or \"unknown\", not \"" + Quoted.shortly(word) + "\"");
        }
        return treatment;
    }

    private static LotTraits traits(JsonBlock block) throws StoreException {
        block.onlyKeys("steepRateRatio", "saturationRatio", "burstRatio", "growthRateRatio");
        OptionalDouble steepRate = block.optionalNumber("steepRateRatio", 0.4, 3);
        OptionalDouble saturation = block.optionalNumber("saturationRatio", 0.8, 1.4);
        OptionalDouble burst = block.optionalNumber("burstRatio", 0.05, 0.2);
        OptionalDouble growthRate = block.optionalNumber("growthRateRatio", 0.4, 2.5);
        return block.make(() -> new LotTraits(steepRate, saturation, burst, growthRate));
    }
}
