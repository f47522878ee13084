package piecewright.sheet;

import piecewright.plan.Act;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.Wording;

/** The words of a sheet in one person's units and one house's clock. */
record SheetWords(Wording sentences, QuantityFormat quantities, MomentFormat moments) {
    /** "Drain 1, Sat 27 Mar". */
    String dated(Act act) {
        return sentences.actTitle(act) + ", "
                + moments.day(act.startsAt().atZone(moments.zone()).toLocalDate());
    }
}
