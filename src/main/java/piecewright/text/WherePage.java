package piecewright.text;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import piecewright.history.Account.Done;
import piecewright.history.Contradiction;
import piecewright.history.Fate;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;
import piecewright.replan.CouchForecast;
import piecewright.replan.Rescue;
import piecewright.replan.WetMalt;
import piecewright.replan.Where;
import piecewright.replan.Where.Water;

/** Where a piece stands, as sentences. */
public final class WherePage {
    /** Judgement: less water than this is nothing, kg. */
    private static final double LEAST_WATER_KG = 0.005;
    /** Judgement: malt that lay wet for longer may have gone off, and is smelt before anything else. */
    private static final Duration LONG_LAIN = Duration.ofHours(12);

    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final RescueWords rescues;
    private final QuestionWords questions;

    public WherePage(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
        this.rescues = new RescueWords(units, zone);
        this.questions = new QuestionWords(units);
    }

    /** The page. */
    public String of(Where where) {
        StringBuilder page = new StringBuilder(Phrases.say("where.title", moments.dated(where.now()))).append('\n');
        for (String sentence : sentences(where)) page.append(Paragraph.of("", sentence));
        return page.toString();
    }

    /** What is known, asked and next, one sentence or two each. */
    public List<String> sentences(Where where) {
        List<String> sentences = new ArrayList<>();
        where.help()
                .hotBed()
                .ifPresent(hot -> sentences.add(Phrases.say(
                        quantities,
                        "where.hot-bed",
                        moments.moment(hot.from()),
                        quantities.temperature(hot.expectedC()),
                        quantities.temperature(hot.warmestC()))));
        where.help().wetMalt().ifPresent(malt -> sentences.add(wetMalt(malt)));
        for (Contradiction question : where.account().contradictions()) sentences.add(question(question));
        sentences.addAll(clock(where));
        if (where.account().visits().isEmpty()) sentences.add(Phrases.say("where.dry"));
        else sentences.addAll(state(where));
        if (!where.account().inferred().isEmpty()) {
            List<String> names =
                    where.account().inferred().stream().map(ActNames::byId).toList();
            sentences.add(Phrases.say("where.assumed", String.join(", ", names)));
        }
        if (where.help().wetMalt().isEmpty()) sentences.add(next(where));
        return sentences;
    }

    /** What makes a clock doubtful: entries of its future, or a last step long past. */
    private List<String> clock(Where where) {
        List<String> sentences = new ArrayList<>();
        long later = where.account().fates().values().stream()
                .filter(fate -> fate == Fate.LATER)
                .count();
        if (later > 0) sentences.add(Phrases.say("where.later", Long.toString(later)));
        if (where.account().followedUntil().isBefore(where.now())) {
            sentences.add(
                    Phrases.say("where.long-ago", moments.dated(where.account().followedUntil())));
        }
        return sentences;
    }

    private List<String> state(Where where) {
        List<String> sentences = new ArrayList<>();
        PieceState state = where.state();
        sentences.add(water(where.water(), state));
        sentences.add(Phrases.say("where.grain", quantities.temperature(state.grainC())));
        double grown = state.growth().growthRatio();
        if (grown > 0) sentences.add(Phrases.say("where.grown", quantities.percent(grown)));
        where.help().sprinkleKg().ifPresent(waterKg -> {
            if (waterKg > LEAST_WATER_KG) sentences.add(Phrases.say("where.sprinkle", quantities.volume(waterKg)));
        });
        where.help().breaksIn().ifPresent(in -> sentences.add(Phrases.say("where.breaks", quantities.time(in))));
        where.help().couch().ifPresent(couch -> sentences.addAll(couch(couch)));
        cutShort(where).ifPresent(sentences::add);
        return sentences;
    }

    /** How long a stew that was interrupted has been stewed, and how long it takes. */
    private Optional<String> cutShort(Where where) {
        List<Done> acts = where.account().acts();
        Done last = acts.get(acts.size() - 1);
        boolean parted =
                last.visit().kind() == ActKind.STEW && last.workedMinutes().isPresent();
        if (!parted) return Optional.empty();
        Duration worked = Duration.ofMinutes(Math.round(last.workedMinutes().getAsDouble()));
        return where.plan().acts().stream()
                .filter(act -> act.kind() == ActKind.STEW)
                .map(act -> Duration.between(act.startsAt(), act.endsAt()))
                .filter(whole -> worked.compareTo(whole) < 0)
                .map(whole -> Phrases.say("where.stewed", quantities.time(worked), quantities.time(whole)))
                .findFirst();
    }

    private List<String> couch(CouchForecast couch) {
        CouchForecast.Warmth hottest = couch.peakC();
        if (couch.stalls()) {
            return List.of(Phrases.say("where.couch.stalls", quantities.temperature(hottest.middleC())));
        }
        List<String> sentences = new ArrayList<>();
        couch.caught().ifPresent(band -> sentences.add(band("where.couch.caught", band)));
        sentences.add(Phrases.say(
                "where.couch.peak",
                moments.moment(couch.peak().middle()),
                moments.moment(couch.peak().early()),
                moments.moment(couch.peak().late()),
                quantities.temperature(hottest.middleC()),
                quantities.temperature(hottest.lowC()),
                quantities.temperature(hottest.highC())));
        couch.drops().ifPresent(band -> sentences.add(band("where.couch.drops", band)));
        return sentences;
    }

    private String band(String key, CouchForecast.Band band) {
        return Phrases.say(
                quantities,
                key,
                moments.moment(band.middle()),
                moments.moment(band.early()),
                moments.moment(band.late()));
    }

    private String water(Water water, PieceState state) {
        if (water instanceof Water.AtOrBelow below) {
            return Phrases.say("where.at-or-below", quantities.percent(below.moistureFraction()));
        }
        Water.Known known = (Water.Known) water;
        String moisture = Phrases.say(
                "where.moisture",
                quantities.moisture(new Moisture(known.moistureFraction())),
                quantities.moisture(new Moisture(known.reachFraction())),
                quantities.mass(state.mass().totalKg()));
        String basis = known.weighedAt()
                .map(at -> Phrases.say("where.moisture.weighed", moments.moment(at)))
                .orElseGet(() -> Phrases.say("where.moisture.forecast"));
        return moisture + " " + basis;
    }

    private String next(Where where) {
        Where.Next next = where.next();
        if (next.act().isEmpty()) return Phrases.say("where.done");
        Act act = next.act().get();
        Instant planned = where.now().plus(next.in());
        String title = ActNames.byId(act.id());
        Duration in = next.in();
        return in.isNegative()
                ? Phrases.say("where.overdue", title, moments.moment(planned), quantities.time(in.abs()))
                : Phrases.say("where.next", title, moments.moment(planned), quantities.time(in));
    }

    /** What to do first with malt that came off the kiln too wet to keep. */
    public String wetMalt(WetMalt malt) {
        List<String> sentences = new ArrayList<>();
        sentences.add(Phrases.say(
                quantities,
                "wet-malt." + Phrases.key(malt.wetness()),
                quantities.percent(malt.moistureFraction()),
                quantities.percent(malt.endMoistureFraction()),
                quantities.temperature(malt.airOnC())));
        if (malt.lain().compareTo(LONG_LAIN) > 0)
            sentences.add(Phrases.say("wet-malt.long", quantities.time(malt.lain())));
        if (!malt.entries().isEmpty()) {
            String numbers = malt.entries().stream().map(String::valueOf).collect(Collectors.joining(" "));
            sentences.add(Phrases.say("wet-malt.strike", numbers));
        }
        return String.join(" ", sentences);
    }

    /** Asks about an entry that cannot be true. */
    public String question(Contradiction question) {
        return questions.sentence(question);
    }

    /** What practice does, and the act of the plan that carries it out. */
    public String rescue(Rescue rescue, Plan plan) {
        return rescues.sentence(
                rescue,
                id -> plan.acts().stream()
                        .filter(act -> act.id().equals(id))
                        .findFirst()
                        .map(Act::startsAt)
                        .or(Optional::empty));
    }
}
