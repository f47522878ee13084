package piecewright.app;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.app.MakePlan.Extras;
import piecewright.app.MakePlan.Made;
import piecewright.plan.Booking;
import piecewright.plan.Booking.KitKind;
import piecewright.plan.ModelParameters;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.PlanResult.NotPossible;
import piecewright.plan.PlanResult.Planned;
import piecewright.plan.Planner;

/** A wish larger than the kit, made in several equal batches one after the other or side by side. */
public final class InBatches {
    /** Judgement: nobody makes more batches for one wish. */
    private static final int MOST = 4;
    /** Judgement: where only the start is wished, the next batch starts within so many days of when a vessel is free. */
    private static final int MOST_DAYS = 14;

    private final MakePlan make;
    private final Planner planner = new Planner(ModelParameters.defaults());

    public InBatches(MakePlan make) {
        this.make = Objects.requireNonNull(make);
    }

    /**
     * The plans of the fewest batches that the kit holds, in the order they were planned: one where one will do, and the
     * refusal of one where no number will.
     */
    public List<Made> of(ReadWish wish, Extras extras) {
        Made whole = make.of(wish, extras);
        boolean tooLarge = whole.result() instanceof NotPossible not
                && not.obstacles().stream().anyMatch(Obstacle::ofSize);
        if (!tooLarge) return List.of(whole);
        for (int batches = 2; batches <= MOST; batches++) {
            Optional<List<Made>> parts = parts(wish, extras, batches);
            if (parts.isPresent()) return parts.get();
        }
        return List.of(whole);
    }

    private Optional<List<Made>> parts(ReadWish wish, Extras extras, int batches) {
        PlanRequest whole = wish.request();
        Amount amount = share(whole.amount(), batches);
        List<Booking> besides = new ArrayList<>(whole.besides());
        List<Made> parts = new ArrayList<>();
        When when = whole.when();
        for (int part = 1; part <= batches; part++) {
            Extras tests = part == 1 ? extras : new Extras(extras.colourEbc(), extras.open(), Optional.empty());
            PlanRequest request = whole.withAmount(amount).beside(besides);
            Optional<Made> made = soonest(wish, request, when, tests);
            if (made.isEmpty()) return Optional.empty();
            parts.add(made.get());
            Booking taken = booking(made.get(), part, batches);
            besides.add(taken);
            when = next(when, taken, whole.house().zone());
        }
        return Optional.of(parts);
    }

    private static Amount share(Amount amount, int batches) {
        return amount instanceof Amount.RawGrain raw
                ? new Amount.RawGrain(raw.grainKg() / batches)
                : new Amount.FinishedMalt(((Amount.FinishedMalt) amount).maltKg() / batches);
    }

    /** By the day wished; or started on the first day from then on that will do. */
    private Optional<Made> soonest(ReadWish wish, PlanRequest request, When when, Extras extras) {
        int days = when instanceof When.StartOn && !request.besides().isEmpty() ? MOST_DAYS : 1;
        for (int later = 0; later < days; later++) {
            When tried = when instanceof When.StartOn start
                    ? new When.StartOn(start.day().plusDays(later))
                    : when;
            MakePlan patience = later == 0 ? make : make.hurried();
            Made made = patience.of(wish.withRequest(request.withWhen(tried)), extras);
            if (made.result() instanceof Planned) return Optional.of(made);
            boolean hopeless =
                    ((NotPossible) made.result()).obstacles().stream().anyMatch(Obstacle::ofSize);
            if (hopeless) return Optional.empty();
        }
        return Optional.empty();
    }

    private static When next(When when, Booking taken, ZoneId zone) {
        if (!(when instanceof When.StartOn)) return when;
        LocalDate free = taken.kit().stream()
                .filter(kit -> kit.kind() == KitKind.VESSELS)
                .map(kit -> LocalDate.ofInstant(kit.stretch().until(), zone))
                .findFirst()
                .orElseThrow();
        return new When.StartOn(free);
    }

    private Booking booking(Made made, int part, int batches) {
        PlanRequest request = made.wish().request();
        Plan plan = planned(made.result());
        String name = plan.subject().title() + " – " + plan.subject().lot() + " (" + part + "/" + batches + ")";
        return planner.booking(name, request, plan.outcome().rawGrainKg(), plan.acts())
                .orElseThrow(() -> new IllegalStateException("no kit for a plan just made: " + name));
    }

    private static Plan planned(PlanResult result) {
        return ((Planned) result).plan();
    }
}
