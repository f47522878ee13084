package piecewright.calendar;

import java.util.Objects;

/** A rule broken by a calendar file: the number of the check, and what was found. */
public record IcsFault(int check, String found) {
    public IcsFault {
        Objects.requireNonNull(found);
    }
}
