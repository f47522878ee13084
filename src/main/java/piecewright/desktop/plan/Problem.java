package piecewright.desktop.plan;

import java.util.Objects;
import piecewright.plan.Obstacle;

/** Why a wish cannot be, under the word of the sentence that causes it. */
public record Problem(Word word, String sentence) {
    public Problem {
        Objects.requireNonNull(word);
        Objects.requireNonNull(sentence);
    }

    /** The words of the sentence that can be changed. */
    public enum Word {
        AMOUNT,
        STYLE,
        COLOUR,
        READY_BY,
        LOT,
        HOUSE,
        COMPANY
    }

    static Word wordOf(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.ColourOutOfReach) return Word.COLOUR;
        if (obstacle instanceof Obstacle.HeldByOthers) return Word.COMPANY;
        if (obstacle instanceof Obstacle.TooSoon) return Word.READY_BY;
        if (obstacle instanceof Obstacle.TreatedSeed || obstacle instanceof Obstacle.TooFewGrow) return Word.LOT;
        if (obstacle instanceof Obstacle.GrainNotForStyle || obstacle instanceof Obstacle.NoHeater) return Word.STYLE;
        boolean ofSize = obstacle instanceof Obstacle.VesselTooSmall
                || obstacle instanceof Obstacle.BedTooDeep
                || obstacle instanceof Obstacle.HeaterTooSmall
                || obstacle instanceof Obstacle.NeverDry;
        return ofSize ? Word.AMOUNT : Word.HOUSE;
    }
}
