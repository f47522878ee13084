package piecewright.publish;

import piecewright.calendar.Ledger;
import piecewright.store.StoreException;

/** Where a batch's ledger is kept; called once its file is in place. */
public interface LedgerShelf {
    void keep(Ledger ledger) throws StoreException;
}
