package piecewright.quantity;

/** A closed range of lengths of time in hours, 0 or more, low at most high. */
public record HoursRange(double lowHours, double highHours) {
    public HoursRange {
        if (!(lowHours >= 0 && lowHours <= highHours)) {
            throw new IllegalArgumentException("need 0 <= lowHours <= highHours: " + lowHours + ", " + highHours);
        }
    }
}
