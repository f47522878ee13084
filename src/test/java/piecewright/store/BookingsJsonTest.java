package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking;
import piecewright.plan.Booking.Taken;

class BookingsJsonTest {
    private static final Path FILE = Path.of("spring.json");
    private static final Stretch MORNING =
            new Stretch(Instant.parse("2030-05-06T06:00:00Z"), Instant.parse("2030-05-06T06:30:00Z"));

    @Test
    void whatIsWrittenIsReadBack() throws StoreException {
        List<Booking> bookings = List.of(new Booking(
                "Pale – the \"good\" lot",
                List.of(MORNING),
                List.of(
                        Taken.vessels("garage", 2, MORNING),
                        Taken.trays("hall", 0.35, MORNING),
                        Taken.box("cooler", MORNING),
                        Taken.heater("oven", MORNING))));
        assertEquals(bookings, BookingsJson.read(FILE, BookingsJson.write(bookings)));
    }

    @Test
    void anUnknownKindIsRefusedByName() {
        String text = BookingsJson.write(List.of(new Booking("a", List.of(), List.of(Taken.box("b", MORNING)))))
                .replace("\"box\"", "\"boat\"");
        String said = assertThrows(StoreException.class, () -> BookingsJson.read(FILE, text))
                .getMessage();
        assertEquals(true, said.contains("kind"), said);
    }
}
