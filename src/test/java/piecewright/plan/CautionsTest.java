package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.LotTraits;
import piecewright.grain.Treatment;

/** Each danger stands where a hand meets it. */
class CautionsTest {
    private static Set<Caution> at(GrainKind grain, ActKind kind, double massKg, double setC) {
        return Set.copyOf(new Cautions(lot(grain, Treatment.UNTREATED)).at(kind, 1, massKg, setC));
    }

    private static GrainLot lot(GrainKind grain, Treatment treatment) {
        GrainLot like = Households.barley();
        return new GrainLot(
                like.name(), grain, like.moisture(), like.dishes(), like.size(), treatment, LotTraits.unknown());
    }

    /** Hazards of the craft by the act they hurt at; common practice and public guidance, no one source. */
    @ParameterizedTest
    @CsvSource(textBlock = """
                    DUST,                        SOAK DEROOT
                    ALLERGENS,                   DEROOT
                    RAW_GREEN_MALT,              HEAP FLOOR PACK STEW LOAD
                    CARBON_DIOXIDE,              HEAP LOOK FLOOR
                    COUCH_GAS,                   PACK CHECK BREAK
                    MOULD,                       TURN SPRINKLE WITHER BREAK
                    ELECTRICITY_NEAR_WET_GRAIN,  STEW LOAD
                    COMBUSTION_GASES,            LOAD
                    FIRE,                        LOAD RAISE CURE OFF
                    HOT_SURFACES,                STEW OFF ROAST
                    ROASTING_FIRE,               ROAST
                    ROASTING_SMOKE,              ROAST
                    LIFTING,                     DRAIN HEAP FLOOR PACK BREAK STEW LOAD
                    """)
    void everyDangerStandsAtItsActs(Caution caution, String acts) {
        Set<ActKind> expected = List.of(acts.split(" ")).stream()
                .map(ActKind::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(ActKind.class)));
        Set<ActKind> found = EnumSet.noneOf(ActKind.class);
        for (ActKind kind : ActKind.values()) {
            if (at(GrainKind.BARLEY, kind, 20, 80).contains(caution)) found.add(kind);
        }
        assertEquals(expected, found);
    }

    @Test
    void grainsBringTheirOwn() {
        assertTrue(at(GrainKind.RYE, ActKind.SOAK, 5, 10).containsAll(Set.of(Caution.ERGOT, Caution.PACKS_DENSE)));
        assertTrue(at(GrainKind.OATS, ActKind.SOAK, 5, 10).contains(Caution.OATS_FLOAT));
        assertFalse(at(GrainKind.BARLEY, ActKind.FLOOR, 5, 10).contains(Caution.PACKS_DENSE));
        List<Caution> unknown = new Cautions(lot(GrainKind.BARLEY, Treatment.UNKNOWN)).at(ActKind.SOAK, 1, 5, 10);
        assertEquals(Caution.UNKNOWN_TREATMENT, unknown.get(0));
    }

    @Test
    void lowHeatAndLightPiecesAreNotWarnedOf() {
        assertFalse(at(GrainKind.BARLEY, ActKind.RAISE, 5, 60).contains(Caution.FIRE));
        assertFalse(at(GrainKind.BARLEY, ActKind.DRAIN, 14, 10).contains(Caution.LIFTING));
    }
}
