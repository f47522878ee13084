package piecewright.reading;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Journal;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.text.DisplayUnits;

/**
 * All that is known when a line is typed.
 *
 * @param planned when the steps stand in the plan, those done included
 * @param next the step that comes next
 * @param expectedKg what the batch should weigh about now
 */
public record Scene(
        Instant now,
        ZoneId zone,
        DisplayUnits units,
        Journal journal,
        List<Visit> planned,
        Optional<ActKind> next,
        OptionalDouble expectedKg,
        Limits limits) {
    public Scene {
        Objects.requireNonNull(now);
        Objects.requireNonNull(zone);
        Objects.requireNonNull(units);
        Objects.requireNonNull(journal);
        Objects.requireNonNull(next);
        Objects.requireNonNull(expectedKg);
        Objects.requireNonNull(limits);
        planned = List.copyOf(planned);
    }

    /**
     * What batch and house allow.
     *
     * @param dryKg dry matter of the batch, kg
     * @param grainKg grain as bought, kg
     * @param kilnMostC the hottest any kiln of the house holds, °C; empty without one
     * @param coldestC the coldest place or water of the house, °C
     * @param places names of the rooms
     */
    public record Limits(
            double dryKg,
            double grainKg,
            OptionalDouble kilnMostC,
            OptionalDouble ovenMostC,
            double coldestC,
            List<String> places) {
        public Limits {
            places = List.copyOf(places);
        }
    }

    LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    boolean metric() {
        return units.system() == piecewright.text.UnitSystem.METRIC;
    }

    boolean plans(ActKind kind) {
        return planned.stream().anyMatch(visit -> visit.kind() == kind);
    }

    /** The same without some entries. */
    Scene without(Journal left) {
        return new Scene(now, zone, units, left, planned, next, expectedKg, limits);
    }
}
