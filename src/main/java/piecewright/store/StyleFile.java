package piecewright.store;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.grain.GrainKind;
import piecewright.quantity.EbcRange;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;
import piecewright.style.ColourLever;
import piecewright.style.Couches;
import piecewright.style.GrowthSchedule;
import piecewright.style.HotCouchSchedule;
import piecewright.style.KilnSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.SoakLengths;
import piecewright.style.SteepSchedule;
import piecewright.style.WetCouchSchedule;

/** Reads a style of malt from its JSON file, format 1. Each block of numbers says where they come from. */
public final class StyleFile {
    private static final int LONGEST_SOURCE = 2000;

    private StyleFile() {}

    /** The style in this file, at most 1 MB. */
    public static MaltStyle read(Path file) throws StoreException {
        return parse(file, TextFile.read(file, TextFile.SMALL_BYTES));
    }

    /** The style in this text; the file is only named in refusals. */
    public static MaltStyle parse(Path file, String text) throws StoreException {
        JsonBlock root = JsonBlock.root(
                file,
                text,
                "style",
                "title",
                "grains",
                "steep",
                "growth",
                "kiln",
                "finish",
                "wetCouch",
                "hotCouch",
                "stew",
                "roast");
        String key = root.text("style");
        if (!key.matches("[a-z0-9]([a-z0-9-]{0,38}[a-z0-9])?")) {
            throw root.refused("style", "must be lower-case letters, digits and hyphens, like \"pale-ale\"");
        }
        String title = root.text("title");
        List<GrainKind> grains = new ArrayList<>();
        for (String word : root.texts("grains")) grains.add(LotFile.grain(root, "grains", word));
        SteepSchedule steep = steep(root.block("steep"));
        GrowthSchedule growth = growth(root.block("growth"));
        KilnSchedule kiln = kiln(root.block("kiln"));
        MaltStyle.FinishSchedule finish = finish(root.block("finish"));
        Couches couches = couches(root);
        OvenSchedule oven = OvenReader.oven(root);
        return root.make(() -> new MaltStyle(key, title, grains, steep, growth, kiln, finish, couches, oven));
    }

    private static SteepSchedule steep(JsonBlock block) throws StoreException {
        block.onlyKeys(
                "source",
                "targetMoistureWetBasisFraction",
                "acceptableMoistureWetBasisFraction",
                "fewestImmersions",
                "mostImmersions",
                "firstSoakHours",
                "laterSoakHours");
        sourced(block);
        double targetFraction = block.number("targetMoistureWetBasisFraction", 0.3, 0.5);
        double[] acceptable = block.pair("acceptableMoistureWetBasisFraction", 0.3, 0.5);
        int fewest = block.whole("fewestImmersions", 1, 6);
        int most = block.whole("mostImmersions", 1, 6);
        SoakLengths soaks = soaks(block);
        return block.make(() -> new SteepSchedule(targetFraction, fractions(acceptable), fewest, most, soaks));
    }

    private static SoakLengths soaks(JsonBlock block) throws StoreException {
        HoursRange first = soak(block, "firstSoakHours", SoakLengths.usual().first());
        HoursRange later = soak(block, "laterSoakHours", SoakLengths.usual().later());
        return block.make(() -> new SoakLengths(first, later));
    }

    private static HoursRange soak(JsonBlock block, String key, HoursRange usual) throws StoreException {
        return block.has(key) ? hours(block.pair(key, 0.25, 24)) : usual;
    }

    private static GrowthSchedule growth(JsonBlock block) throws StoreException {
        block.onlyKeys(
                "source",
                "acrospireFraction",
                "acceptableAcrospireFraction",
                "keepMoistureWetBasisFraction",
                "warmestGrainC",
                "deepestBedCm",
                "witherHours");
        sourced(block);
        double acrospireFraction = block.number("acrospireFraction", 0, 1.2);
        double[] acceptable = block.pair("acceptableAcrospireFraction", 0, 1.2);
        double keepFraction = block.number("keepMoistureWetBasisFraction", 0.3, 0.5);
        double warmestGrainC = block.number("warmestGrainC", 8, 30);
        double deepestBedCm = block.number("deepestBedCm", 1, 40);
        double[] wither = block.pair("witherHours", 0, 96);
        return block.make(() -> new GrowthSchedule(
                acrospireFraction, fractions(acceptable), keepFraction, warmestGrainC, deepestBedCm, hours(wither)));
    }

    private static KilnSchedule kiln(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "ladder", "cureC", "cureHours", "endMoistureWetBasisFraction", "colourBase");
        sourced(block);
        List<KilnSchedule.Rung> ladder = new ArrayList<>();
        for (JsonBlock rung : block.blocks("ladder")) ladder.add(rung(rung));
        if (ladder.isEmpty()) throw block.refused("ladder", "must have at least one rung; add it");
        double[] cureC = block.pair("cureC", 40, 120);
        double[] cureHours = block.pair("cureHours", 0, 48);
        double endFraction = block.number("endMoistureWetBasisFraction", 0.01, 0.12);
        KilnSchedule.ColourBase base = colourBase(block.block("colourBase"));
        return block.make(() -> new KilnSchedule(
                ladder, new TemperatureRange(cureC[0], cureC[1]), hours(cureHours), endFraction, base));
    }

    private static KilnSchedule.Rung rung(JsonBlock block) throws StoreException {
        block.onlyKeys("belowMoistureWetBasisFraction", "airOnC");
        double belowFraction = block.number("belowMoistureWetBasisFraction", 0.01, 1);
        double airOnC = block.number("airOnC", 20, 120);
        return block.make(() -> new KilnSchedule.Rung(belowFraction, airOnC));
    }

    private static KilnSchedule.ColourBase colourBase(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "startEbc", "substrateRatio");
        sourced(block);
        double startEbc = block.number("startEbc", 0.5, 20);
        double substrateRatio = block.number("substrateRatio", 0.1, 20);
        return block.make(() -> new KilnSchedule.ColourBase(startEbc, substrateRatio));
    }

    private static MaltStyle.FinishSchedule finish(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "restDays", "preferredRestDays", "colourEbc", "colourBy");
        sourced(block);
        double restDays = block.number("restDays", 0, 365);
        double preferredRestDays = block.number("preferredRestDays", 0, 365);
        double[] colourEbc = block.pair("colourEbc", 0, 2000);
        ColourLever lever = OvenReader.lever(block);
        return block.make(() -> new MaltStyle.FinishSchedule(
                restDays, preferredRestDays, new EbcRange(colourEbc[0], colourEbc[1]), lever));
    }

    private static Couches couches(JsonBlock root) throws StoreException {
        Couches couches = Couches.none();
        Optional<JsonBlock> wet = root.optionalBlock("wetCouch");
        if (wet.isPresent()) couches = couches.withWet(wetCouch(wet.get()));
        Optional<JsonBlock> hot = root.optionalBlock("hotCouch");
        return hot.isPresent() ? couches.withHot(hotCouch(hot.get())) : couches;
    }

    private static WetCouchSchedule wetCouch(JsonBlock block) throws StoreException {
        block.onlyKeys("source", "depthCm", "warmestCoreC", "hours");
        sourced(block);
        double depthCm = block.number("depthCm", 10, 60);
        double warmestCoreC = block.number("warmestCoreC", 12, 28);
        double[] hours = block.pair("hours", 2, 72);
        return block.make(() -> new WetCouchSchedule(depthCm, warmestCoreC, hours(hours)));
    }

    private static HotCouchSchedule hotCouch(JsonBlock block) throws StoreException {
        block.onlyKeys(
                "source",
                "packingMoistureWetBasisFraction",
                "acceptablePackingMoistureWetBasisFraction",
                "indexHours",
                "acceptableIndexHours",
                "longestHours",
                "checkHours",
                "spreadAboveC");
        sourced(block);
        double packingFraction = block.number("packingMoistureWetBasisFraction", 0.2, 0.5);
        double[] packing = block.pair("acceptablePackingMoistureWetBasisFraction", 0.2, 0.5);
        double indexHours = block.number("indexHours", 0, 60);
        double[] acceptable = block.pair("acceptableIndexHours", 0, 60);
        double longestHours = block.number("longestHours", 1, 96);
        double[] checks = block.pair("checkHours", 1, 24);
        double spreadAboveC = block.number("spreadAboveC", 30, 60);
        return block.make(() -> new HotCouchSchedule(
                packingFraction,
                fractions(packing),
                indexHours,
                hours(acceptable),
                longestHours,
                hours(checks),
                spreadAboveC));
    }

    static void sourced(JsonBlock block) throws StoreException {
        String source = block.text("source", LONGEST_SOURCE).toLowerCase(Locale.ROOT);
        boolean named = source.matches(".*\\b(published|judgement): \\S{2}.*");
        if (!named && !source.contains("common practice, no source")) {
            throw block.refused(
                    "source",
                    "must say \"published: author, title …\", \"judgement: why\" or \"common practice, no source\"");
        }
    }

    private static FractionRange fractions(double[] pair) {
        return new FractionRange(pair[0], pair[1]);
    }

    private static HoursRange hours(double[] pair) {
        return new HoursRange(pair[0], pair[1]);
    }
}
