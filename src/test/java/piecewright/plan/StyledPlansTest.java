package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import piecewright.grain.GrainKind;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.Styled.Family;
import piecewright.plan.StyledPlans.Case;
import piecewright.process.germination.Heap;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.MaltStyle;
import piecewright.style.WetCouchSchedule;

/** That the campaign over seeded households holds every style and grain, and what must hold of wet couches and ovens. */
class StyledPlansTest {
    /** Judgement: a tenth of a point of colour, which nobody measures twice alike. */
    private static final double UNSEEN_EBC = 0.1;
    /** Judgement: what the quick form of a heap may be out. */
    private static final double HEAP_SLACK_K = 0.3;

    private static List<Case> heaped() {
        return StyledPlans.planned().stream()
                .filter(one -> StyledPlans.has(one.plan(), ActKind.HEAP))
                .toList();
    }

    private static List<Case> ovens() {
        return Stream.concat(StyledPlans.planned(Family.STEWED).stream(), StyledPlans.planned(Family.ROASTED).stream())
                .toList();
    }

    /** Of 500 households 200 plans of the floor, 40 of the hot couch, 40 stewed, 60 roasted, and 20 with a wet couch. */
    @Test
    void everyFamilyOfStylesIsAmongThePlans() {
        Map<Family, Double> least = new EnumMap<>(Map.of(
                Family.FLOOR, 0.4,
                Family.HEAPED, 0.08,
                Family.COUCHED, 0.08,
                Family.STEWED, 0.08,
                Family.ROASTED, 0.12));
        int all = StyledPlans.all().size();
        least.forEach((family, share) -> {
            int planned = StyledPlans.planned(family).size();
            assertTrue(planned >= share * all, family + ": " + planned + " of " + all);
        });
        assertTrue(heaped().size() >= 0.04 * all, "wet couches: " + heaped().size() + " of " + all);
    }

    /** Of 500 households ten plans of each style but black, twenty of each grain. */
    @Test
    void everyStyleAndGrainIsAmongThePlans() {
        Map<String, Integer> styles = new TreeMap<>();
        Map<GrainKind, Integer> grains = new EnumMap<>(GrainKind.class);
        for (Case one : StyledPlans.planned()) {
            styles.merge(one.request().style().key(), 1, Integer::sum);
            grains.merge(one.request().lot().kind(), 1, Integer::sum);
        }
        int all = StyledPlans.all().size();
        for (Family family : Family.values()) {
            for (MaltStyle style : Styled.styles(family)) {
                assertTrue(styles.getOrDefault(style.key(), 0) >= 0.02 * all, style.key() + " in " + styles);
            }
        }
        for (GrainKind kind : GrainKind.values()) {
            assertTrue(grains.getOrDefault(kind, 0) >= 0.04 * all, kind + " in " + grains);
        }
    }

    /** Judgement of the style files, core no warmer than 22 or 25 °C, and 8 to 48 h in all. */
    @Test
    void aWetCouchStaysCoolAndIsSpreadInTime() {
        for (Case one : heaped()) {
            WetCouchSchedule wet = one.request().style().couches().wet().orElseThrow();
            double coreC = one.hottest().wetCouchC() + Heap.CORE_OVER_MEAN_K;
            assertTrue(coreC <= wet.warmestCoreC() + HEAP_SLACK_K, one + ": " + coreC);
            Act heap = StyledPlans.first(one.plan(), ActKind.HEAP);
            Act spread = StyledPlans.first(one.plan(), ActKind.FLOOR);
            double hours = Duration.between(heap.startsAt(), spread.startsAt()).toMinutes() / 60.0;
            boolean inTime =
                    hours >= wet.hours().lowHours() && hours <= wet.hours().highHours();
            assertTrue(inTime, one + ": " + hours);
        }
    }

    /** Practice, ends sourced: 18 h at most between looks. */
    @Test
    void somebodyLooksIntoAWetCouchTwiceADay() {
        for (Case one : heaped()) {
            Instant last = StyledPlans.first(one.plan(), ActKind.HEAP).startsAt();
            for (Act act : one.plan().acts()) {
                if (act.kind() != ActKind.LOOK && act.kind() != ActKind.FLOOR) continue;
                Duration gap = Duration.between(last, act.startsAt());
                assertTrue(gap.compareTo(Duration.ofHours(18)) <= 0, one.told(act) + " after " + gap);
                last = act.startsAt();
            }
        }
    }

    /** Attendance is a guard: one and the same person from the first minute to the last, by day. */
    @Test
    void everyStewAndRoastLiesInOnePersonsHours() {
        for (Case one : ovens()) {
            Plan plan = one.plan();
            Availability hours = Availability.of(
                    one.request().house(), plan.startsAt(), plan.subject().readyAt());
            List<Act> blocks =
                    plan.acts().stream().filter(act -> act.inner().isPresent()).toList();
            boolean stews = one.family() == Family.STEWED;
            assertTrue(blocks.size() >= (stews ? 2 : 1), one + ": " + blocks.size());
            for (Act block : blocks) {
                Instant until = hours.workableUntil(block.startsAt()).orElse(Instant.MIN);
                assertTrue(!until.isBefore(block.endsAt()), one.told(block));
            }
        }
    }

    @Test
    void noOvenIsAskedForMoreThanAKitchenMayOrItsDialHas() {
        for (Case one : ovens()) {
            for (Act act : one.plan().acts()) {
                List<InnerStep> steps = act.inner().map(inner -> inner.steps()).orElse(List.of());
                for (InnerStep step : steps) {
                    assertTrue(step.ovenC().orElse(0) <= OvenLimit.CEILING_C, one.told(act));
                    double dialC = step.dialC().orElse(100);
                    assertTrue(dialC >= 50 && dialC <= 240, one.told(act) + " at " + dialC);
                }
            }
        }
    }

    @Test
    void greenMaltGoesFromTheStewStraightIntoTheKiln() {
        for (Case one : StyledPlans.planned(Family.STEWED)) {
            Act stew = StyledPlans.first(one.plan(), ActKind.STEW);
            Act load = StyledPlans.first(one.plan(), ActKind.LOAD);
            assertEquals(stew.endsAt(), load.startsAt(), one.toString());
        }
    }

    @Test
    void aColourOutsideTheStyleIsSaid() {
        List<String> unsaid = new ArrayList<>();
        int inStyle = 0;
        for (Case one : StyledPlans.planned()) {
            var colour = one.request().style().finish().colour();
            double ebc = one.plan().outcome().finished().kiln().colourEbc();
            boolean off = ebc < colour.lowEbc() - UNSEEN_EBC || ebc > colour.highEbc() + UNSEEN_EBC;
            if (!off) inStyle++;
            boolean said = one.plan().findings().stream()
                    .anyMatch(finding ->
                            finding instanceof Finding.OffStyle told && told.quantity() == Finding.Quantity.COLOUR_EBC);
            if (off != said) unsaid.add(one + ": " + ebc);
        }
        assertEquals(List.of(), unsaid);
        int planned = StyledPlans.planned().size();
        assertTrue(inStyle >= 0.8 * planned, "in style: " + inStyle + " of " + planned);
    }
}
