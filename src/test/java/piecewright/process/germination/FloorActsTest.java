package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static piecewright.process.germination.FloorFixture.grown;

import org.junit.jupiter.api.Test;
import piecewright.grain.GrainKind;
import piecewright.process.GrowthState;
import piecewright.process.PieceState;

class FloorActsTest {
    /** Judgement of the model: half the warmth over the air goes. */
    @Test
    void turningTakesHalfTheWarmth() {
        assertEquals(17, FloorActs.turned(grown(44, 20, 0.4), 14).grainC(), 1e-12);
    }

    /** By hand, mass balance: 7 kg of dry matter from 40 to 42 % take 0.40 kg. */
    @Test
    void sprinklingTakesWhatTheBalanceSays() {
        var mass = new piecewright.process.GrainMass(7, 7, 7 * 0.40 / 0.60);
        assertEquals(0.402, FloorActs.sprinklingKg(mass, 0.42 / 0.58), 0.001);
        assertEquals(0, FloorActs.sprinklingKg(mass, 0.5));
        PieceState before = grown(40, 15, 0.4);
        PieceState after = FloorActs.sprinkled(before, 0.25);
        assertEquals(0.25, after.mass().waterKg() - before.mass().waterKg(), 1e-12);
        assertEquals(0.25, after.ledgers().water().sprinkledKg(), 1e-12);
        assertEquals(before.mass().dryMatterKg(), after.mass().dryMatterKg());
    }

    /** Judgement of the model: .6 % a day, at most 5 %, wheat seven tenths, dead corns none. */
    @Test
    void rootletsFollowTheRule() {
        assertEquals(0.03, FloorActs.rootletsFraction(5, GrainKind.BARLEY, 1), 1e-12);
        assertEquals(0.05, FloorActs.rootletsFraction(12, GrainKind.BARLEY, 1), 1e-12);
        assertEquals(0.021, FloorActs.rootletsFraction(5, GrainKind.WHEAT, 1), 1e-12);
        assertEquals(0.0285, FloorActs.rootletsFraction(5, GrainKind.BARLEY, 0.95), 1e-12);
    }

    /** By hand: rootlets leave with their share of water, moisture stays. */
    @Test
    void derootingKeepsTheMoisture() {
        PieceState before = grown(5, 30, 0.8).withGrowth(new GrowthState(0.8, 5));
        PieceState after = FloorActs.derooted(before, GrainKind.BARLEY, 1);
        assertEquals(4.4 * 0.97, after.mass().dryMatterKg(), 1e-12);
        assertEquals(5, after.mass().moisture().wetBasisPercent(), 1e-9);
        assertEquals(4.4 * 0.03, after.ledgers().dryMatter().rootletsKg(), 1e-12);
        assertEquals(4.4 * 0.03 * 5 / 95, after.ledgers().water().removedKg(), 1e-12);
    }

    @Test
    void handlingTakesAShareOfBoth() {
        PieceState before = grown(44, 15, 0.4);
        PieceState after = FloorActs.handled(before, 0.01);
        assertEquals(0.99 * before.mass().totalKg(), after.mass().totalKg(), 1e-12);
        assertEquals(0.044, after.ledgers().dryMatter().handlingKg(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> FloorActs.handled(before, 1));
        assertThrows(IllegalArgumentException.class, () -> FloorActs.handled(before, -0.1));
    }
}
