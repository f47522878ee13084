package piecewright.store;

import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/**
 * A batch as it is kept between days.
 *
 * @param id made once at random; a copy of the file is the same batch
 * @param request what the plan was made from
 * @param planJson the document of {@link PlanJson}
 * @param calendarUids the calendar entry of each act, by act id
 * @param knownEntry the last journal entry the plan took into account, 0 for none
 * @param finishedAt when the batch was closed; empty while it is under way
 */
public record SavedBatch(
        UUID id,
        RequestTexts request,
        String planJson,
        Map<String, UUID> calendarUids,
        int knownEntry,
        Optional<Instant> finishedAt) {
    /** A batch under way whose plan knows no journal. */
    public SavedBatch(UUID id, RequestTexts request, String planJson, Map<String, UUID> calendarUids) {
        this(id, request, planJson, calendarUids, 0, Optional.empty());
    }

    public SavedBatch {
        Objects.requireNonNull(id);
        Objects.requireNonNull(request);
        Objects.requireNonNull(planJson);
        Objects.requireNonNull(finishedAt);
        calendarUids = Map.copyOf(calendarUids);
        if (knownEntry < 0) throw new IllegalArgumentException("knownEntry must be 0 or more: " + knownEntry);
    }

    /** The same batch, made from the same where it lies otherwise. */
    public SavedBatch withRequest(RequestTexts otherwise) {
        return new SavedBatch(id, otherwise, planJson, calendarUids, knownEntry, finishedAt);
    }

    /** The same batch, closed at this instant. */
    public SavedBatch finished(Instant at) {
        return new SavedBatch(id, request, planJson, calendarUids, knownEntry, Optional.of(at));
    }

    /**
     * @param styleKey key of the style
     * @param lotText text of the lot's file as it was read
     * @param houseText text of the house's file as it was read
     * @param wish amount and day in the words they were given, such as "finishedMaltKg" → "4"
     */
    public record RequestTexts(String styleKey, String lotText, String houseText, Map<String, String> wish) {
        public RequestTexts {
            Objects.requireNonNull(styleKey);
            Objects.requireNonNull(lotText);
            Objects.requireNonNull(houseText);
            wish = Map.copyOf(wish);
        }
    }
}
