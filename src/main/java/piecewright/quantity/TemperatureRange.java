package piecewright.quantity;

/** A closed range of temperatures in °C, low at most high. */
public record TemperatureRange(double lowC, double highC) {
    public TemperatureRange {
        if (!(lowC <= highC)) {
            throw new IllegalArgumentException("lowC must be at most highC: " + lowC + ", " + highC);
        }
    }

    public boolean contains(double temperatureC) {
        return temperatureC >= lowC && temperatureC <= highC;
    }
}
