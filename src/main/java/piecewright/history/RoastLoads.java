package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.journal.Entry;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Started;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;

/**
 * Which load of a roast each entry tells of: one entry a load, or one for all. With as many entries as loads the order
 * tells; with fewer each is the load planned nearest, so that one entry on the last evening stands for all.
 */
final class RoastLoads {
    /** Judgement: no oven load is roasted in so short a time; the same said twice. */
    private static final Duration SAME = Duration.ofMinutes(20);

    private final Map<Integer, Integer> loadByEntry = new HashMap<>();

    /** @param entries effective ones, in time order */
    RoastLoads(List<Visit> planned, List<Entry> entries) {
        List<Visit> loads =
                planned.stream().filter(visit -> visit.kind() == ActKind.ROAST).toList();
        Map<Integer, Integer> groupByEntry = new HashMap<>();
        int groups = grouped(entries, groupByEntry);
        int[] load = new int[groups + 1];
        groupByEntry.forEach((number, group) -> loadByEntry.put(number, 0));
        if (loads.isEmpty()) return;
        Map<Integer, Instant> begins = new HashMap<>();
        for (Entry entry : entries) {
            Integer group = groupByEntry.get(entry.number());
            if (group != null) begins.putIfAbsent(group, entry.at());
        }
        for (int group = 1; group <= groups; group++) {
            int least = Math.min(loads.size(), load[group - 1] + 1);
            int most = Math.max(least, loads.size() - (groups - group));
            load[group] = nearest(loads, least, most, begins.getOrDefault(group, Instant.EPOCH));
        }
        groupByEntry.forEach((number, group) ->
                loadByEntry.put(number, loads.get(load[group] - 1).number()));
    }

    /** The number of the load, as the plan counts them. */
    int of(Entry entry) {
        return loadByEntry.getOrDefault(entry.number(), 0);
    }

    private static int nearest(List<Visit> loads, int least, int most, Instant at) {
        int best = least;
        for (int load = least + 1; load <= most; load++) {
            Duration before = Duration.between(loads.get(best - 1).at(), at).abs();
            if (Duration.between(loads.get(load - 1).at(), at).abs().compareTo(before) < 0) best = load;
        }
        return best;
    }

    /** Puts begin and end of one roast, and what is said twice, together; how many roasts are told of. */
    private static int grouped(List<Entry> entries, Map<Integer, Integer> groupByEntry) {
        int groups = 0;
        Optional<Entry> before = Optional.empty();
        for (Entry entry : entries) {
            boolean begins = entry.report() instanceof Started started && started.act() == ActKind.ROAST;
            boolean ends = entry.report() instanceof Did did && did.act() == ActKind.ROAST;
            if (!begins && !ends) continue;
            boolean sameWord = before.isPresent()
                    && before.get().report() instanceof Started == begins
                    && VisitNames.close(before.get().at(), entry.at(), SAME);
            boolean itsEnd = ends && before.isPresent() && before.get().report() instanceof Started;
            boolean same = sameWord || itsEnd;
            if (!same) groups++;
            groupByEntry.put(entry.number(), groups);
            before = Optional.of(entry);
        }
        return groups;
    }
}
