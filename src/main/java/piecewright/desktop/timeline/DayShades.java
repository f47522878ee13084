package piecewright.desktop.timeline;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import piecewright.house.House;
import piecewright.house.NightActs;
import piecewright.plan.Availability;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking;
import piecewright.plan.PlanRequest;

/** Nights and the hours of the day in which nobody is there. */
final class DayShades {
    private DayShades() {}

    /**
     * @param end how far the shades go
     */
    static PieceChart.Frame frame(PlanRequest request, Instant from, Instant until, Instant end) {
        House house = request.house();
        List<Stretch> nights = nights(house.nights(), house.zone(), from, end);
        List<Stretch> there = Availability.of(house, from, end).stretches();
        List<Stretch> away = without(without(List.of(new Stretch(from, end)), there), nights);
        List<Booking> besides = request.besides().stream()
                .filter(booking -> touches(booking, from, end))
                .toList();
        return new PieceChart.Frame(house.zone(), from, until, nights, away, besides);
    }

    /** Whether anybody works on that piece within these times, or it keeps any kit. */
    private static boolean touches(Booking booking, Instant from, Instant end) {
        return Stream.concat(booking.hands().stream(), booking.kit().stream().map(Booking.Taken::stretch))
                .anyMatch(stretch ->
                        stretch.until().isAfter(from) && stretch.from().isBefore(end));
    }

    private static List<Stretch> nights(NightActs night, ZoneId zone, Instant from, Instant end) {
        List<Stretch> nights = new ArrayList<>();
        LocalDate last = LocalDate.ofInstant(end, zone);
        for (LocalDate day = LocalDate.ofInstant(from, zone).minusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            LocalDate morning = night.until().isAfter(night.from()) ? day : day.plusDays(1);
            nights.add(new Stretch(
                    day.atTime(night.from()).atZone(zone).toInstant(),
                    morning.atTime(night.until()).atZone(zone).toInstant()));
        }
        return nights;
    }

    /** What is left of stretches when others are cut out; both in time order. */
    static List<Stretch> without(List<Stretch> stretches, List<Stretch> cut) {
        List<Stretch> left = new ArrayList<>();
        for (Stretch stretch : stretches) {
            Instant from = stretch.from();
            for (Stretch each : cut) {
                if (!each.until().isAfter(from) || !each.from().isBefore(stretch.until())) continue;
                if (each.from().isAfter(from)) left.add(new Stretch(from, each.from()));
                from = each.until();
            }
            if (from.isBefore(stretch.until())) left.add(new Stretch(from, stretch.until()));
        }
        return left;
    }
}
