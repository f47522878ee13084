package piecewright.app;

import java.nio.file.Path;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.learn.Learned;
import piecewright.store.HouseFile;
import piecewright.store.LearnedFile;
import piecewright.store.LearnedJson;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.LearnedPage;

/** What batches taught of the lot or the house of a file. */
public record LearnedReport(String name, Belief stated, Learned learned) {
    public static LearnedReport ofLot(Path lotFile) throws StoreException {
        GrainLot lot = LotFile.read(lotFile);
        return new LearnedReport(lot.name(), Priors.lot(lot), learnedBeside(lotFile));
    }

    public static LearnedReport ofHouse(Path houseFile) throws StoreException {
        House house = HouseFile.read(houseFile);
        return new LearnedReport(house.name(), Priors.house(house), learnedBeside(houseFile));
    }

    private static Learned learnedBeside(Path file) throws StoreException {
        return LearnedFile.parse(LearnedFile.beside(file), LearnedFile.textBeside(file));
    }

    public String page(DisplayUnits units) {
        return new LearnedPage(units).page(name, stated, learned);
    }

    public String json() {
        return LearnedJson.write(name, stated, learned);
    }
}
