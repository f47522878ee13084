package piecewright.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Every step lies wholly in the hours of one person, or in an allowed night, and nobody does two things at once. */
final class HoursRule {
    private static final String OTHERS = "another batch";

    private HoursRule() {}

    /** Work and who could do it, by their places among the people. */
    private record Task(String id, Instant from, Instant until, List<Integer> who) {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Task> tasks = new ArrayList<>();
        int nights = 0;
        for (Told.Step step : one.toCome()) {
            List<Integer> who = who(one.home(), step.at(), step.until());
            if (!who.isEmpty()) {
                tasks.add(new Task(step.id(), step.at(), step.until(), who));
            } else if (one.home().allNight(step.at(), step.until())) {
                nights++;
            } else {
                String at = step.at().atZone(one.home().zone()) + " for " + step.minutes() + " min";
                faults.add(new Fault("outside everybody's hours", step.id(), at));
            }
        }
        if (nights > one.home().nights().most()) faults.add(new Fault("more nights than allowed", "plan", nights + ""));
        for (Case.Busy busy : one.others()) {
            tasks.add(new Task(OTHERS, busy.from(), busy.until(), who(one.home(), busy.from(), busy.until())));
        }
        faults.addAll(twice(tasks, one.home().people().size()));
        return faults;
    }

    private static List<Integer> who(Home home, Instant from, Instant until) {
        return IntStream.range(0, home.people().size())
                .filter(i -> home.throughout(home.people().get(i), from, until))
                .boxed()
                .toList();
    }

    /**
     * Work that cannot be shared out among those who are there; what others do at night keeps nobody from anything, and
     * what only others do at once is no fault of this plan.
     */
    private static List<Fault> twice(List<Task> tasks, int people) {
        List<Fault> faults = new ArrayList<>();
        List<Task> sorted = tasks.stream()
                .filter(task -> !task.who().isEmpty())
                .sorted(Comparator.comparing(Task::from))
                .toList();
        for (int i = 0; i < sorted.size(); ) {
            Instant busyUntil = sorted.get(i).until();
            int end = i + 1;
            while (end < sorted.size() && sorted.get(end).from().isBefore(busyUntil)) {
                Instant until = sorted.get(end++).until();
                busyUntil = until.isAfter(busyUntil) ? until : busyUntil;
            }
            boolean ours =
                    sorted.subList(i, end).stream().anyMatch(task -> !task.id().equals(OTHERS));
            if (ours && !shared(sorted.subList(i, end), 0, new Instant[people])) {
                faults.add(new Fault("one person needed twice", sorted.get(i).id(), sorted.subList(i, end) + ""));
            }
            i = end;
        }
        return faults;
    }

    private static boolean shared(List<Task> tasks, int at, Instant[] busyUntil) {
        if (at == tasks.size()) return true;
        Task task = tasks.get(at);
        for (int person : task.who()) {
            Instant before = busyUntil[person];
            if (before != null && before.isAfter(task.from())) continue;
            busyUntil[person] = task.until();
            if (shared(tasks, at + 1, busyUntil)) return true;
            busyUntil[person] = before;
        }
        return false;
    }
}
