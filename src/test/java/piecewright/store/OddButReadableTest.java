package piecewright.store;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.sheet.BenchSheet;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanPage;
import piecewright.text.Wording;

/**
 * Damaged files that could still be read make a plan or reasons why not, and papers of it. The whole campaign:
 * {@code mvn -q test -Dtest=OddButReadableTest -DoddWishes=2000}.
 */
class OddButReadableTest {
    private static final long SEED = 20_310_505;
    private static final int CASES = Integer.getInteger("oddWishes", 12);
    private static final Path LOT = Path.of("demo-data/lots/two-row-barley.json");
    private static final Path HOUSE = Path.of("demo-data/houses/cool-garage.json");
    private static final Path STYLE = Path.of("schedules/pale.json");

    private final Random random = new Random(SEED);
    private final Damage damage = new Damage(random);

    private interface Parsing<T> {
        T parse(Path file, String text) throws StoreException;
    }

    @Test
    void whatWasReadIsPlannedOrRefusedWithReasons() throws IOException, StoreException {
        Planner planner = new Planner(ModelParameters.defaults());
        int planned = 0;
        for (int i = 0; i < CASES; i++) {
            PlanRequest request = new PlanRequest(
                    random.nextInt(3) > 0 ? StyleFile.read(STYLE) : odd(STYLE, StyleFile::parse),
                    random.nextInt(3) > 0 ? LotFile.read(LOT) : odd(LOT, LotFile::parse),
                    random.nextInt(4) == 0 ? HouseFile.read(HOUSE) : odd(HOUSE, HouseFile::parse),
                    amount(),
                    new When.ReadyBy(LocalDate.of(2027, 4, 20 + random.nextInt(10)), LocalDate.of(2027, 3, 1)));
            try {
                if (papers(request, planner.plan(request))) planned++;
            } catch (RuntimeException | StackOverflowError fault) {
                throw new AssertionError("case " + i + ": " + request, fault);
            }
        }
        assertTrue(planned > CASES / 4, "most must be planned: " + planned);
    }

    private Amount amount() {
        return random.nextBoolean()
                ? new Amount.FinishedMalt(4)
                : new Amount.RawGrain(Math.pow(10, random.nextInt(6) - 2));
    }

    private <T> T odd(Path good, Parsing<T> parsing) throws IOException {
        byte[] octets = Files.readAllBytes(good);
        Optional<T> read = Optional.empty();
        while (read.isEmpty()) {
            try {
                read = Optional.of(parsing.parse(good, new String(damage.of(octets), StandardCharsets.UTF_8)));
            } catch (StoreException refused) {
                // that is what BadFilesTest is about
            }
        }
        return read.get();
    }

    /** Whether there was a plan; its papers, or the reasons, must have words. */
    private static boolean papers(PlanRequest request, PlanResult result) {
        DisplayUnits units = DisplayUnits.us();
        return result.match(
                planned -> {
                    Plan plan = planned.plan();
                    new PlanJson(new Wording(units, plan.subject().zone())).write(plan);
                    assertTrue(PlanPage.of(request, plan, units).length() > 100);
                    assertTrue(BenchSheet.of(request, plan, units, piecewright.sheet.Known.of(java.util.Map.of()))
                                    .length()
                            > 100);
                    return true;
                },
                not -> {
                    Wording wording = new Wording(units, request.house().zone());
                    List<String> reasons =
                            not.obstacles().stream().map(wording::obstacle).toList();
                    assertTrue(reasons.stream().noneMatch(String::isBlank));
                    return false;
                });
    }
}
