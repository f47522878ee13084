package piecewright.house;

import java.util.Objects;

/** A set of equal trays, screens or a patch of floor to grow on; area of one in m², more than 0. */
public record Trays(String name, String place, int count, double areaM2) {
    public Trays {
        Objects.requireNonNull(name);
        Objects.requireNonNull(place);
        if (count < 1) throw new IllegalArgumentException("count must be 1 or more: " + count);
        if (!(areaM2 > 0)) throw new IllegalArgumentException("areaM2 must be above 0: " + areaM2);
    }

    public double totalAreaM2() {
        return count * areaM2;
    }
}
