package piecewright.desktop.batch;

import java.time.Instant;
import java.util.Optional;
import piecewright.app.BatchAtHand;
import piecewright.desktop.batch.BatchViewModel.Foresight;
import piecewright.desktop.batch.BatchViewModel.Shown;
import piecewright.desktop.timeline.ActMark.Standing;
import piecewright.desktop.timeline.ChartWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.plan.Act;
import piecewright.plan.PlanRequest;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.WherePage;

/** Writes a batch as its screen shows it: where it stands, on its chart and in sentences. */
final class ShownWriter {
    private final Foresight foresight;
    private final DisplayUnits units;

    ShownWriter(Foresight foresight, DisplayUnits units) {
        this.foresight = foresight;
        this.units = units;
    }

    Shown shown(BatchAtHand batch, Instant now) throws StoreException {
        Where where = batch.where(now).orElseThrow(batch::noKit);
        Optional<String> next = where.next().act().map(Act::id);
        PlanRequest among = batch.request().beside(foresight.besides(batch));
        PieceChart chart = new ChartWriter(among, where.plan(), units)
                .chart(act -> where.account().did(act.id())
                        ? Standing.DONE
                        : next.filter(act.id()::equals).isPresent() ? Standing.NEXT : Standing.PLANNED)
                .withDots(Dots.of(batch.journal(), where.plan()));
        return new Shown(batch, where, chart, new WherePage(units, batch.zone()).sentences(where));
    }
}
