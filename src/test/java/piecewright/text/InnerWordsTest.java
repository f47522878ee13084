package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.plan.Setting;

class InnerWordsTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static InnerStep set(int minute, Kind kind, double ovenC, double grainC) {
        return new InnerStep(
                Duration.ofMinutes(minute),
                kind,
                OptionalDouble.of(ovenC),
                OptionalDouble.of(ovenC + 6),
                new Inside(grainC, 0.04, 3.2));
    }

    private static InnerStep plain(int minute, Kind kind, double grainC, double colourEbc) {
        return new InnerStep(Duration.ofMinutes(minute), kind, NONE, NONE, new Inside(grainC, 0.012, colourEbc));
    }

    private static Act block(ActKind kind, List<InnerStep> steps) {
        Act like = PlanSamples.act(kind, "oven.roast-2", Setting.at("oven"));
        return new Act(
                like.id(),
                like.kind(),
                like.startsAt(),
                like.work(),
                like.window(),
                like.setting(),
                like.expect(),
                like.cautions(),
                Optional.of(new InnerSchedule(2.145, 1.2, Duration.ofMinutes(12), 5, steps)));
    }

    private static Act roast() {
        return block(
                ActKind.ROAST,
                List.of(
                        set(0, Kind.PREPARE, 100, 15),
                        set(15, Kind.GOES_IN, 100, 15),
                        plain(30, Kind.STIR, 75.6, 3.2),
                        set(60, Kind.SET, 150, 98),
                        plain(98, Kind.SAMPLE, 148, 43.4),
                        plain(108, Kind.STOP, 149, 66),
                        plain(113, Kind.SAMPLE_AGAIN, 149, 77),
                        plain(118, Kind.LATEST, 149, 88),
                        plain(135, Kind.OVER, 15, 66)));
    }

    @Test
    void aRoastIsToldMinuteByMinute() {
        Wording wording = new Wording(DisplayUnits.metric(), PlanSamples.OSLO);
        assertEquals(
                List.of(
                        "+0  Set the dial to 106 °C for 100 °C in the empty oven; weigh and spread.",
                        "+15  In. Oven at 100 °C.",
                        "+30  Stir and level; 76 °C in the middle.",
                        "+60  Set the dial to 156 °C for 150 °C; the malt should read 98 °C by now.",
                        "+98  Pull a spoonful, crush, compare: about 43 EBC now, the middle at 148 °C. Out as soon as"
                                + " it matches.",
                        "+108  Planned end: about 66 EBC, the middle at 149 °C. Out, on to the cold tray, stir.",
                        "+113  Too pale so far? Sample again: about 77 EBC now, the middle at 149 °C.",
                        "+118  Never in the oven after this, whatever the sample says.",
                        "+135  Below 30 °C, weighed, closed up: about 66 EBC, 1.2 % moisture. Oven off."),
                wording.innerRows(roast()));
        assertEquals(
                "Minute by minute, for 2.145 kg in a layer 1.2 cm deep. The middle of the layer trails the oven by"
                        + " about 12 min. The oven may be off its dial by 5 °C: believe the thermometer in it.",
                wording.innerHead(roast().inner().orElseThrow()));
    }

    @Test
    void aStewIsSqueezedNotCompared() {
        Wording us = new Wording(DisplayUnits.us(), PlanSamples.OSLO);
        Act stew = block(ActKind.STEW, List.of(plain(140, Kind.SAMPLE, 70, 4), plain(185, Kind.STOP, 70, 4)));
        assertEquals(
                List.of(
                        "+140  Squeeze and cut ten kernels; 158 °F in the middle.",
                        "+185  Uncover: liquid by now, 158 °F in the middle. Spread it to dry at once."),
                us.innerRows(stew));
    }

    @Test
    void aPlannedEndBetweenMinutesIsToldAsATimerCounts() {
        Wording wording = new Wording(DisplayUnits.metric(), PlanSamples.OSLO);
        Inside inside = new Inside(164, 0.012, 131);
        InnerStep stop = new InnerStep(Duration.ofSeconds(90 * 60 + 9), Kind.STOP, NONE, NONE, inside);
        assertEquals(
                List.of("+90:09  Planned end: about 131 EBC, the middle at 164 °C. Out, on to the cold tray, stir."),
                wording.innerRows(block(ActKind.ROAST, List.of(stop))));
    }

    @Test
    void otherActsHaveNoMinutes() {
        Wording wording = new Wording(DisplayUnits.metric(), PlanSamples.OSLO);
        assertEquals(List.of(), wording.innerRows(PlanSamples.raise()));
    }
}
