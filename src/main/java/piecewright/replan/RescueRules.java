package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.AcrospiresCounted;
import piecewright.journal.Report.Observed;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Sign;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.replan.Rescue.Rule;

/** What practice does when something went wrong: one method per thing that can. */
final class RescueRules {
    /** Judgement: practice, what was seen longer ago was dealt with. */
    private static final Duration LATELY = Duration.ofHours(36);
    /** Judgement: a drain so much later than planned ran long, hours. */
    private static final double LONG_HOURS = 1;
    /** Judgement: practice, wetter than this is over-wet, wet basis. */
    private static final double OVER_WET_FRACTION = 0.47;
    /** Judgement: a point under the aim is short of water, wet basis. */
    private static final double SHORT_FRACTION = 0.01;
    /** Judgement: practice, a bed warmer than this grows unevenly unless its style takes more, °C. */
    private static final double WARM_C = 20;
    /** Judgement: practice, a bed colder than this hardly grows, °C. */
    private static final double COLD_C = 10;
    /** Judgement: practice, half the corns differ by more than this share of the corn. */
    private static final double UNEVEN_FRACTION = 0.4;
    /** Judgement: three corns in ten out of the husk are many. */
    private static final double OVERGROWN_FRACTION = 0.3;
    /** Judgement: practice, over this while wetter than {@link #STILL_WET_FRACTION} malt stews, °C. */
    private static final double STEWS_C = 60;
    /** Judgement: a thermometer may be out by so much, K. */
    private static final double HOT_MARGIN_K = 3;
    /** Judgement: practice; drier malt takes the heat, wet basis. */
    private static final double STILL_WET_FRACTION = 0.15;

    /** Judgement: over this a hot couch is spread and turned, °C. */
    private static final double COUCH_HOT_C = 53;
    /** Judgement: eight kilned colours in ten lie within this of their plan; beyond it the load missed. */
    private static final double COLOUR_RATIO = 1.3;
    /** Judgement: an act this long overdue with nothing recorded deserves a word. */
    private static final Duration SILENT = Duration.ofHours(12);

    private final Batch batch;
    private final Where where;
    private final List<Visit> toCome;
    private final List<Rescue> rescues = new ArrayList<>();

    private RescueRules(Batch batch, Where where, List<Visit> toCome) {
        this.batch = batch;
        this.where = where;
        this.toCome = toCome;
    }

    /** What to do, worst first; toCome are the acts of the new plan, or of the old one when there is none. */
    static List<Rescue> of(Batch batch, Where where, List<Visit> toCome) {
        RescueRules rules = new RescueRules(batch, where, toCome);
        if (!where.account().visits().isEmpty()) {
            rules.whatWasSeen();
            rules.powerFailed();
            rules.steepRanLong();
            rules.waterIsOff();
            rules.stewsInTheKiln();
            rules.bedIsTooWarmOrCold();
            rules.growthIsUneven();
            rules.couchStallsOrRunsAway();
            rules.colourMissed();
            rules.takenOffWet();
        }
        rules.nothingWasRecorded();
        rules.rescues.sort(Comparator.comparing(Rescue::rule));
        return rules.rescues;
    }

    private ActKind phase() {
        return UnderWay.began(where.account().visits()).kind();
    }

    private boolean steeps() {
        return phase() == ActKind.SOAK || phase() == ActKind.DRAIN;
    }

    private boolean grows() {
        return phase() == ActKind.FLOOR || phase() == ActKind.WITHER;
    }

    private boolean heats() {
        return phase() == ActKind.LOAD || phase() == ActKind.RAISE || phase() == ActKind.CURE;
    }

    private double moisture() {
        return where.state().mass().moisture().wetBasisFraction();
    }

    private Optional<String> next(ActKind... kinds) {
        List<ActKind> wanted = List.of(kinds);
        return toCome.stream()
                .filter(visit -> wanted.isEmpty() || wanted.contains(visit.kind()))
                .map(Visit::id)
                .findFirst();
    }

    private void add(Rule rule, OptionalInt entry, Optional<String> actId) {
        if (rescues.stream().noneMatch(known -> known.rule() == rule)) {
            rescues.add(new Rescue(rule, entry, actId, OptionalDouble.empty()));
        }
    }

    private void addWater(Rule rule, Optional<String> actId, double waterKg) {
        if (rescues.stream().noneMatch(known -> known.rule() == rule)) {
            rescues.add(new Rescue(rule, OptionalInt.empty(), actId, OptionalDouble.of(waterKg)));
        }
    }

    private boolean lately(Entry entry) {
        return Duration.between(entry.at(), where.now()).compareTo(LATELY) <= 0;
    }

    private void whatWasSeen() {
        for (Entry entry : where.account().signs()) {
            if (!lately(entry) || !(entry.report() instanceof Observed observed)) continue;
            OptionalInt number = OptionalInt.of(entry.number());
            switch (observed.sign()) {
                case FOUL, MILKY_CORNS -> add(Rule.SPOILED, number, Optional.empty());
                case MUSTY, PINK -> add(Rule.MOULD_EVERYWHERE, number, Optional.empty());
                case SOUR -> {
                    if (steeps()) add(Rule.SOUR_WATER, number, next(ActKind.DRAIN, ActKind.SOAK));
                }
                case FUZZ -> add(Rule.SOME_FUZZ, number, next(ActKind.WITHER, ActKind.LOAD));
                case WET_FILM -> add(Rule.WET_FILM, number, next());
                case MATTED -> add(Rule.MATTED, number, next(ActKind.TURN));
                case DRY_ROOTS -> dry(number);
                case OVERGROWN -> add(Rule.OVERGROWN, number, next(ActKind.LOAD));
                case UNEVEN -> add(Rule.UNEVEN, number, next(ActKind.TURN));
                case KILN_BUSY -> {
                    if (grows() || phase() == ActKind.BREAK) {
                        add(Rule.KILN_NOT_READY, number, next(ActKind.WITHER, ActKind.LOAD));
                    }
                }
                case NOT_HEATING -> add(Rule.NOT_HEATING, number, next());
                default -> {
                    // reassures, or is dealt with by its own rule
                }
            }
        }
    }

    private void dry(OptionalInt number) {
        double waterKg = where.help().sprinkleKg().orElse(0);
        if (waterKg > 0) addWater(Rule.DRY_ROOTS, next(ActKind.TURN), waterKg);
        else add(Rule.DRY_ROOTS, number, next(ActKind.TURN));
    }

    private void powerFailed() {
        for (Entry entry : where.account().signs()) {
            boolean failed = entry.report() instanceof Observed observed && observed.sign() == Sign.POWER_OUT;
            if (!failed || !lately(entry) || !heats()) continue;
            Rule rule = switch (Wetness.of(moisture())) {
                case WET -> Rule.POWER_OUT_WET;
                case DAMP -> Rule.POWER_OUT_DAMP;
                case DRY -> Rule.POWER_OUT_DRY;
            };
            add(rule, OptionalInt.of(entry.number()), next(ActKind.RAISE, ActKind.CURE, ActKind.OFF));
        }
    }

    /** The last drain came late: rest long, spread thin, and leave out the next immersion if the grain is wet enough. */
    private void steepRanLong() {
        if (!steeps()) return;
        Visit last = UnderWay.began(where.account().visits());
        Instant done = last.at();
        String drain = "steep-" + last.number() + ".drain";
        Optional<Instant> planned = batch.planned().stream()
                .filter(visit -> visit.id().equals(drain))
                .map(Visit::at)
                .findFirst();
        Instant out = last.kind() == ActKind.DRAIN ? done : where.now();
        boolean late =
                planned.isPresent() && Duration.between(planned.get(), out).toMinutes() >= 60 * LONG_HOURS;
        if (!late) return;
        Integer entry = where.account().entryByAct().get(drain);
        add(Rule.STEEP_RAN_LONG, entry == null ? OptionalInt.empty() : OptionalInt.of(entry), next());
    }

    private void waterIsOff() {
        double target = batch.request().style().steep().targetFraction();
        boolean drained = phase() == ActKind.DRAIN;
        if ((drained || grows()) && moisture() > OVER_WET_FRACTION) {
            add(Rule.OVER_WET, OptionalInt.empty(), next());
            return;
        }
        boolean lastDrain = drained && next(ActKind.SOAK).isEmpty();
        boolean soaksMore = drained
                && toCome.stream().filter(visit -> visit.kind() == ActKind.SOAK).count()
                        > batch.planned().stream()
                                .filter(visit -> visit.kind() == ActKind.SOAK
                                        && !where.account().did(visit.id()))
                                .count();
        if ((lastDrain || soaksMore) && moisture() < target - SHORT_FRACTION) {
            double dryKg = where.state().mass().dryMatterKg();
            double waterKg = dryKg * (1 / (1 - target) - 1 / (1 - moisture()));
            addWater(Rule.SHORT_OF_WATER, soaksMore ? next(ActKind.SOAK) : next(ActKind.FLOOR, ActKind.TURN), waterKg);
        }
        if (phase() == ActKind.FLOOR && where.help().sprinkleKg().isPresent()) dry(OptionalInt.empty());
    }

    private void stewsInTheKiln() {
        for (Entry entry : batch.journal().effectiveUntil(where.now())) {
            if (!heats() || !lately(entry)) continue;
            boolean hot = entry.report() instanceof TemperatureRead read && read.readC() > STEWS_C + HOT_MARGIN_K;
            if (hot && moisture() > STILL_WET_FRACTION) {
                add(Rule.TOO_HOT_WHILE_WET, OptionalInt.of(entry.number()), next());
            }
        }
    }

    private void bedIsTooWarmOrCold() {
        double warmC = Math.max(WARM_C, batch.request().style().growth().warmestGrainC());
        if (grows() && where.help().hotBed().isPresent()) add(Rule.TOO_WARM, OptionalInt.empty(), next(ActKind.TURN));
        for (Entry entry : batch.journal().effectiveUntil(where.now())) {
            if (!grows() || !lately(entry)) continue;
            if (!(entry.report() instanceof TemperatureRead read)
                    || !read.spot().inGrain()) continue;
            if (read.readC() > warmC) add(Rule.TOO_WARM, OptionalInt.of(entry.number()), next(ActKind.TURN));
            if (read.readC() < COLD_C) add(Rule.TOO_COLD, OptionalInt.of(entry.number()), next(ActKind.TURN));
        }
    }

    private void growthIsUneven() {
        for (Entry entry : batch.journal().effectiveUntil(where.now())) {
            if (!grows() || !lately(entry)) continue;
            if (!(entry.report() instanceof AcrospiresCounted counted)) continue;
            AcrospireCount count = counted.count();
            OptionalInt number = OptionalInt.of(entry.number());
            if (count.quantileFraction(0.75) - count.quantileFraction(0.25) > UNEVEN_FRACTION) {
                add(Rule.UNEVEN, number, next(ActKind.TURN));
            }
            if (count.overgrownFraction() >= OVERGROWN_FRACTION) add(Rule.OVERGROWN, number, next(ActKind.LOAD));
        }
    }

    private void couchStallsOrRunsAway() {
        if (where.help().couch().filter(CouchForecast::stalls).isPresent()) {
            add(Rule.COUCH_STALLED, OptionalInt.empty(), next(ActKind.CHECK, ActKind.BREAK));
        }
        for (Entry entry : batch.journal().effectiveUntil(where.now())) {
            if (phase() != ActKind.PACK || !lately(entry)) continue;
            boolean hot = entry.report() instanceof TemperatureRead read
                    && read.spot().inGrain()
                    && read.readC() > COUCH_HOT_C;
            if (hot) add(Rule.COUCH_TOO_HOT, OptionalInt.of(entry.number()), next(ActKind.BREAK));
        }
    }

    private void colourMissed() {
        double aimEbc = where.plan().outcome().finished().kiln().colourEbc();
        for (Entry entry : batch.journal().effectiveUntil(where.now())) {
            if (!(entry.report() instanceof Report.ColourMeasured colour) || !lately(entry)) continue;
            OptionalInt number = OptionalInt.of(entry.number());
            if (colour.colourEbc() > aimEbc * COLOUR_RATIO) add(Rule.TOO_DARK, number, Optional.empty());
            if (colour.colourEbc() < aimEbc / COLOUR_RATIO) add(Rule.TOO_PALE, number, next(ActKind.ROAST));
        }
    }

    private void takenOffWet() {
        where.help().wetMalt().ifPresent(malt -> add(Rule.TAKEN_OFF_WET, OptionalInt.empty(), Optional.empty()));
    }

    private void nothingWasRecorded() {
        Optional<Visit> overdue = where.next().overdue().stream().findFirst();
        boolean silent = overdue.isPresent()
                && Duration.between(overdue.get().at(), where.now()).compareTo(SILENT) >= 0;
        if (silent) add(Rule.NOTHING_RECORDED, OptionalInt.empty(), next());
    }
}
