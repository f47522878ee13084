package piecewright.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import piecewright.assess.Counted;
import piecewright.assess.Interval;
import piecewright.assess.LotJudgement;
import piecewright.assess.Reason;
import piecewright.quantity.Moisture;

/** A judgement of a lot in sentences. */
public final class JudgementPage {
    /** Judgement: more corns than this nobody lays out. */
    private static final int MOST_CORNS = 800;

    private final QuantityFormat quantities;

    public JudgementPage(DisplayUnits units) {
        this(new QuantityFormat(units));
    }

    JudgementPage(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    public String page(String lot, LotJudgement judgement) {
        StringBuilder page = new StringBuilder();
        page.append(Paragraph.of(lot + ": ", verdict(judgement)));
        judgement.reasons().forEach(reason -> page.append(Paragraph.of("  - ", reason(reason))));
        judgement.nextTests().forEach(test -> page.append(Paragraph.of("  " + say("next") + " ", next(test))));
        boolean poison = judgement.reasons().stream()
                .anyMatch(reason -> reason instanceof Reason.Treated || reason instanceof Reason.SuspectSeed);
        if (!poison) page.append(Paragraph.of("  " + say("effects") + " ", effects(judgement.effects())));
        return page.toString();
    }

    public String verdict(LotJudgement judgement) {
        String day = judgement.retestOn().map(Object::toString).orElse(say("later-day"));
        return say("verdict." + Phrases.key(judgement.verdict()), day);
    }

    public String reason(Reason reason) {
        if (reason instanceof Reason.Growing growing) return growing(growing);
        if (reason instanceof Reason.Dormant dormant) {
            return say("dormant", counted(dormant.alive()), counted(dormant.awake()));
        }
        if (reason instanceof Reason.PerhapsAsleep young) {
            return say("perhaps-asleep", young.harvested().toString());
        }
        if (reason instanceof Reason.Untested) return say("untested");
        if (reason instanceof Reason.DishesDisagree dishes) {
            return say(
                    "dishes-disagree",
                    Integer.toString(dishes.rangeCorns()),
                    Integer.toString(dishes.toleratedCorns()));
        }
        if (reason instanceof Reason.WaterSensitive water) {
            return say(
                    "water-sensitive",
                    points(water.lost().lostFraction()),
                    interval(water.lost().interval()));
        }
        return hazard(reason);
    }

    private String hazard(Reason reason) {
        if (reason instanceof Reason.Treated) return say("treated");
        if (reason instanceof Reason.SuspectSeed suspect) {
            return say("suspect-seed", suspect.sign().key());
        }
        if (reason instanceof Reason.Spoilt spoilt)
            return say("spoilt", spoilt.sign().key());
        if (reason instanceof Reason.Ergot ergot) {
            return say(
                    "ergot",
                    hundredths(ergot.foundGPerKg()),
                    hundredths(ergot.limitGPerKg()),
                    ergot.since().toString());
        }
        if (reason instanceof Reason.Slow slow) return say("slow", plain(slow.indexRatio()));
        if (reason instanceof Reason.Broken broken) return say("broken", quantities.percent(broken.brokenFraction()));
        if (reason instanceof Reason.Damp damp) {
            return say("damp", quantities.moisture(new Moisture(damp.wetBasisFraction())));
        }
        return say("treatment-unknown");
    }

    private String growing(Reason.Growing growing) {
        boolean above = growing.counted().shareFraction() >= growing.neededFraction();
        String sure = (growing.certain() ? "surely-" : "not-surely-") + (above ? "above" : "below");
        return say(
                "growing",
                counted(growing.counted()),
                interval(growing.counted().wilson()),
                say("growing." + sure, quantities.percent(growing.neededFraction())));
    }

    public String next(LotJudgement.NextTest test) {
        String corns = Integer.toString(test.corns());
        return test.corns() > MOST_CORNS
                ? say("next.many." + Phrases.key(test.kind()), Integer.toString(MOST_CORNS / 2), corns)
                : say("next." + Phrases.key(test.kind()), corns);
    }

    public String effects(LotJudgement.PlanEffects effects) {
        String rests = effects.longerRestHours() > 0
                ? say("effects.longer-rests", plain(effects.longerRestHours()))
                : say("effects.usual-rests");
        String are = say(
                "effects.are",
                rests,
                quantities.percent(effects.deadFraction()),
                say("mould." + Phrases.key(effects.mould())));
        return effects.coolerK() > 0
                ? are + " " + say("effects.cooler", quantities.temperatureStep(effects.coolerK()))
                : are;
    }

    private static String say(String key, String... arguments) {
        return Phrases.say("judge." + key, arguments);
    }

    private static String counted(Counted counted) {
        return say("counted", Integer.toString(counted.found()), Integer.toString(counted.corns()));
    }

    private static String interval(Interval interval) {
        return say("interval", points(interval.lowFraction()), points(interval.highFraction()));
    }

    private static String points(double fraction) {
        return plain(100 * fraction);
    }

    private static String hundredths(double figure) {
        return BigDecimal.valueOf(figure)
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String plain(double figure) {
        double tenths = Math.rint(figure * 10) / 10;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
