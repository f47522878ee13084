package piecewright.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.app.files.EachFile;
import piecewright.house.House;
import piecewright.plan.Agenda;
import piecewright.plan.Booking;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.store.AgendaReader;
import piecewright.store.BatchFile;
import piecewright.store.PlanTimes;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** Batches in progress beside which another is planned: what they have taken of the hands and kit of a house. */
public final class OtherBatches {
    private final Planner planner = new Planner(ModelParameters.defaults());
    private final StyleLibrary library;

    public OtherBatches(StyleLibrary library) {
        this.library = library;
    }

    /**
     * What these batches take of this house, by their plans as they are kept; a finished one takes nothing, one of another
     * house is refused.
     */
    public List<Booking> taken(House house, List<Path> files) throws StoreException {
        List<Booking> bookings = new ArrayList<>();
        for (Path file : files) {
            Optional<UnderWay> underWay = underWay(file);
            if (underWay.isEmpty()) continue;
            UnderWay batch = underWay.get();
            if (!batch.isIn(house)) {
                throw new StoreException(
                        batch.file(),
                        "is a batch of “" + batch.wish().request().house().name() + "” and takes nothing of “"
                                + house.name() + "”; leave it out, or plan with its house");
            }
            bookings.add(taken(batch));
        }
        return bookings;
    }

    /**
     * The same of those among these batches that are made in this house; the others take nothing of it, and of those that
     * cannot be read nobody knows what they take.
     */
    public List<Booking> takenHere(House house, List<Path> files) {
        EachFile each = new EachFile();
        List<Booking> bookings = new ArrayList<>();
        for (Path file : files) {
            each.read(file, one -> underWay(one).filter(batch -> batch.isIn(house)))
                    .flatMap(batch -> batch)
                    .flatMap(batch -> each.read(file, one -> taken(batch)))
                    .ifPresent(bookings::add);
        }
        return bookings;
    }

    /** Whether a plan wants neither hands nor kit while these batches need them. */
    public boolean leavesAlone(PlanRequest request, Plan plan, List<Booking> taken) {
        if (taken.isEmpty()) return true;
        Optional<Booking> own = planner.booking("", request, plan.outcome().rawGrainKg(), plan.acts());
        return own.isPresent() && taken.stream().noneMatch(own.get()::meets);
    }

    private record UnderWay(Path file, SavedBatch saved, ReadWish wish) {
        boolean isIn(House house) {
            return wish.request().house().name().equals(house.name());
        }
    }

    private Optional<UnderWay> underWay(Path file) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        return saved.finishedAt().isPresent()
                ? Optional.empty()
                : Optional.of(new UnderWay(file, saved, ReadWish.of(file, saved, library)));
    }

    private Booking taken(UnderWay batch) throws StoreException {
        Agenda agenda = AgendaReader.read(batch.file(), batch.saved().planJson());
        String name = agenda.subject().title() + " – " + agenda.subject().lot();
        Optional<Booking> booking = planner.booking(
                name,
                batch.wish().request(),
                PlanTimes.of(batch.file(), batch.saved()).grainKg(),
                agenda.acts());
        return booking.orElseThrow(() -> new StoreException(
                batch.file(), "its house has no kit that holds this batch any more; mend the house"));
    }
}
