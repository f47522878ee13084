package piecewright.house;

import java.util.Objects;

/**
 * A room, garage, cellar or fridge with its air.
 *
 * @param humidityFraction relative humidity, (0, 1)
 */
public record Place(String name, AirTemperature air, double humidityFraction) {
    public Place {
        Objects.requireNonNull(name);
        Objects.requireNonNull(air);
        if (!(humidityFraction > 0 && humidityFraction < 1)) {
            throw new IllegalArgumentException("humidityFraction must be in (0, 1): " + humidityFraction);
        }
    }
}
