package piecewright.text;

import java.util.Locale;
import piecewright.assess.Counted;
import piecewright.assess.Interval;
import piecewright.assess.LotJudgement;
import piecewright.assess.Reason;
import piecewright.quantity.Moisture;

/** A judgement of a lot in sentences. */
public final class JudgementPage {
    private final QuantityFormat quantities;

    public JudgementPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public String page(String lot, LotJudgement judgement) {
        StringBuilder page = new StringBuilder();
        page.append(Paragraph.of(lot + ": ", verdict(judgement)));
        judgement.reasons().forEach(reason -> page.append(Paragraph.of("  - ", reason(reason))));
        judgement.nextTests().forEach(test -> page.append(Paragraph.of("  Next: ", next(test))));
        page.append(Paragraph.of("  For the plan: ", effects(judgement.effects())));
        return page.toString();
    }

    public String verdict(LotJudgement judgement) {
        return switch (judgement.verdict()) {
            case MALT_IT -> "malt it.";
            case ONLY_MINOR_SHARE -> "only as a minor share.";
            case DO_NOT_MALT -> "do not malt it.";
            case WAIT_AND_RETEST ->
                "wait, and test again on "
                        + judgement.retestOn().map(Object::toString).orElse("a later day") + ".";
        };
    }

    public String reason(Reason reason) {
        if (reason instanceof Reason.Growing growing) return growing(growing);
        if (reason instanceof Reason.Dormant dormant) {
            return counted(dormant.alive()) + " live but only " + counted(dormant.awake())
                    + " grow: the lot is asleep, not dead. Keep it dry and warm for two weeks; do not buy more for it.";
        }
        if (reason instanceof Reason.PerhapsAsleep young) {
            return "Harvested on " + young.harvested() + ", it may only be asleep; a test for life tells.";
        }
        if (reason instanceof Reason.Untested) return "Nobody counted germination in 4 mL of water.";
        if (reason instanceof Reason.DishesDisagree dishes) {
            return "The dishes lie " + dishes.rangeCorns() + " corns apart; chance explains " + dishes.toleratedCorns()
                    + " (7 CFR 201.55). Count again.";
        }
        if (reason instanceof Reason.WaterSensitive water) {
            return points(water.lost().lostFraction()) + " points are lost in more water ("
                    + interval(water.lost().interval()) + "): rest longer between soaks.";
        }
        return hazard(reason);
    }

    private String hazard(Reason reason) {
        if (reason instanceof Reason.Treated) {
            return "Treated seed is poison and washing does not help: no food, no feed, no plan.";
        }
        if (reason instanceof Reason.SuspectSeed suspect) {
            return "It is " + suspect.sign().key() + ": taken as treated seed. No plan.";
        }
        if (reason instanceof Reason.Spoilt spoilt) {
            return "It is " + spoilt.sign().key() + ": mould poisons survive malting and boiling. The European Union's"
                    + " limit for DON in raw cereals was 1250 µg/kg and was lowered on 1 July 2024; local rules go"
                    + " first, and only a laboratory can tell.";
        }
        if (reason instanceof Reason.Ergot ergot) {
            return "Ergot: " + plain(ergot.foundGPerKg()) + " g/kg; the European Union's limit is "
                    + plain(ergot.limitGPerKg()) + " g/kg since " + ergot.since()
                    + ". Pick the bodies out; local rules go first.";
        }
        if (reason instanceof Reason.Slow slow) {
            return "Germination index " + plain(slow.indexRatio()) + ": the corns come late; 7 is usual.";
        }
        if (reason instanceof Reason.Broken broken) {
            return quantities.percent(broken.brokenFraction()) + " are broken or peeled; over 5 % they rot.";
        }
        if (reason instanceof Reason.Damp damp) {
            return "At " + quantities.moisture(new Moisture(damp.wetBasisFraction())) + " it is too damp to keep.";
        }
        return "Nobody knows whether the seed was treated: ask before it gets wet.";
    }

    private String growing(Reason.Growing growing) {
        Interval wilson = growing.counted().wilson();
        String limit = quantities.percent(growing.neededFraction());
        boolean above = growing.counted().shareFraction() >= growing.neededFraction();
        String sure = growing.certain()
                ? ", surely " + (above ? "at least " : "less than ") + limit + "."
                : ", yet not surely " + (above ? "at least " : "less than ") + limit + ".";
        return counted(growing.counted()) + " grow (95 %: " + interval(wilson) + ")" + sure;
    }

    public String next(LotJudgement.NextTest test) {
        String kind = switch (test.kind()) {
            case ENERGY -> "germination in 4 mL";
            case WATER_SENSITIVITY -> "germination in 8 mL";
            case VIABILITY -> "life, by peroxide or tetrazolium";
        };
        return kind + ", " + test.corns() + " corns in all.";
    }

    public String effects(LotJudgement.PlanEffects effects) {
        String rests = effects.longerRestHours() > 0
                ? "air rests " + plain(effects.longerRestHours()) + " h longer, "
                : "usual air rests, ";
        return rests + quantities.percent(effects.deadFraction()) + " ungerminated, risk of mould in a warm heap "
                + effects.mould().name().toLowerCase(Locale.ROOT) + ".";
    }

    private static String counted(Counted counted) {
        return counted.found() + " of " + counted.corns();
    }

    private String interval(Interval interval) {
        return points(interval.lowFraction()) + " to " + points(interval.highFraction()) + " %";
    }

    private static String points(double fraction) {
        return plain(100 * fraction);
    }

    private static String plain(double figure) {
        double tenths = Math.rint(figure * 10) / 10;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }
}
