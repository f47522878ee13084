package piecewright.desktop.batch;

import java.util.ArrayList;
import java.util.List;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchAtHand.Recording;
import piecewright.reading.Outcome;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;
import piecewright.text.WherePage;

/** Says what came of a line: what was kept, or what is asked back with its answers. */
final class ReplyWriter {
    private final DisplayUnits units;

    ReplyWriter(DisplayUnits units) {
        this.units = units;
    }

    Reply answer(Recording recording, BatchAtHand batch) {
        if (recording instanceof Recording.Asked asked) {
            return new Reply(
                    Reply.Outcome.ASKED,
                    List.of(),
                    List.of(asked.asked().question()),
                    asked.asked().offers().stream().map(Outcome.Offer::line).toList());
        }
        if (recording instanceof Recording.Refused refused) return Reply.asking(refused.sentence());
        Recording.Kept kept = (Recording.Kept) recording;
        EntryWords entries = new EntryWords(units, batch.zone());
        WherePage questions = new WherePage(units, batch.zone());
        List<String> asked = new ArrayList<>(
                kept.questions().stream().map(questions::question).toList());
        kept.wetMalt().ifPresent(malt -> asked.add(0, questions.wetMalt(malt)));
        return new Reply(
                Reply.Outcome.KEPT,
                kept.entries().stream().map(entries::sentence).toList(),
                asked,
                List.of());
    }
}
