package piecewright.app;

import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.learn.Taught;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LearnedFile;
import piecewright.store.LotFile;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.store.TextFile;
import piecewright.style.RoastSchedule;

/**
 * A wish whose files were read, with the texts they held, so that a batch can keep what it was made from.
 *
 * @param lotLearnedText text of what earlier batches of the lot taught, empty for none; likewise of the house
 */
public record ReadWish(
        PlanRequest request, String lotText, String houseText, String lotLearnedText, String houseLearnedText) {
    /** Keys under which a kept batch holds what its lot and house had taught when it was planned. */
    static final String LOT_LEARNED = "lotLearned";

    static final String HOUSE_LEARNED = "houseLearned";

    public ReadWish {
        Objects.requireNonNull(request);
        Objects.requireNonNull(lotText);
        Objects.requireNonNull(houseText);
        Objects.requireNonNull(lotLearnedText);
        Objects.requireNonNull(houseLearnedText);
    }

    /** Reads the lot and the house; a refusal names the file, where and the mend. */
    public static ReadWish of(PlanWish wish) throws StoreException {
        String lotText = TextFile.read(wish.lotFile(), TextFile.SMALL_BYTES);
        String lotLearned = LearnedFile.textBeside(wish.lotFile());
        GrainLot lot = Taught.lot(
                LotFile.parse(wish.lotFile(), lotText),
                LearnedFile.parse(LearnedFile.beside(wish.lotFile()), lotLearned));
        String houseText = TextFile.read(wish.houseFile(), TextFile.SMALL_BYTES);
        String houseLearned = LearnedFile.textBeside(wish.houseFile());
        House house = Taught.house(
                HouseFile.parse(wish.houseFile(), houseText),
                LearnedFile.parse(LearnedFile.beside(wish.houseFile()), houseLearned));
        PlanRequest request = new PlanRequest(wish.style(), lot, house, wish.amount(), wish.when());
        return new ReadWish(request, lotText, houseText, lotLearned, houseLearned);
    }

    /** The same files, with another wish made of them. */
    public ReadWish withRequest(PlanRequest changed) {
        return new ReadWish(changed, lotText, houseText, lotLearnedText, houseLearnedText);
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
        if (!lotLearnedText.isEmpty()) wish.put(LOT_LEARNED, lotLearnedText);
        if (!houseLearnedText.isEmpty()) wish.put(HOUSE_LEARNED, houseLearnedText);
        return new RequestTexts(request.style().key(), lotText, houseText, wish);
    }
}
