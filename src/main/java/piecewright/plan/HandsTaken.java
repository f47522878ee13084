package piecewright.plan;

import java.util.ArrayList;
import java.util.List;
import piecewright.plan.Availability.Stretch;

/**
 * Hours from which the work on other batches is taken away: each act from the first person who has the hours for all of
 * it, else from the first who has some of them.
 */
final class HandsTaken {
    private final List<List<Stretch>> byPerson = new ArrayList<>();
    private List<Stretch> nights;

    HandsTaken(List<List<Stretch>> byPerson, List<Stretch> nights) {
        byPerson.forEach(person -> this.byPerson.add(List.copyOf(person)));
        this.nights = List.copyOf(nights);
    }

    List<List<Stretch>> byPerson() {
        return List.copyOf(byPerson);
    }

    List<Stretch> nights() {
        return nights;
    }

    void take(Stretch work) {
        nights = without(nights, work);
        int who = -1;
        for (int person = 0; person < byPerson.size(); person++) {
            if (byPerson.get(person).stream().anyMatch(hours -> holds(hours, work))) {
                who = person;
                break;
            }
            boolean some = byPerson.get(person).stream().anyMatch(hours -> meet(hours, work));
            if (who < 0 && some) who = person;
        }
        if (who >= 0) byPerson.set(who, without(byPerson.get(who), work));
    }

    private static boolean holds(Stretch hours, Stretch work) {
        return !work.from().isBefore(hours.from()) && !work.until().isAfter(hours.until());
    }

    private static boolean meet(Stretch one, Stretch other) {
        return one.from().isBefore(other.until()) && other.from().isBefore(one.until());
    }

    private static List<Stretch> without(List<Stretch> hours, Stretch work) {
        List<Stretch> left = new ArrayList<>();
        for (Stretch one : hours) {
            if (!meet(one, work)) {
                left.add(one);
                continue;
            }
            if (one.from().isBefore(work.from())) left.add(new Stretch(one.from(), work.from()));
            if (work.until().isBefore(one.until())) left.add(new Stretch(work.until(), one.until()));
        }
        return List.copyOf(left);
    }
}
