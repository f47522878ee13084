package piecewright.app;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.store.TextFile;
import piecewright.style.RoastSchedule;

/** A wish whose files were read, with the texts they held, so that a batch can keep what it was made from. */
public record ReadWish(PlanRequest request, String lotText, String houseText) {
    public ReadWish {
        Objects.requireNonNull(request);
        Objects.requireNonNull(lotText);
        Objects.requireNonNull(houseText);
    }

    /** Reads the lot and the house; a refusal names the file, where and the mend. */
    public static ReadWish of(PlanWish wish) throws StoreException {
        String lotText = TextFile.read(wish.lotFile(), TextFile.SMALL_BYTES);
        GrainLot lot = LotFile.parse(wish.lotFile(), lotText);
        String houseText = TextFile.read(wish.houseFile(), TextFile.SMALL_BYTES);
        House house = HouseFile.parse(wish.houseFile(), houseText);
        return new ReadWish(new PlanRequest(wish.style(), lot, house, wish.amount(), wish.when()), lotText, houseText);
    }

    RequestTexts texts() {
        Map<String, String> wish = new TreeMap<>();
        if (request.amount() instanceof Amount.FinishedMalt malt) {
            wish.put("finishedMaltKg", Double.toString(malt.maltKg()));
        } else if (request.amount() instanceof Amount.RawGrain raw) {
            wish.put("rawGrainKg", Double.toString(raw.grainKg()));
        }
        if (request.when() instanceof When.ReadyBy readyBy) {
            wish.put("readyBy", readyBy.day().toString());
            wish.put("earliestStart", readyBy.earliestStart().toString());
        } else if (request.when() instanceof When.StartOn start) {
            wish.put("startOn", start.day().toString());
        }
        var kiln = request.style().kiln();
        if (kiln.cureC().lowC() == kiln.cureC().highC()) {
            wish.put("cureC", Double.toString(kiln.cureC().lowC()));
            wish.put("cureHoursFrom", Double.toString(kiln.cureHours().lowHours()));
            wish.put("cureHoursUntil", Double.toString(kiln.cureHours().highHours()));
        }
        request.style().oven().roast().map(RoastSchedule::last).ifPresent(last -> {
            boolean solved = last.shortestMinutes() == last.longestMinutes();
            if (solved) wish.put("roastMinutes", Double.toString(last.shortestMinutes()));
        });
        return new RequestTexts(request.style().key(), lotText, houseText, wish);
    }
}
