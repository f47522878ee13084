package piecewright.house;

/** A balance; its smallest step in grams and its capacity in kg, both more than 0. */
public record Scale(double stepG, double capacityKg) {
    public Scale {
        if (!(stepG > 0)) throw new IllegalArgumentException("stepG must be above 0: " + stepG);
        if (!(capacityKg > 0)) throw new IllegalArgumentException("capacityKg must be above 0: " + capacityKg);
    }
}
