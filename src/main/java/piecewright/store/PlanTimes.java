package piecewright.store;

import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;

/**
 * When the acts of a kept plan stand: what a saved plan document still must tell once its wish is known.
 *
 * @param grainKg grain that goes into the steep, kg
 * @param visits in time order
 * @param places the place or kit by name each kind of act stands at; the first where it differs
 */
public record PlanTimes(double grainKg, List<Visit> visits, Map<ActKind, String> places) {
    public PlanTimes {
        places = Map.copyOf(places);
        visits = List.copyOf(visits);
    }

    /** Reads the document a batch keeps; the file is only named in refusals. */
    public static PlanTimes of(Path file, SavedBatch batch) throws StoreException {
        JsonBlock plan = JsonBlock.root(file, batch.planJson(), "plan").block("plan");
        double grainKg = plan.number("rawGrainKg", 0.001, 2000);
        List<Visit> visits = new ArrayList<>();
        Map<ActKind, String> places = new EnumMap<>(ActKind.class);
        for (JsonBlock act : plan.blocks("acts")) {
            String id = act.text("id");
            String word = act.text("kind");
            ActKind kind = Arrays.stream(ActKind.values())
                    .filter(each -> each.key().equals(word))
                    .findFirst()
                    .orElseThrow(() -> act.refused("kind", "is no act known here; take the file from a copy"));
            act.optionalText("place").ifPresent(place -> places.putIfAbsent(kind, place));
            visits.add(new Visit(
                    id,
                    kind == ActKind.SPRINKLE ? ActKind.TURN : kind,
                    Timetable.numberIn(id),
                    moment(act).toInstant()));
        }
        if (visits.isEmpty()) throw plan.refused("acts", "must name at least one act; take the file from a copy");
        return new PlanTimes(grainKg, visits, places);
    }

    /**
     * What a kept plan expected in the end.
     *
     * @param maltKg on the scale, kg
     */
    public record Expected(double grainKg, double maltKg, double colourEbc) {}

    /** Reads it from the document a batch keeps. */
    public static Expected expected(Path file, SavedBatch batch) throws StoreException {
        JsonBlock plan = JsonBlock.root(file, batch.planJson(), "plan").block("plan");
        return new Expected(
                plan.number("rawGrainKg", 0.001, 2000),
                plan.number("scaleMaltKg", 0.001, 2000),
                plan.number("colourEbc", 0, 3000));
    }

    private static OffsetDateTime moment(JsonBlock act) throws StoreException {
        try {
            return OffsetDateTime.parse(act.text("startsAt"));
        } catch (DateTimeParseException wrong) {
            throw act.refused("startsAt", "is not a moment such as 2031-03-29T19:00:00+01:00; correct it");
        }
    }
}
