package piecewright.desktop.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.app.BatchAtHand;
import piecewright.desktop.timeline.ActMark;
import piecewright.desktop.timeline.ActMark.Standing;
import piecewright.desktop.timeline.ChartWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.plan.Plan;
import piecewright.replan.Move;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.text.ActNames;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.MovePage;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** Writes a new plan of the rest as it is offered beside the old one. */
final class ProposalWriter {
    private final BatchAtHand batch;
    private final DisplayUnits units;
    private final Optional<PieceChart> old;

    ProposalWriter(BatchAtHand batch, DisplayUnits units, Optional<PieceChart> old) {
        this.batch = batch;
        this.units = units;
        this.old = old;
    }

    Proposal proposal(ReplanResult result) {
        MovePage page = new MovePage(units, batch.zone(), batch.journal());
        if (result instanceof Replanned replanned) {
            PieceChart chart = chart(replanned.plan(), result);
            MomentFormat moments = new MomentFormat(batch.zone(), units.locale());
            List<Proposal.Moved> moves = replanned.moves().stream()
                    .map(move -> new Proposal.Moved(
                            title(chart, move.actId()),
                            move.places()
                                    .map(Move.Places::from)
                                    .orElseGet(() ->
                                            move.from().map(moments::moment).orElse("")),
                            move.places()
                                    .map(Move.Places::to)
                                    .orElseGet(
                                            () -> move.to().map(moments::moment).orElse("")),
                            WindowWords.say("batch.because", page.because(move.because()))))
                    .toList();
            List<String> sentences = new ArrayList<>(moves.isEmpty() ? page.moved(replanned.moves()) : List.of());
            sentences.addAll(page.lost(replanned.amends()));
            return new Proposal(batch, result, Optional.of(chart), moves, sentences);
        }
        Wording wording = new Wording(units, batch.zone());
        List<String> why = ((ReplanResult.NotPossible) result)
                .obstacles().stream().map(wording::obstacle).toList();
        return new Proposal(batch, result, Optional.empty(), List.of(), why);
    }

    /** What a step is called in the new plan, or in the old one where that alone has it. */
    private String title(PieceChart chart, String actId) {
        return chart.act(actId)
                .or(() -> old.flatMap(shown -> shown.act(actId)))
                .map(ActMark::title)
                .orElseGet(() -> ActNames.byId(actId));
    }

    private PieceChart chart(Plan plan, ReplanResult result) {
        return new ChartWriter(batch.request(), plan, units)
                .chart(act -> result.account().did(act.id()) ? Standing.DONE : Standing.PLANNED)
                .withDots(Dots.of(batch.journal(), plan));
    }
}
