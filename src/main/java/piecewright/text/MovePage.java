package piecewright.text;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.plan.Plan;
import piecewright.replan.Move;
import piecewright.replan.Move.Because;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.NotPossible;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Rescue;
import piecewright.replan.Rescue.Rule;

/** What moves in a plan made anew, from when to when and why; what to do; or why there is no plan. */
public final class MovePage {
    private final MomentFormat moments;
    private final EntryWords entries;
    private final Wording wording;
    private final WherePage where;
    private final RemedyWords remedies;
    private final Journal journal;

    public MovePage(DisplayUnits units, ZoneId zone, Journal journal) {
        this.moments = new MomentFormat(zone, units.locale());
        this.entries = new EntryWords(units, zone);
        this.wording = new Wording(units, zone);
        this.where = new WherePage(units, zone);
        this.remedies = new RemedyWords(units, zone);
        this.journal = journal;
    }

    /** The page; the plan so far tells when acts of a rescue stand where there is no new one. */
    public String of(ReplanResult result, Plan before) {
        StringBuilder page = new StringBuilder();
        Plan standing = result.match(Replanned::plan, not -> before);
        urgent(result).forEach(rescue -> page.append(Paragraph.of("", where.rescue(rescue, standing))));
        result.account().contradictions().forEach(one -> page.append(Paragraph.of("", where.question(one))));
        if (result instanceof Replanned replanned) {
            page.append(Phrases.say("replan.title")).append('\n');
            for (String sentence : moved(replanned.moves())) page.append(Paragraph.of("", sentence));
            amends(replanned.amends(), page);
            rescues(result, replanned.plan(), page);
        } else {
            NotPossible not = (NotPossible) result;
            page.append(Phrases.say("replan.not-possible")).append('\n');
            not.obstacles().forEach(one -> page.append(Paragraph.of("", wording.obstacle(one))));
            remedies.lines(not.remedies()).forEach(line -> page.append(Paragraph.of("", line)));
            rescues(result, before, page);
        }
        return page.toString();
    }

    /** What stands above everything else: a bed that is cooking waits for nobody to read on. */
    private static List<Rescue> urgent(ReplanResult result) {
        return result.rescues().stream()
                .filter(rescue -> rescue.rule() == Rule.TOO_WARM)
                .toList();
    }

    private void amends(ReplanResult.Amends amends, StringBuilder page) {
        if (amends.lost().isEmpty()) return;
        page.append('\n').append(Phrases.say("replan.lost")).append('\n');
        lost(amends).forEach(sentence -> page.append(Paragraph.of("", sentence)));
        remedies.lines(amends.remedies()).forEach(line -> page.append(Paragraph.of("", line)));
    }

    /** One sentence for each thing that gives way. */
    public List<String> lost(ReplanResult.Amends amends) {
        return amends.lost().stream().map(wording::finding).toList();
    }

    /** What became of a new plan. */
    public enum Ended {
        KEPT,
        PROPOSED
    }

    /** Whether it was kept, as a paragraph. */
    public static String ending(Ended ended) {
        return Paragraph.of("", Phrases.say(ended == Ended.KEPT ? "replan.kept" : "replan.not-kept"));
    }

    private void rescues(ReplanResult result, Plan plan, StringBuilder page) {
        result.rescues().stream()
                .filter(rescue -> rescue.rule() != Rule.TOO_WARM)
                .forEach(rescue -> page.append('\n').append(Paragraph.of("", where.rescue(rescue, plan))));
    }

    /** One sentence a move. */
    public List<String> moved(List<Move> moves) {
        return moves.isEmpty()
                ? List.of(Phrases.say("replan.nothing"))
                : moves.stream().map(this::sentence).toList();
    }

    /** "Drain 3: from … to …, because of entry 2, …". */
    public String sentence(Move move) {
        String name = ActNames.byId(move.actId());
        String because = because(move.because());
        if (move.places().isPresent()) {
            Move.Places places = move.places().get();
            return Phrases.say("replan.elsewhere", name, places.from(), places.to(), because);
        }
        if (move.from().isEmpty())
            return Phrases.say("replan.added", name, moment(move.to().orElseThrow()), because);
        String from = moment(move.from().orElseThrow());
        return move.to()
                .map(to -> Phrases.say("replan.moved", name, from, moment(to), because))
                .orElseGet(() -> Phrases.say("replan.dropped", name, from, because));
    }

    private String moment(Instant at) {
        return moments.moment(at);
    }

    /** Why, as a clause. */
    public String because(Because because) {
        if (because instanceof Because.Entered entered) {
            String said = journal.effective().stream()
                    .filter(entry -> entry.number() == entered.entry())
                    .findFirst()
                    .map(this::said)
                    .orElse("");
            return Phrases.say("replan.because.entered", Integer.toString(entered.entry()), said);
        }
        if (because instanceof Because.NotRecorded not) {
            return Phrases.say("replan.because.not-recorded", ActNames.byId(not.actId()));
        }
        if (because instanceof Because.NoRoom room) return Phrases.say("replan.because.no-room", room.place());
        return Phrases.say(because instanceof Because.Hours ? "replan.because.hours" : "replan.because.better");
    }

    private String said(Entry entry) {
        return entries.dated(entry);
    }
}
