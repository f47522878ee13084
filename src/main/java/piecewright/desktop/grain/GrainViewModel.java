package piecewright.desktop.grain;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.GrainPurchase;
import piecewright.app.LotReport;
import piecewright.desktop.plan.Undoable;
import piecewright.desktop.plan.WishViewModel.Person;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.grain.GrainKind;
import piecewright.plan.PlanRequest.Amount;
import piecewright.purchase.Currency;
import piecewright.purchase.Sack;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;

/** One lot's test sheet and what malt of it takes. */
public final class GrainViewModel {
    private static final double MOST_KG = 1000;

    private final List<MaltStyle> styles;
    private final Threads threads;
    private final Person person;
    private final Undoable<Asked> asked;
    private final ReadOnlyObjectWrapper<Optional<LotReport>> report = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<GrainPurchase>> purchase =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final AtomicInteger latest = new AtomicInteger();

    /**
     * What is asked of the grain.
     *
     * @param counts last counts that were changed here, by dish from 0
     * @param sackKg size it is sold in; 0 for by weight
     */
    public record Asked(
            Path lot, Map<Integer, Integer> counts, MaltStyle style, double maltKg, double ownedKg, double sackKg) {
        public Asked {
            counts = Map.copyOf(counts);
        }

        Asked withMaltKg(double changedKg) {
            return new Asked(lot, counts, style, changedKg, ownedKg, sackKg);
        }

        Asked withOwnedKg(double changedKg) {
            return new Asked(lot, counts, style, maltKg, changedKg, sackKg);
        }

        Asked withSackKg(double changedKg) {
            return new Asked(lot, counts, style, maltKg, ownedKg, changedKg);
        }

        Asked withStyle(MaltStyle changed) {
            return new Asked(lot, counts, changed, maltKg, ownedKg, sackKg);
        }

        Asked withLot(Path changed) {
            return new Asked(changed, Map.of(), style, maltKg, ownedKg, sackKg);
        }

        Asked withCount(int dish, int germinated) {
            Map<Integer, Integer> more = new java.util.TreeMap<>(counts);
            more.put(dish, germinated);
            return new Asked(lot, more, style, maltKg, ownedKg, sackKg);
        }
    }

    public GrainViewModel(List<MaltStyle> styles, Asked first, Threads threads, Person person, UndoHistory history) {
        this.styles = List.copyOf(styles);
        this.threads = threads;
        this.person = person;
        this.asked = new Undoable<>(first, history, WindowWords.say("undo.of.grain"));
        asked.valueProperty().addListener((property, before, now) -> work(before, now));
        work(first, first);
    }

    ReadOnlyObjectProperty<Asked> askedProperty() {
        return asked.valueProperty();
    }

    ReadOnlyObjectProperty<Optional<LotReport>> reportProperty() {
        return report.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<GrainPurchase>> purchaseProperty() {
        return purchase.getReadOnlyProperty();
    }

    /** What went wrong; empty text for nothing. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    List<MaltStyle> styles() {
        return styles;
    }

    Person person() {
        return person;
    }

    void chooseLot(Path lot) {
        asked.change(asked.get().withLot(lot));
    }

    void chooseStyle(MaltStyle style) {
        asked.change(asked.get().withStyle(style));
    }

    /** So many corns of a dish, counted from 0, have germinated; kept in the lot's file. */
    void count(int dish, int germinated) {
        report.get().ifPresent(known -> {
            var dishes = known.lot().dishes();
            int bounded = Math.max(0, Math.min(dishes.get(dish).corns(), germinated));
            Asked now = asked.get();
            Asked before = now.counts().containsKey(dish)
                    ? now
                    : now.withCount(dish, dishes.get(dish).germinated());
            asked.change(before.withCount(dish, bounded));
        });
    }

    void typeMalt(String typed) {
        typed(typed, kg -> kg > 0 ? Optional.of(asked.get().withMaltKg(kg)) : Optional.empty());
    }

    void typeOwned(String typed) {
        typed(typed, kg -> Optional.of(asked.get().withOwnedKg(kg)));
    }

    void typeSack(String typed) {
        typed(typed, kg -> kg == 0 || kg >= 0.5 ? Optional.of(asked.get().withSackKg(kg)) : Optional.empty());
    }

    private interface Change {
        Optional<Asked> with(double kg);
    }

    private void typed(String text, Change change) {
        try {
            double kg = QuantityParser.forPerson(person.units()).massKg(text);
            Optional<Asked> changed = kg <= MOST_KG ? change.with(kg) : Optional.empty();
            note.set(changed.isPresent() ? "" : WindowWords.say("grain.range"));
            changed.ifPresent(asked::change);
        } catch (UnreadableException unreadable) {
            note.set(String.valueOf(unreadable.getMessage()));
        }
    }

    private void work(Asked before, Asked now) {
        int ticket = latest.incrementAndGet();
        threads.background().execute(() -> {
            try {
                boolean recounted =
                        before.lot().equals(now.lot()) && !before.counts().equals(now.counts());
                if (recounted) recount(now);
                LotReport read = LotReport.of(now.lot(), person.today());
                Optional<GrainPurchase> bought = bought(now, read);
                threads.ui().execute(() -> {
                    if (ticket == latest.get()) show(read, bought, recounted);
                });
            } catch (StoreException failed) {
                String sentence = String.valueOf(failed.getMessage());
                threads.ui().execute(() -> note.set(sentence));
            }
        });
    }

    private void recount(Asked now) throws StoreException {
        for (Map.Entry<Integer, Integer> count : now.counts().entrySet()) {
            LotReport.recounted(now.lot(), count.getKey(), count.getValue(), person.today());
        }
    }

    private void show(LotReport read, Optional<GrainPurchase> bought, boolean recounted) {
        report.set(Optional.of(read));
        purchase.set(bought);
        if (recounted) note.set("");
    }

    private static Optional<GrainPurchase> bought(Asked now, LotReport read) throws StoreException {
        GrainKind kind = read.lot().kind();
        boolean suits = now.style().grains().contains(kind);
        boolean poison = read.lot().safeTreatment() == piecewright.grain.Treatment.TREATED;
        if (!suits || poison) return Optional.empty();
        List<Sack> sacks = now.sackKg() > 0 ? List.of(new Sack(now.sackKg(), Optional.<BigDecimal>empty())) : List.of();
        GrainPurchase.Shop shop =
                new GrainPurchase.Shop(Map.of(kind, now.ownedKg()), Map.of(kind, sacks), Currency.unsaid());
        var wish = new GrainPurchase.Wish(now.style(), new Amount.FinishedMalt(now.maltKg()));
        return Optional.of(GrainPurchase.of(List.of(wish), Optional.of(now.lot()), Optional.empty(), shop));
    }
}
