package piecewright.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
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
import piecewright.store.SavedBatch;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.store.TextFile;

/** A wish whose files were read, with the texts they held, so that a batch can keep what it was made from. */
public record ReadWish(PlanRequest request, String lotText, String houseText, Path houseFile) {
    private static final String HOUSE_FILE = "houseFile";

    public ReadWish {
        Objects.requireNonNull(request);
        Objects.requireNonNull(lotText);
        Objects.requireNonNull(houseText);
        Objects.requireNonNull(houseFile);
    }

    /** The wish a batch was kept with; loggers of the house are read where they lay then. */
    public static ReadWish of(Path batchFile, SavedBatch batch, StyleLibrary library) throws StoreException {
        RequestTexts texts = batch.request();
        GrainLot lot = LotFile.parse(batchFile, texts.lotText());
        Path houseFile = houseFile(batchFile, texts);
        House house = HouseFile.parse(houseFile, texts.houseText());
        PlanRequest request = new PlanRequest(
                library.style(texts.styleKey()), lot, house, amount(batchFile, texts), when(batchFile, texts));
        return new ReadWish(request, texts.lotText(), texts.houseText(), houseFile);
    }

    private static Path houseFile(Path batchFile, RequestTexts texts) throws StoreException {
        String path = texts.wish().get(HOUSE_FILE);
        try {
            return path == null ? batchFile : Path.of(path);
        } catch (InvalidPathException noPath) {
            throw new StoreException(batchFile, "names no house file; take it from a copy", noPath);
        }
    }

    private static Amount amount(Path file, RequestTexts texts) throws StoreException {
        try {
            String malt = texts.wish().get("finishedMaltKg");
            return malt != null
                    ? new Amount.FinishedMalt(Double.parseDouble(malt))
                    : new Amount.RawGrain(Double.parseDouble(texts.wish().getOrDefault("rawGrainKg", "")));
        } catch (IllegalArgumentException wrong) {
            throw new StoreException(file, "its wish names no amount; take it from a copy", wrong);
        }
    }

    private static When when(Path file, RequestTexts texts) throws StoreException {
        try {
            String start = texts.wish().get("startOn");
            return start != null
                    ? new When.StartOn(LocalDate.parse(start))
                    : new When.ReadyBy(
                            LocalDate.parse(texts.wish().getOrDefault("readyBy", "")),
                            LocalDate.parse(texts.wish().getOrDefault("earliestStart", "")));
        } catch (DateTimeParseException wrong) {
            throw new StoreException(file, "its wish names no day; take it from a copy", wrong);
        }
    }

    /** The same wish in another house: other hours, other kit. */
    public ReadWish withHouse(Path file) throws StoreException {
        String text = TextFile.read(file, TextFile.SMALL_BYTES);
        House house = HouseFile.parse(file, text);
        PlanRequest changed = new PlanRequest(request.style(), request.lot(), house, request.amount(), request.when());
        return new ReadWish(changed, lotText, text, file);
    }

    /** Reads the lot and the house; a refusal names the file, where and the mend. */
    public static ReadWish of(PlanWish wish) throws StoreException {
        String lotText = TextFile.read(wish.lotFile(), TextFile.SMALL_BYTES);
        GrainLot lot = LotFile.parse(wish.lotFile(), lotText);
        String houseText = TextFile.read(wish.houseFile(), TextFile.SMALL_BYTES);
        House house = HouseFile.parse(wish.houseFile(), houseText);
        PlanRequest request = new PlanRequest(wish.style(), lot, house, wish.amount(), wish.when());
        return new ReadWish(request, lotText, houseText, wish.houseFile());
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
        wish.put(HOUSE_FILE, houseFile.toAbsolutePath().normalize().toString());
        return new RequestTexts(request.style().key(), lotText, houseText, wish);
    }
}
