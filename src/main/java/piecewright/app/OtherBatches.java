package piecewright.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.house.House;
import piecewright.plan.Agenda;
import piecewright.plan.Booking;
import piecewright.plan.ModelParameters;
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
            SavedBatch saved = BatchFile.read(file);
            if (saved.finishedAt().isEmpty()) bookings.add(taken(house, file, saved));
        }
        return bookings;
    }

    private Booking taken(House house, Path file, SavedBatch saved) throws StoreException {
        ReadWish wish = ReadWish.of(file, saved, library);
        String itsHouse = wish.request().house().name();
        if (!itsHouse.equals(house.name())) {
            throw new StoreException(
                    file,
                    "is a batch of “" + itsHouse + "” and takes nothing of “" + house.name()
                            + "”; leave it out, or plan with its house");
        }
        Agenda agenda = AgendaReader.read(file, saved.planJson());
        String name = agenda.subject().title() + " – " + agenda.subject().lot();
        Optional<Booking> booking =
                planner.booking(name, wish.request(), PlanTimes.of(file, saved).grainKg(), agenda.acts());
        return booking.orElseThrow(
                () -> new StoreException(file, "its house has no kit that holds this batch any more; mend the house"));
    }
}
