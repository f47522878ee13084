package piecewright.sheet;

/** Between which weights of the whole piece an act is expected in eight plans of ten, kg. */
public record MassBand(double lowKg, double highKg) {
    public MassBand {
        if (!(lowKg > 0 && lowKg <= highKg)) {
            throw new IllegalArgumentException("need 0 < lowKg <= highKg: " + lowKg + ", " + highKg);
        }
    }
}
