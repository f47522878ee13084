package piecewright.app;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Map;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.store.HouseFile;
import piecewright.store.StoreException;
import piecewright.store.WeekWriter;

/** Changes somebody's usual week in the file of a household. */
public final class HouseHours {
    private HouseHours() {}

    /** The household with the new week, read back from its file. */
    public static House changed(Path houseFile, String person, Map<DayOfWeek, List<LocalHours>> week)
            throws StoreException {
        WeekWriter.write(houseFile, person, week);
        return HouseFile.read(houseFile);
    }
}
