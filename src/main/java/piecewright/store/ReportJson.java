package piecewright.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.ChittedCounted;
import piecewright.journal.Report.ColourMeasured;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.Remarked;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.VentsSet;
import piecewright.journal.Report.VesselWeighed;
import piecewright.journal.Report.Weighed;
import piecewright.journal.Sign;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;
import piecewright.quantity.Moisture;
import tools.jackson.databind.node.ObjectNode;

/** What an entry says, as keys of one JSON block. */
final class ReportJson {
    private static final double MOST_KG = 10_000;
    private static final double MOST_L = 10_000;

    private ReportJson() {}

    static void put(ObjectNode node, Report report) {
        if (report instanceof Started started) {
            node.put("kind", "started").put("act", started.act().key());
        } else if (report instanceof Did did) {
            node.put("kind", "did").put("act", did.act().key());
            did.waterL().ifPresent(waterL -> node.put("waterL", waterL));
        } else if (report instanceof Report.Measured measured) {
            measured(node, measured);
        } else if (report instanceof Observed observed) {
            node.put("kind", "observed").put("sign", observed.sign().key()).put("words", observed.words());
        } else if (report instanceof HeatSet heat) {
            node.put("kind", "heat").put("airOnC", heat.airOnC());
        } else if (report instanceof VentsSet vents) {
            node.put("kind", "vents").put("openFraction", vents.openFraction());
        } else if (report instanceof VesselWeighed vessel) {
            tare(node.put("kind", "vessel"), vessel.tare());
        } else if (report instanceof Noted noted) {
            node.put("kind", "note").put("words", noted.words());
        } else if (report instanceof Remarked remarked) {
            node.put("kind", "note").put("words", remarked.words());
            RemarkJson.put(node.putObject("means"), remarked.remark());
        } else if (report instanceof Corrected corrected) {
            node.put("kind", "corrected").put("entry", corrected.entry());
            corrected.instead().ifPresent(instead -> put(node.putObject("instead"), instead));
        }
    }

    private static void measured(ObjectNode node, Report.Measured measured) {
        if (measured instanceof Weighed weighed) {
            node.put("kind", "weighed").put("grossKg", weighed.grossKg());
            weighed.tare().ifPresent(tare -> tare(node, tare));
        } else if (measured instanceof SampleDried sample) {
            node.put("kind", "sample")
                    .put("moistureWetBasisFraction", sample.moisture().wetBasisFraction());
        } else if (measured instanceof TemperatureRead read) {
            node.put("kind", "temperature")
                    .put("readC", read.readC())
                    .put("spot", read.spot().key());
        } else if (measured instanceof AcrospiresCounted counted) {
            var corns = node.put("kind", "acrospires").putArray("corns");
            counted.count().corns().forEach(corns::add);
        } else if (measured instanceof ChittedCounted chitted) {
            node.put("kind", "chitted").put("chitted", chitted.chitted()).put("of", chitted.of());
        } else if (measured instanceof ColourMeasured colour) {
            node.put("kind", "colour").put("colourEbc", colour.colourEbc());
        }
    }

    private static void tare(ObjectNode node, Tare tare) {
        node.put("vessel", tare.vessel()).put("tareKg", tare.tareKg());
    }

    static Report read(JsonBlock block) throws StoreException {
        String kind = block.text("kind");
        return switch (kind) {
            case "started" -> new Started(act(block));
            case "did" -> did(block);
            case "weighed" -> weighed(block);
            case "sample" -> {
                double fraction = block.number("moistureWetBasisFraction", 0, 0.99);
                yield new SampleDried(new Moisture(fraction));
            }
            case "temperature" -> {
                double readC = block.number("readC", -40, 300);
                yield new TemperatureRead(readC, one(block, "spot", Spot.values(), Spot::key));
            }
            case "acrospires" -> acrospires(block);
            case "chitted" -> chitted(block);
            case "colour" -> new ColourMeasured(block.number("colourEbc", 0, 3000));
            case "observed" -> new Observed(one(block, "sign", Sign.values(), Sign::key), block.wholeText("words"));
            case "heat" -> new HeatSet(block.number("airOnC", 0, 300));
            case "vents" -> new VentsSet(block.number("openFraction", 0, 1));
            case "vessel" -> new VesselWeighed(tare(block));
            case "note" -> noted(block);
            case "corrected" -> corrected(block);
            default -> later(block, kind);
        };
    }

    /** A note; what it means is passed over where a later version means something unknown here. */
    private static Report noted(JsonBlock block) throws StoreException {
        String words = block.wholeText("words");
        Optional<JsonBlock> means = block.optionalBlock("means");
        Optional<Remark> remark = means.isPresent() ? RemarkJson.read(means.get()) : Optional.empty();
        return remark.isPresent() ? new Remarked(words, remark.get()) : new Noted(words);
    }

    /** A kind of a later version: its words, or else all it says, kept as words. */
    private static Report later(JsonBlock block, String kind) throws StoreException {
        return new Noted(block.has("words") ? block.wholeText("words") : kind + " " + block.shown());
    }

    private static Report did(JsonBlock block) throws StoreException {
        OptionalDouble waterL = block.optionalNumber("waterL", 0, MOST_L);
        ActKind act = act(block);
        return block.make(() -> new Did(act, waterL));
    }

    private static Report chitted(JsonBlock block) throws StoreException {
        int chitted = block.whole("chitted", 0, 100_000);
        int of = block.whole("of", 1, 100_000);
        return block.make(() -> new ChittedCounted(chitted, of));
    }

    private static ActKind act(JsonBlock block) throws StoreException {
        return one(block, "act", ActKind.values(), ActKind::key);
    }

    private static Report weighed(JsonBlock block) throws StoreException {
        double grossKg = block.number("grossKg", 0, MOST_KG);
        Optional<Tare> tare = block.has("vessel") ? Optional.of(tare(block)) : Optional.empty();
        return block.make(() -> new Weighed(grossKg, tare));
    }

    private static Tare tare(JsonBlock block) throws StoreException {
        String vessel = block.text("vessel");
        double tareKg = block.number("tareKg", 0, 999);
        return block.make(() -> new Tare(vessel, tareKg));
    }

    private static Report acrospires(JsonBlock block) throws StoreException {
        List<Integer> corns = new ArrayList<>(block.wholes("corns", 0, 100_000));
        return block.make(() -> new AcrospiresCounted(new AcrospireCount(corns)));
    }

    private static Report corrected(JsonBlock block) throws StoreException {
        int entry = block.whole("entry", 1, Integer.MAX_VALUE);
        Optional<JsonBlock> instead = block.optionalBlock("instead");
        Optional<Report> report = instead.isPresent() ? Optional.of(read(instead.get())) : Optional.empty();
        return block.make(() -> new Corrected(entry, report));
    }

    private static <T> T one(JsonBlock block, String key, T[] values, Function<T, String> word) throws StoreException {
        String text = block.text(key).toLowerCase(Locale.ROOT);
        Optional<T> found = Arrays.stream(values)
                .filter(value -> word.apply(value).equals(text))
                .findFirst();
        if (found.isPresent()) return found.get();
        throw block.refused(
                key,
                "is not known here; "
                        + Nearest.hint(text, Arrays.stream(values).map(word).toList()));
    }
}
