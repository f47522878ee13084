package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.house.LocalSpan;
import piecewright.house.NightActs;
import piecewright.house.Person;

/**
 * When somebody can act: people's local hours turned into instants, clock changes included. All stretches are half-open
 * and in time order. Nights are stretches in which an act is possible but dear.
 */
public final class Availability {
    private final List<List<Stretch>> byPerson;
    private final List<Stretch> together;
    private final List<Stretch> nights;

    private Availability(List<List<Stretch>> byPerson, List<Stretch> together, List<Stretch> nights) {
        this.byPerson = byPerson;
        this.together = together;
        this.nights = nights;
    }

    /** A half-open stretch of time. */
    public record Stretch(Instant from, Instant until) {
        public Stretch {
            Objects.requireNonNull(from);
            Objects.requireNonNull(until);
        }

        boolean contains(Instant instant) {
            return !instant.isBefore(from) && instant.isBefore(until);
        }
    }

    /** Everybody's hours that touch [from, until). */
    public static Availability of(House house, Instant from, Instant until) {
        List<List<Stretch>> byPerson = new ArrayList<>();
        for (Person person : house.people()) {
            List<Stretch> hours = hoursOf(person, house.zone(), from, until);
            if (!hours.isEmpty()) byPerson.add(hours);
        }
        List<Stretch> nights = nightsOf(house.nights(), house.zone(), from, until);
        return new Availability(List.copyOf(byPerson), union(byPerson), nights);
    }

    /** The same without the hands that other batches have taken; whoever works on those is still near. */
    Availability beside(List<Booking> bookings) {
        List<Stretch> taken = bookings.stream()
                .flatMap(booking -> booking.hands().stream())
                .sorted(Comparator.comparing(Stretch::from))
                .toList();
        HandsTaken hands = new HandsTaken(byPerson, nights);
        taken.forEach(hands::take);
        return new Availability(hands.byPerson(), together, hands.nights());
    }

    /** The same without the person named last; empty when nobody would be left. */
    Optional<Availability> withoutTheLast() {
        if (byPerson.size() < 2) return Optional.empty();
        List<List<Stretch>> fewer = byPerson.subList(0, byPerson.size() - 1);
        return Optional.of(new Availability(fewer, union(fewer), nights));
    }

    /** Hours in which at least one person can act, merged. */
    public List<Stretch> stretches() {
        return together;
    }

    /** Each person's own hours, one after the other, not merged: more people only ever add to them. */
    public List<Stretch> everyonesStretches() {
        return byPerson.stream().flatMap(List::stream).toList();
    }

    /** The longest that one and the same person is ever there in one go; zero when nobody ever is. */
    public Duration longestOfOnePerson() {
        return everyonesStretches().stream()
                .map(stretch -> Duration.between(stretch.from(), stretch.until()))
                .max(Comparator.naturalOrder())
                .orElse(Duration.ZERO);
    }

    /** Nights in which somebody would get up, if any may. */
    public List<Stretch> nights() {
        return nights;
    }

    /** Until when one and the same person can go on working from this instant; empty if nobody can begin. */
    public Optional<Instant> workableUntil(Instant instant) {
        return byPerson.stream()
                .flatMap(List::stream)
                .filter(stretch -> stretch.contains(instant))
                .map(Stretch::until)
                .max(Comparator.naturalOrder());
    }

    /** Until when at least one person stays there from this instant on; empty if nobody is. */
    public Optional<Instant> attendedUntil(Instant instant) {
        return together.stream()
                .filter(stretch -> stretch.contains(instant))
                .map(Stretch::until)
                .findFirst();
    }

    /** When somebody is there first, from this instant on; empty if nobody is any more. */
    Optional<Instant> firstThere(Instant instant) {
        return together.stream()
                .filter(stretch -> stretch.until().isAfter(instant))
                .map(stretch -> stretch.from().isAfter(instant) ? stretch.from() : instant)
                .findFirst();
    }

    /** Until when the night lasts in which somebody would get up; empty outside such nights. */
    public Optional<Instant> nightUntil(Instant instant) {
        return nights.stream()
                .filter(stretch -> stretch.contains(instant))
                .map(Stretch::until)
                .findFirst();
    }

    private static List<Stretch> hoursOf(Person person, ZoneId zone, Instant from, Instant until) {
        List<Stretch> stretches = new ArrayList<>();
        LocalDate last = LocalDate.ofInstant(until, zone);
        for (LocalDate day = LocalDate.ofInstant(from, zone); !day.isAfter(last); day = day.plusDays(1)) {
            for (LocalHours hours : person.hoursOn(day)) add(stretches, hours.on(day), zone);
        }
        stretches.sort(Comparator.comparing(Stretch::from));
        return List.copyOf(stretches);
    }

    private static List<Stretch> nightsOf(NightActs nights, ZoneId zone, Instant from, Instant until) {
        List<Stretch> stretches = new ArrayList<>();
        if (nights.most() == 0) return stretches;
        LocalDate last = LocalDate.ofInstant(until, zone);
        for (LocalDate day = LocalDate.ofInstant(from, zone).minusDays(1); !day.isAfter(last); day = day.plusDays(1)) {
            add(stretches, nights.on(day), zone);
        }
        return List.copyOf(stretches);
    }

    private static void add(List<Stretch> stretches, LocalSpan span, ZoneId zone) {
        for (LocalSpan.Lasting lasting : span.lasting(zone.getRules())) {
            stretches.add(new Stretch(lasting.from(), lasting.until()));
        }
    }

    private static List<Stretch> union(List<List<Stretch>> byPerson) {
        List<Stretch> all = new ArrayList<>();
        byPerson.forEach(all::addAll);
        all.sort(Comparator.comparing(Stretch::from));
        List<Stretch> merged = new ArrayList<>();
        for (Stretch next : all) {
            Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && !next.from().isAfter(last.until())) {
                if (next.until().isAfter(last.until())) {
                    merged.set(merged.size() - 1, new Stretch(last.from(), next.until()));
                }
            } else {
                merged.add(next);
            }
        }
        return List.copyOf(merged);
    }
}
