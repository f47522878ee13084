package piecewright.desktop.plan;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.ensemble.Sureness;

/** How sure the plan shown is. Bands follow each plan, what would help follows the bands; only the latest is shown. */
public final class ChanceViewModel {
    private final Answers answers;
    private final Threads threads;
    private final ReadOnlyObjectWrapper<Optional<Sure>> sure = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper helping = new ReadOnlyBooleanWrapper();
    private final AtomicInteger latest = new AtomicInteger();

    /** The use cases asked. */
    public interface Answers {
        /** Bands and chance of a plan. */
        Sureness sure(Drafted drafted);

        /** The same with what would help; takes longer. */
        Sureness helped(Drafted drafted, Sureness sure);
    }

    /** A plan and how sure it is. */
    public record Sure(Drafted drafted, Sureness sureness) {
        public Sure {
            Objects.requireNonNull(drafted);
            Objects.requireNonNull(sureness);
        }
    }

    /** Follows the plans of a sentence. */
    public ChanceViewModel(WishViewModel wish, Answers answers, Threads threads) {
        this.answers = answers;
        this.threads = threads;
        wish.draftedProperty().addListener((drafted, before, now) -> ask(now));
        ask(wish.draftedProperty().get());
    }

    /** Empty until the bands of the latest plan are there. */
    public ReadOnlyObjectProperty<Optional<Sure>> sureProperty() {
        return sure.getReadOnlyProperty();
    }

    /** True while the plan is being followed. */
    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** True while what would help is being looked for. */
    public ReadOnlyBooleanProperty helpingProperty() {
        return helping.getReadOnlyProperty();
    }

    /** Gives up what is being worked out; what is shown stays. */
    public void stop() {
        latest.incrementAndGet();
        working.set(false);
        helping.set(false);
    }

    private void ask(Optional<Drafted> drafted) {
        int ticket = latest.incrementAndGet();
        sure.set(Optional.empty());
        helping.set(false);
        working.set(drafted.isPresent());
        drafted.ifPresent(shown -> threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            Sureness found = answers.sure(shown);
            threads.ui().execute(() -> {
                if (ticket == latest.get()) show(shown, found, ticket);
            });
        }));
    }

    private void show(Drafted drafted, Sureness bands, int ticket) {
        working.set(false);
        sure.set(Optional.of(new Sure(drafted, bands)));
        helping.set(true);
        threads.aside().execute(() -> {
            if (ticket != latest.get()) return;
            Sureness helped = answers.helped(drafted, bands);
            threads.ui().execute(() -> {
                if (ticket != latest.get()) return;
                helping.set(false);
                sure.set(Optional.of(new Sure(drafted, helped)));
            });
        });
    }
}
