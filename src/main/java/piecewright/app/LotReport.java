package piecewright.app;

import java.nio.file.Path;
import java.time.LocalDate;
import piecewright.assess.LotJudge;
import piecewright.assess.LotJudgement;
import piecewright.grain.GrainLot;
import piecewright.store.JudgementJson;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.JudgementPage;

/** Judges the lot of a file. */
public record LotReport(GrainLot lot, LotJudgement judgement) {
    public static LotReport of(Path lotFile, LocalDate today) throws StoreException {
        GrainLot lot = LotFile.read(lotFile);
        return new LotReport(lot, LotJudge.judge(lot, today));
    }

    /** The same lot with a new last count of one dish, counted from 0; the file is changed. */
    public static LotReport recounted(Path lotFile, int dish, int germinated, LocalDate today) throws StoreException {
        LotFile.recount(lotFile, dish, germinated);
        return of(lotFile, today);
    }

    public String page(DisplayUnits units) {
        return new JudgementPage(units).page(lot.name(), judgement);
    }

    public String json(DisplayUnits units) {
        return new JudgementJson(new JudgementPage(units)).write(lot.name(), judgement);
    }
}
