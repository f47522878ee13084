package piecewright.desktop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import piecewright.app.BatchAtHand;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarReading;
import piecewright.app.CalendarUpdate;
import piecewright.app.Keeping;
import piecewright.app.LiveCalendar;
import piecewright.app.NotWrittenException;
import piecewright.app.OtherBatches;
import piecewright.desktop.batch.BatchView;
import piecewright.desktop.batch.BatchViewModel;
import piecewright.desktop.batch.EntriesView;
import piecewright.desktop.batch.EntriesViewModel;
import piecewright.desktop.batch.FinishView;
import piecewright.desktop.batch.FinishViewModel;
import piecewright.desktop.batch.GoingView;
import piecewright.desktop.batch.GoingViewModel;
import piecewright.desktop.batch.PapersView;
import piecewright.desktop.batch.PapersViewModel;
import piecewright.desktop.couch.CouchView;
import piecewright.desktop.couch.PlannedCouch;
import piecewright.desktop.plan.Drafted;
import piecewright.ensemble.Members;
import piecewright.ensemble.Sureness;
import piecewright.plan.Booking;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.store.StoreException;
import piecewright.text.WindowWords;

/** All pieces under way: the rail's list of them, and the screen of the one that is looked at. */
final class Batches {
    /** The calendar of all pieces, beside them. */
    private static final String ALL_PIECES = "all-pieces.ics";

    private final Desk.Around around;
    private final BatchViewModel model;
    private final BatchView view;
    private final GoingViewModel going;
    private final Looked looked;
    private final BatchViewModel.Opener opener;

    /** Told when a piece is to be looked at, or when there is none any more. */
    interface Looked {
        void at();

        void none();
    }

    Batches(Desk.Around around, VBox rail, Looked looked) throws StoreException {
        this.around = around;
        this.looked = looked;
        this.opener = file ->
                BatchAtHand.open(file, around.library(), around.setting().continuation());
        this.model = new BatchViewModel(
                opener,
                foresight(),
                around.threads(),
                new BatchViewModel.Own(this::instant, around.units(), around.history()));
        this.view = new BatchView(model, around.units());
        CouchView couch = new CouchView(model, new PlannedCouch(), around.units());
        view.offer(new BatchView.OtherLook(WindowWords.say("couch.way"), couch.node(), couch::has));
        view.offer(new EntriesView(new EntriesViewModel(model, around.threads(), around.units())).panel());
        view.offer(new FinishView(new FinishViewModel(model, around.threads(), this::instant, around.units())).panel());
        view.offer(new PapersView(new PapersViewModel(model, around.threads(), this::instant, around.units())).panel());
        this.going = new GoingViewModel(around.workspace(), opener, around.threads(), this::instant, around.units());
        new GoingView(rail, going, (file, actId) -> {
            model.open(file);
            view.timeline().selectedActProperty().set(actId);
            looked.at();
        });
        model.shownProperty().addListener((shown, before, now) -> {
            if (now.isPresent()) going.read();
        });
        going.goingProperty().addListener((found, before, now) -> lookAtFirst(now));
    }

    /** Where no piece is looked at, the one whose next act comes first is. */
    private void lookAtFirst(GoingViewModel.Going found) {
        if (model.file().isPresent()) return;
        found.soon().stream()
                .map(GoingViewModel.Soon::file)
                .findFirst()
                .or(() ->
                        found.pieces().stream().map(GoingViewModel.Piece::file).findFirst())
                .ifPresent(model::open);
    }

    private BatchViewModel.Foresight foresight() {
        OtherBatches others = new OtherBatches(around.library());
        return new BatchViewModel.Foresight() {
            @Override
            public Sureness of(PlanRequest request, Plan plan) {
                return around.setting().sure().chances(request, plan, instant(), Members.USUAL);
            }

            @Override
            public List<Booking> besides(BatchAtHand batch) throws StoreException {
                List<Path> files = around.workspace().batchFiles().stream()
                        .filter(file -> !file.equals(batch.file()))
                        .toList();
                return others.takenHere(batch.request().house(), files);
            }

            @Override
            public CalendarUpdate oneCalendar(Path batch, Instant now) throws StoreException, NotWrittenException {
                boolean demo = around.workspace().isDemo(batch);
                List<Path> together = around.workspace().batchFiles().stream()
                        .filter(file -> around.workspace().isDemo(file) == demo)
                        .toList();
                Path calendar = batch.resolveSibling(ALL_PIECES);
                return LiveCalendar.withReadable(
                                calendar,
                                together,
                                CalendarManner.of(together, around.units()),
                                new CalendarReading(around.library(), now))
                        .write();
            }
        };
    }

    private Instant instant() {
        return around.setting().clock().instant();
    }

    /** Keeps a plan as a batch and looks at it; what went wrong, or nothing. */
    Optional<String> keep(Drafted drafted) {
        Path file = around.workspace()
                .newBatch(drafted.plan().subject().style() + "-"
                        + drafted.plan()
                                .startsAt()
                                .atZone(drafted.plan().subject().zone())
                                .toLocalDate());
        Keeping.Targets targets = new Keeping.Targets(Optional.of(file), Optional.empty());
        try {
            Keeping.open(targets, drafted.wish(), around.setting().newId(), around.library())
                    .keep(drafted.wish(), drafted.plan(), CalendarManner.usual(around.units()), instant());
        } catch (StoreException | NotWrittenException failed) {
            return Optional.of(String.valueOf(failed.getMessage()));
        }
        model.open(file);
        return Optional.empty();
    }

    /** Puts the caret where somebody says what happened. */
    void focus() {
        view.focus();
    }

    Optional<Path> lookedAt() {
        return model.file();
    }

    void lookAt(Path batch) {
        model.open(batch);
    }

    BatchViewModel.Opener opener() {
        return opener;
    }

    /** What is on the go, as the rail shows it. */
    GoingViewModel going() {
        return going;
    }

    Node node() {
        return view.node();
    }

    Node side() {
        return view.side();
    }

    void now(Instant instant) {
        view.timeline().nowProperty().set(instant);
    }

    /** Reads every batch again. */
    void read() {
        boolean gone = model.file().filter(file -> !Files.exists(file)).isPresent();
        if (gone) {
            model.close();
            looked.none();
        }
        going.read();
        model.read();
    }
}
