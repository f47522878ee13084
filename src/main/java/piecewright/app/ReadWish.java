package piecewright.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.learn.Lessons.Known;
import piecewright.learn.Taught;
import piecewright.plan.Booking;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.BatchFile;
import piecewright.store.BookingsJson;
import piecewright.store.HouseFile;
import piecewright.store.HouseText;
import piecewright.store.LearnedFile;
import piecewright.store.LotFile;
import piecewright.store.SavedBatch;
import piecewright.store.SavedBatch.RequestTexts;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.store.TextFile;
import piecewright.style.MaltStyle;

/**
 * A wish whose files were read, with the texts they held, so that a batch can keep what it was made from.
 *
 * @param files where lot and house lay
 * @param learned what earlier batches had taught
 */
public record ReadWish(PlanRequest request, String lotText, String houseText, Files files, LearnedTexts learned) {
    private static final String LOT_FILE = "lotFile";
    private static final String HOUSE_FILE = "houseFile";

    /** Keys of a kept wish that name files. */
    public static final List<String> FILE_KEYS = List.of(LOT_FILE, HOUSE_FILE);

    private static final String BESIDES = "besides";
    private static final String LOT_LEARNED = "lotLearned";
    private static final String HOUSE_LEARNED = "houseLearned";

    public ReadWish {
        Objects.requireNonNull(request);
        Objects.requireNonNull(lotText);
        Objects.requireNonNull(houseText);
        Objects.requireNonNull(files);
        Objects.requireNonNull(learned);
    }

    /** The files of lot and house. */
    public record Files(Path lot, Path house) {
        public Files {
            Objects.requireNonNull(lot);
            Objects.requireNonNull(house);
        }
    }

    /** Texts of the files beside them that hold what batches taught; empty for none. */
    public record LearnedTexts(String lot, String house) {
        public LearnedTexts {
            Objects.requireNonNull(lot);
            Objects.requireNonNull(house);
        }
    }

    /** The wish a batch was kept with, with what was known then; loggers of the house are read where they lay. */
    public static ReadWish of(Path batchFile, SavedBatch batch, StyleLibrary library) throws StoreException {
        RequestTexts texts = batch.request();
        Files files = new Files(file(batchFile, texts, LOT_FILE), file(batchFile, texts, HOUSE_FILE));
        LearnedTexts learned = new LearnedTexts(
                texts.wish().getOrDefault(LOT_LEARNED, ""), texts.wish().getOrDefault(HOUSE_LEARNED, ""));
        Known known =
                new Known(LearnedFile.parse(batchFile, learned.lot()), LearnedFile.parse(batchFile, learned.house()));
        GrainLot lot = LotFile.parse(batchFile, texts.lotText());
        House house = HouseFile.parse(files.house(), texts.houseText());
        MaltStyle style = AimedStyle.of(batchFile, library.style(texts.styleKey()), texts.wish());
        String besides = texts.wish().getOrDefault(BESIDES, "");
        List<Booking> bookings = besides.isEmpty() ? List.of() : BookingsJson.read(batchFile, besides);
        PlanRequest request = new PlanRequest(style, lot, house, amount(batchFile, texts), when(batchFile, texts))
                .beside(bookings)
                .arranged(ArrangementTexts.read(batchFile, texts.wish()));
        return new ReadWish(Taught.wish(request, known), texts.lotText(), texts.houseText(), files, learned);
    }

    private static Path file(Path batchFile, RequestTexts texts, String key) throws StoreException {
        String path = texts.wish().get(key);
        try {
            return path == null ? batchFile : Path.of(path);
        } catch (InvalidPathException noPath) {
            throw new StoreException(batchFile, "names no " + key + "; take it from a copy", noPath);
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
        String taught = LearnedFile.textBeside(file);
        Known known = new Known(
                LearnedFile.parse(files.lot(), learned.lot()), LearnedFile.parse(LearnedFile.beside(file), taught));
        PlanRequest changed = Taught.wish(request.withHouse(HouseFile.parse(file, text)), known);
        return new ReadWish(
                changed, lotText, text, new Files(files.lot(), file), new LearnedTexts(learned.lot(), taught));
    }

    /** Reads the lot and the house with what was learned beside them; a refusal names the file, where and the mend. */
    public static ReadWish of(PlanWish wish) throws StoreException {
        String lotText = TextFile.read(wish.lotFile(), TextFile.SMALL_BYTES);
        String lotLearned = LearnedFile.textBeside(wish.lotFile());
        GrainLot lot = LotFile.parse(wish.lotFile(), lotText);
        String houseText = TextFile.read(wish.houseFile(), TextFile.SMALL_BYTES);
        String houseLearned = LearnedFile.textBeside(wish.houseFile());
        House house = HouseFile.parse(wish.houseFile(), houseText);
        Known known = new Known(
                LearnedFile.parse(LearnedFile.beside(wish.lotFile()), lotLearned),
                LearnedFile.parse(LearnedFile.beside(wish.houseFile()), houseLearned));
        PlanRequest request = Taught.wish(new PlanRequest(wish.style(), lot, house, wish.amount(), wish.when()), known);
        Files files = new Files(wish.lotFile(), wish.houseFile());
        return new ReadWish(request, lotText, houseText, files, new LearnedTexts(lotLearned, houseLearned));
    }

    /** The same files, with another wish made of them. */
    public ReadWish withRequest(PlanRequest changed) {
        return new ReadWish(changed, lotText, houseText, files, learned);
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
        AimedStyle.note(request.style(), wish);
        ArrangementTexts.note(request.arrangement(), wish);
        wish.put(LOT_FILE, files.lot().toAbsolutePath().normalize().toString());
        wish.put(HOUSE_FILE, files.house().toAbsolutePath().normalize().toString());
        if (!request.besides().isEmpty()) wish.put(BESIDES, BookingsJson.write(request.besides()));
        if (!learned.lot().isEmpty()) wish.put(LOT_LEARNED, learned.lot());
        if (!learned.house().isEmpty()) wish.put(HOUSE_LEARNED, learned.house());
        return new RequestTexts(request.style().key(), lotText, houseText, wish);
    }

    /** The files of lot and house that a kept batch was made from. */
    public static List<Path> filesOf(Path batch) throws StoreException {
        RequestTexts texts = BatchFile.read(batch).request();
        return List.of(file(batch, texts, LOT_FILE), file(batch, texts, HOUSE_FILE));
    }

    /** The readings beside a house that it names; none for a lot. */
    public static List<Path> readingsOf(Path lotOrHouse) throws StoreException {
        return HouseText.read(lotOrHouse).readings();
    }
}
