package piecewright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.ObjectMapper;

/** A plan written by hand, good as it stands, and each rule of the oracle broken in it once. */
class OracleTest {
    private static final Norms NORMS = new Norms(20, 0.5, 0.42);

    /** Out of the house on weekdays from 07:30 to 17:30; the clocks go forward on Sunday 28 March 2027 at 02:00. */
    private static final String HOUSE = """
            { "timeZone": "Europe/Berlin",
              "people": [ { "name": "somebody",
                "week": { "weekdays": ["06:00-07:30", "17:30-23:00"], "saturday": ["07:00-24:00"],
                          "sunday": ["00:30-02:30", "07:00-23:00"] },
                "exceptions": [ { "date": "2027-03-22", "hours": [] } ] } ],
              "nightActs": { "most": 1, "from": "23:30", "until": "05:30" },
              "kit": { "heaters": [ { "name": "kiln", "holdsSetPoint": true, "safeUnattended": false },
                                    { "name": "fire", "holdsSetPoint": false },
                                    { "name": "safe kiln", "holdsSetPoint": true, "safeUnattended": true } ] } }
            """;

    private static final Home HOME = HouseText.home(new ObjectMapper().readTree(HOUSE));

    private static Told.Step step(String id, String kind, String at, int minutes, double kg, double moisture) {
        Told.Found expect = new Told.Found(kg, moisture, 15, OptionalDouble.of(0.7));
        OptionalDouble none = OptionalDouble.empty();
        return new Told.Step(id, kind, Instant.parse(at), minutes, "kiln", none, none, expect);
    }

    private static Told.Step set(Told.Step step, double c) {
        return new Told.Step(
                step.id(),
                step.kind(),
                step.at(),
                step.minutes(),
                step.place(),
                OptionalDouble.of(c),
                step.hottestC(),
                step.expect());
    }

    private static List<Told.Step> good() {
        return List.of(
                step("soak", "soak", "2027-03-15T17:00:00Z", 20, 1.000, 0.12),
                step("drain", "drain", "2027-03-16T05:30:00Z", 15, 1.600, 0.45),
                step("spread", "floor", "2027-03-16T17:00:00Z", 15, 1.600, 0.4501),
                step("turn", "turn", "2027-03-18T17:00:00Z", 10, 1.560, 0.445),
                set(step("load", "load", "2027-03-19T20:00:00Z", 30, 1.540, 0.44), 50),
                set(step("cure", "cure", "2027-03-20T17:00:00Z", 10, 0.920, 0.065), 82),
                step("off", "off", "2027-03-20T20:00:00Z", 15, 0.890, 0.04),
                step("deroot", "deroot", "2027-03-21T08:00:00Z", 30, 0.860, 0.04));
    }

    private static Case made(List<Told.Step> steps) {
        List<Told.Stretch> phases = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Instant until = i + 1 < steps.size() ? steps.get(i + 1).at() : Instant.parse("2027-04-20T08:00:00Z");
            phases.add(new Told.Stretch(
                    steps.get(i).id() + "-on", "any", steps.get(i).at(), until));
        }
        Told told = new Told(Instant.parse("2027-04-20T08:00:00Z"), 1.02, 0.85, 0.86, steps, phases);
        return new Case(HOME, NORMS, told, Optional.empty(), Set.of(), List.of());
    }

    private static List<Told.Step> with(int at, UnaryOperator<Told.Step> change) {
        List<Told.Step> steps = new ArrayList<>(good());
        steps.set(at, change.apply(steps.get(at)));
        return steps;
    }

    private static UnaryOperator<Told.Step> at(String instant) {
        return one -> new Told.Step(
                one.id(),
                one.kind(),
                Instant.parse(instant),
                one.minutes(),
                one.place(),
                one.setC(),
                one.hottestC(),
                one.expect());
    }

    private static UnaryOperator<Told.Step> found(double kg, double moisture, double grainC, double acrospire) {
        return one -> new Told.Step(
                one.id(),
                one.kind(),
                one.at(),
                one.minutes(),
                one.place(),
                one.setC(),
                one.hottestC(),
                new Told.Found(kg, moisture, grainC, OptionalDouble.of(acrospire)));
    }

    private static void broken(String rule, Case one) {
        List<Fault> faults = Oracle.faults(one);
        assertTrue(faults.stream().anyMatch(fault -> fault.rule().equals(rule)), rule + " in " + faults);
    }

    @Test
    void aGoodPlanIsGood() {
        assertEquals(List.of(), Oracle.faults(made(good())));
    }

    @Test
    void hoursAreAPersonsOwn() {
        broken("outside everybody's hours", made(with(3, at("2027-03-18T12:00:00Z"))));
        broken("outside everybody's hours", made(with(3, at("2027-03-18T06:25:00Z"))));
        broken("outside everybody's hours", made(with(7, at("2027-03-22T17:00:00Z"))));
        Case busy = made(good());
        List<Case.Busy> others =
                List.of(new Case.Busy(Instant.parse("2027-03-18T17:05:00Z"), Instant.parse("2027-03-18T17:30:00Z")));
        broken("one person needed twice", new Case(HOME, NORMS, busy.told(), Optional.empty(), Set.of(), others));
    }

    @Test
    void asManyNightsAsAreAllowedAndNoMore() {
        List<Told.Step> one = with(3, at("2027-03-19T01:00:00Z"));
        assertEquals(List.of(), Oracle.faults(made(one)));
        one.set(2, at("2027-03-17T01:00:00Z").apply(one.get(2)));
        broken("more nights than allowed", made(one));
    }

    /** In Berlin 02:00 is followed by 03:00 on that Sunday: hours until 02:30 end before it. IANA time zones. */
    @ParameterizedTest
    @CsvSource({"2027-03-27T23:35:00Z,true", "2027-03-28T00:50:00Z,true", "2027-03-28T01:00:00Z,false"})
    void hoursThatEndInAHourThatIsSkippedEndWhereItBegins(String minute, boolean there) {
        assertEquals(there, HOME.anybodyThere(Instant.parse(minute)));
    }

    /** On 31 October 2027 the hour from 02:00 to 03:00 comes twice: hours until 02:30 last until its second half. */
    @ParameterizedTest
    @CsvSource({
        "2027-10-30T22:30:00Z,true",
        "2027-10-31T00:20:00Z,true",
        "2027-10-31T01:20:00Z,true",
        "2027-10-31T01:30:00Z,false"
    })
    void hoursThatEndInAnHourThatComesTwiceLastUntilTheSecond(String minute, boolean there) {
        assertEquals(there, HOME.anybodyThere(Instant.parse(minute)));
    }

    @Test
    void heatIsNotLeftAlone() {
        broken("heat with nobody there", made(with(5, at("2027-03-20T05:30:00Z"))));
        broken("heat with nobody there", made(with(4, one -> set(one, 65))));
        assertEquals(List.of(), Oracle.faults(made(with(4, one -> set(one, 60)))));
        assertEquals(List.of(), Oracle.faults(made(with(4, in("safe kiln", 65)))));
        broken("heat with nobody there", made(with(4, in("fire", 40))));
    }

    private static UnaryOperator<Told.Step> in(String heater, double c) {
        return one -> new Told.Step(
                one.id(), one.kind(), one.at(), 30, heater, OptionalDouble.of(c), one.hottestC(), one.expect());
    }

    @Test
    void nothingIsOrderedBeforeItIsGrown() {
        broken("loaded or packed ungrown", made(with(4, found(1.54, 0.44, 15, 0.11))));
        broken("spread unsoaked", made(with(2, found(1.6, 0.3, 15, 0))));
        List<Told.Step> steps = new ArrayList<>(good());
        steps.add(3, steps.remove(4));
        broken("out of order", made(steps));
        List<Told.Step> twice = new ArrayList<>(good());
        twice.add(1, step("again", "soak", "2027-03-15T19:00:00Z", 20, 1, 0.12));
        broken("soak and drain do not alternate", made(twice));
    }

    @Test
    void timesAreOneAfterTheOther() {
        broken("begins before the last one is over", made(with(5, at("2027-03-19T20:00:00Z"))));
        broken("not in time order", made(with(3, at("2027-03-16T16:00:00Z"))));
        Case plan = made(good());
        Optional<Instant> now = Optional.of(Instant.parse("2027-03-16T05:31:00Z"));
        broken("a step before now", new Case(HOME, NORMS, plan.told(), now, Set.of("soak"), List.of()));
        assertEquals(
                List.of(), Oracle.faults(new Case(HOME, NORMS, plan.told(), now, Set.of("soak", "drain"), List.of())));
        broken("the same step twice", made(with(3, one -> good().get(2))));
    }

    @Test
    void weightsAreOneBalance() {
        broken("dry matter from nothing", made(with(3, found(1.56, 0.42, 15, 0.6))));
        broken("heavier out of the water", made(with(3, found(1.61, 0.47, 15, 0.6))));
        broken("two weights of the same malt", made(with(7, found(0.85, 0.04, 15, 0.7))));
    }

    @Test
    void noHeaterHoldsTwoBatches() {
        Told mine = made(good()).told();
        Told hours = made(with(4, at("2027-03-19T19:00:00Z"))).told();
        assertEquals(1, Sharing.faults(mine, Set.of(), hours).size());
        assertEquals(List.of(), Sharing.faults(mine, Set.of("load"), hours));
        assertEquals(
                List.of(),
                Sharing.faults(mine, Set.of(), made(with(4, in("fire", 40))).told()));
    }

    @Test
    void bedsStayCool() {
        broken("bed too warm", made(with(3, found(1.56, 0.445, 24.5, 0.6))));
        assertEquals(List.of(), Oracle.faults(made(with(3, found(1.56, 0.445, 23.9, 0.6)))));
    }

    @Test
    void phasesJoin() {
        Case plan = made(good());
        List<Told.Stretch> gap = new ArrayList<>(plan.told().phases());
        gap.remove(3);
        Told told = plan.told();
        Told apart = new Told(told.readyAt(), told.rawKg(), told.usefulKg(), told.scaleKg(), told.steps(), gap);
        broken("phases do not join", new Case(HOME, NORMS, apart, Optional.empty(), Set.of(), List.of()));
    }
}
