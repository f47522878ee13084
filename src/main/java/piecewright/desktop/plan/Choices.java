package piecewright.desktop.plan;

import java.nio.file.Path;
import java.util.List;
import piecewright.app.Workspace.Kept;
import piecewright.app.Workspace.Origin;
import piecewright.grain.GrainLot;
import piecewright.house.House;
import piecewright.style.MaltStyle;

/** What the words of the sentence can be. */
public record Choices(List<MaltStyle> styles, List<Kept<GrainLot>> lots, List<Kept<House>> houses) {
    public Choices {
        styles = List.copyOf(styles);
        lots = List.copyOf(lots);
        houses = List.copyOf(houses);
    }

    /** The style a new sentence begins with: pale, where there is one. */
    public MaltStyle firstStyle() {
        return styles.stream()
                .filter(style -> style.key().equals("pale"))
                .findFirst()
                .orElse(styles.get(0));
    }

    /** The lot to begin with: of one's own if there is one, else the plainest of the demo. */
    public Path firstLot() {
        return lots.stream()
                .filter(kept -> kept.origin() == Origin.OWN || kept.file().endsWith("two-row-barley.json"))
                .findFirst()
                .orElse(lots.get(0))
                .file();
    }

    /** True when a sentence can be made at all. */
    public boolean complete() {
        return !styles.isEmpty() && !lots.isEmpty() && !houses.isEmpty();
    }
}
