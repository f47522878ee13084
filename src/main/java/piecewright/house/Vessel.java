package piecewright.house;

import java.util.Objects;

/** A bucket or tub to steep in; volume to the brim in litres, more than 0. */
public record Vessel(String name, String place, double volumeL) {
    public Vessel {
        Objects.requireNonNull(name);
        Objects.requireNonNull(place);
        if (!(volumeL > 0)) throw new IllegalArgumentException("volumeL must be above 0: " + volumeL);
    }
}
