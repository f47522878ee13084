package piecewright.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import piecewright.history.Contradiction;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.plan.Plan;
import piecewright.reading.Outcome;
import piecewright.remedy.Remedy;
import piecewright.replan.CouchForecast;
import piecewright.replan.Move;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.NotPossible;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Rescue;
import piecewright.replan.WetMalt;
import piecewright.replan.Where;
import piecewright.replan.Where.Water;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;
import piecewright.text.MovePage;
import piecewright.text.RemedyWords;
import piecewright.text.WherePage;
import piecewright.text.Wording;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What was recorded, where a piece stands and what moves, as JSON documents, format 1. */
public final class UnderWayJson {
    private final DisplayUnits units;
    private final ZoneId zone;

    public UnderWayJson(DisplayUnits units, ZoneId zone) {
        this.units = units;
        this.zone = zone;
    }

    /** Entries just kept, read back. */
    public String recorded(List<Entry> entries, List<Contradiction> questions, Optional<WetMalt> wetMalt) {
        ObjectNode root = root().put("outcome", "kept");
        ArrayNode list = root.putArray("entries");
        EntryWords words = new EntryWords(units, zone);
        for (Entry entry : entries) {
            ObjectNode node = list.addObject();
            node.put("number", entry.number());
            node.put("at", moment(entry.at()));
            ReportJson.put(node.putObject("report"), entry.report());
            node.put("text", words.dated(entry));
        }
        questions(root, questions);
        wetMalt.ifPresent(malt -> wet(root, malt));
        return JsonText.write(root);
    }

    private void wet(ObjectNode root, WetMalt malt) {
        ObjectNode node = root.putObject("wetMalt");
        node.put("moistureWetBasisFraction", PlanJson.rounded(malt.moistureFraction(), 4));
        node.put("airOnC", PlanJson.rounded(malt.airOnC(), 1));
        ArrayNode entries = node.putArray("entries");
        malt.entries().forEach(entries::add);
        node.put("text", new WherePage(units, zone).wetMalt(malt));
    }

    /** What has to be asked before a line can be kept. */
    public String asked(Outcome.Asked asked) {
        ObjectNode root = root().put("outcome", "asked");
        root.put("question", asked.question());
        ArrayNode choices = root.putArray("choices");
        ArrayNode offers = root.putArray("offers");
        int key = 0;
        for (Outcome.Offer offer : asked.offers()) {
            choices.add(offer.line());
            ObjectNode node = offers.addObject().put("key", String.valueOf(++key));
            node.put("line", offer.line()).put("text", offer.words());
        }
        return JsonText.write(root);
    }

    /** Why nothing of a line can be kept. */
    public String refused(String sentence) {
        ObjectNode root = root().put("outcome", "refused");
        root.put("question", sentence);
        root.putArray("choices");
        root.putArray("offers");
        return JsonText.write(root);
    }

    /** Where the piece stands. */
    public String where(Where where) {
        ObjectNode root = root();
        root.put("now", moment(where.now()));
        if (!where.account().visits().isEmpty()) state(root.putObject("state"), where);
        ObjectNode next = root.putObject("next");
        where.next().act().ifPresent(act -> {
            next.put("act", act.id());
            next.put("planned", moment(where.now().plus(where.next().in())));
            next.put("inMinutes", where.next().in().toMinutes());
        });
        ArrayNode done = root.putArray("done");
        where.account().visits().forEach(visit -> {
            ObjectNode node = done.addObject().put("act", visit.id()).put("at", moment(visit.at()));
            Integer entry = where.account().entryByAct().get(visit.id());
            if (entry != null) node.put("entry", entry);
        });
        ArrayNode assumed = root.putArray("assumed");
        where.account().inferred().forEach(assumed::add);
        questions(root, where.account().contradictions());
        where.help().wetMalt().ifPresent(malt -> wet(root, malt));
        ArrayNode sentences = root.putArray("sentences");
        new WherePage(units, zone).sentences(where).forEach(sentences::add);
        return JsonText.write(root);
    }

    private void state(ObjectNode node, Where where) {
        if (where.water() instanceof Water.Known known) {
            node.put("moistureWetBasisFraction", PlanJson.rounded(known.moistureFraction(), 4));
            node.put("moistureSdFraction", PlanJson.rounded(known.sdFraction(), 4));
        } else if (where.water() instanceof Water.AtOrBelow below) {
            node.put("moistureAtOrBelowWetBasisFraction", PlanJson.rounded(below.moistureFraction(), 4));
        }
        node.put("massKg", PlanJson.rounded(where.state().mass().totalKg(), 3));
        node.put("grainC", PlanJson.rounded(where.state().grainC(), 1));
        node.put("acrospireFraction", PlanJson.rounded(where.state().growth().growthRatio(), 2));
        where.help().sprinkleKg().ifPresent(waterKg -> node.put("sprinkleMl", Math.round(waterKg * 1000)));
        where.help().breaksIn().ifPresent(in -> node.put("bedBreaksInMinutes", in.toMinutes()));
        where.help().couch().ifPresent(couch -> couch(node.putObject("couch"), couch));
    }

    private void couch(ObjectNode node, CouchForecast couch) {
        couch.caught().ifPresent(band -> band(node.putArray("passes45CBand"), band));
        band(node.putArray("peakBand"), couch.peak());
        ArrayNode warmth = node.putArray("peakCBand");
        warmth.add(PlanJson.rounded(couch.peakC().lowC(), 1));
        warmth.add(PlanJson.rounded(couch.peakC().middleC(), 1));
        warmth.add(PlanJson.rounded(couch.peakC().highC(), 1));
        couch.drops().ifPresent(band -> band(node.putArray("dropsBelow45CBand"), band));
        node.put("stalls", couch.stalls());
    }

    private void band(ArrayNode node, CouchForecast.Band band) {
        node.add(moment(band.early())).add(moment(band.middle())).add(moment(band.late()));
    }

    /** What moves, or why nothing can. */
    public String replanned(ReplanResult result, Plan before, Journal journal) {
        ObjectNode root = root();
        MovePage page = new MovePage(units, zone, journal);
        if (result instanceof Replanned replanned) {
            ArrayNode moves = root.putArray("moves");
            replanned.moves().forEach(move -> move(moves.addObject(), move, page));
            ArrayNode lost = root.putArray("lost");
            page.lost(replanned.amends()).forEach(text -> lost.addObject().put("text", text));
            remedies(root, replanned.amends().remedies());
            rescues(root, result, replanned.plan());
            new PlanJson(new Wording(units, zone)).put(root.putObject("plan"), replanned.plan());
        } else {
            NotPossible not = (NotPossible) result;
            Wording wording = new Wording(units, zone);
            ArrayNode obstacles = root.putArray("obstacles");
            not.obstacles().forEach(one -> obstacles.addObject().put("text", wording.obstacle(one)));
            remedies(root, not.remedies());
            rescues(root, result, before);
        }
        questions(root, result.account().contradictions());
        return JsonText.write(root);
    }

    private void remedies(ObjectNode root, List<Remedy> remedies) {
        RemedyWords words = new RemedyWords(units, zone);
        ArrayNode helps = root.putArray("remedies");
        remedies.forEach(one -> helps.addObject().put("text", words.sentence(one)));
    }

    private void move(ObjectNode node, Move move, MovePage page) {
        node.put("act", move.actId());
        move.from().ifPresent(from -> node.put("from", moment(from)));
        move.to().ifPresent(to -> node.put("to", moment(to)));
        move.places().ifPresent(places -> node.put("fromPlace", places.from()).put("toPlace", places.to()));
        if (move.because() instanceof Move.Because.Entered entered) node.put("becauseOfEntry", entered.entry());
        node.put("text", page.sentence(move));
    }

    private void rescues(ObjectNode root, ReplanResult result, Plan plan) {
        ArrayNode list = root.putArray("rescues");
        WherePage words = new WherePage(units, zone);
        for (Rescue rescue : result.rescues()) {
            ObjectNode node = list.addObject();
            node.put(
                    "rule",
                    rescue.rule().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            rescue.entry().ifPresent(entry -> node.put("entry", entry));
            Optional<String> act = rescue.actId();
            act.ifPresent(id -> node.put("act", id));
            rescue.waterKg().ifPresent(waterKg -> node.put("waterMl", Math.round(waterKg * 1000)));
            node.put("text", words.rescue(rescue, plan));
        }
    }

    private void questions(ObjectNode root, List<Contradiction> questions) {
        ArrayNode list = root.putArray("questions");
        WherePage words = new WherePage(units, zone);
        questions.forEach(one -> list.addObject().put("entry", one.entry()).put("text", words.question(one)));
    }

    private static ObjectNode root() {
        return JsonText.newObject().put("format", 1);
    }

    private String moment(Instant at) {
        return OffsetDateTime.ofInstant(at, zone).toString();
    }
}
