package piecewright.store;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import piecewright.journal.Remark;
import piecewright.journal.Remark.Absent;
import piecewright.journal.Remark.AcrospireShare;
import piecewright.journal.Remark.BedDepth;
import piecewright.journal.Remark.ChittedShare;
import piecewright.journal.Remark.FanSet;
import piecewright.journal.Remark.HeaterOff;
import piecewright.journal.Remark.NotYet;
import piecewright.journal.Remark.RootletsWeighed;
import piecewright.journal.Remark.Skipped;
import piecewright.journal.Sign;
import piecewright.plan.ActKind;
import tools.jackson.databind.node.ObjectNode;

/** What a note means, as keys of one JSON block. */
final class RemarkJson {
    private RemarkJson() {}

    static void put(ObjectNode node, Remark remark) {
        if (remark instanceof Skipped skipped) {
            node.put("kind", "skipped").put("act", skipped.act().key());
        } else if (remark instanceof NotYet yet) {
            node.put("kind", "not-yet").put("act", yet.act().key());
        } else if (remark instanceof Absent absent) {
            node.put("kind", "absent").put("sign", absent.sign().key());
        } else if (remark instanceof HeaterOff) {
            node.put("kind", "heater-off");
        } else if (remark instanceof FanSet fan) {
            node.put("kind", "fan");
            fan.speedFraction().ifPresent(speed -> node.put("speedFraction", speed));
        } else if (remark instanceof BedDepth bed) {
            node.put("kind", "bed").put("depthCm", bed.depthCm());
        } else if (remark instanceof ChittedShare chitted) {
            node.put("kind", "chitted").put("chittedFraction", chitted.chittedFraction());
        } else if (remark instanceof AcrospireShare acrospire) {
            node.put("kind", "acrospire").put("acrospireFraction", acrospire.acrospireFraction());
        } else if (remark instanceof RootletsWeighed rootlets) {
            node.put("kind", "rootlets").put("rootletsKg", rootlets.rootletsKg());
        }
    }

    /** Empty for what only a later version knows. */
    static Optional<Remark> read(JsonBlock block) throws StoreException {
        return switch (block.text("kind")) {
            case "skipped" -> one(block, "act", ActKind.values(), ActKind::key).map(Skipped::new);
            case "not-yet" -> one(block, "act", ActKind.values(), ActKind::key).map(NotYet::new);
            case "absent" -> one(block, "sign", Sign.values(), Sign::key).map(Absent::new);
            case "heater-off" -> Optional.of(new HeaterOff());
            case "fan" -> fan(block);
            case "bed" -> Optional.of(new BedDepth(block.number("depthCm", 1e-6, 200)));
            case "chitted" -> Optional.of(new ChittedShare(block.number("chittedFraction", 0, 1)));
            case "acrospire" ->
                Optional.of(new AcrospireShare(block.number("acrospireFraction", 0, AcrospireShare.LONGEST_FRACTION)));
            case "rootlets" -> Optional.of(new RootletsWeighed(block.number("rootletsKg", 1e-9, 1000)));
            default -> Optional.empty();
        };
    }

    private static Optional<Remark> fan(JsonBlock block) throws StoreException {
        OptionalDouble speed = block.optionalNumber("speedFraction", 0, 1);
        return Optional.of(new FanSet(speed));
    }

    private static <T> Optional<T> one(JsonBlock block, String key, T[] values, Function<T, String> word)
            throws StoreException {
        String text = block.text(key);
        return Arrays.stream(values)
                .filter(value -> word.apply(value).equals(text))
                .findFirst();
    }
}
