package piecewright.house;

import java.util.Objects;
import java.util.OptionalDouble;

/** A box for couching; inner volume in litres, heat loss in W/K at 4.5 kg if a water test measured it. */
public record InsulatedBox(String name, String place, double volumeL, OptionalDouble lossWPerK) {
    public InsulatedBox {
        Objects.requireNonNull(name);
        Objects.requireNonNull(place);
        if (!(volumeL > 0)) throw new IllegalArgumentException("volumeL must be above 0: " + volumeL);
        if (lossWPerK.isPresent() && !(lossWPerK.getAsDouble() > 0)) {
            throw new IllegalArgumentException("lossWPerK must be above 0: " + lossWPerK.getAsDouble());
        }
    }
}
