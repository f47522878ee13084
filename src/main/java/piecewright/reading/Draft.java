package piecewright.reading;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Noted;
import piecewright.journal.Report.Remarked;
import piecewright.plan.ActKind;
import piecewright.reading.Candidate.Doubt;
import piecewright.reading.Standing.Stage;

/** What one way of reading has come to so far. Scratch space of one way. */
final class Draft {
    final Scene scene;
    final Standing standing;
    final Oracle oracle;
    final Bounds bounds;
    final TemperatureBounds temperatures;
    /** Whether whoever types has been asked before. */
    final boolean sure;

    private final List<Saying> sayings = new ArrayList<>();
    private Optional<Doubt> doubt = Optional.empty();
    /** Whether the line says that weights in it are parts of one whole. */
    boolean parts;

    private boolean halved;
    private Instant at;
    private boolean timed;

    Draft(Scene scene, Standing standing, Oracle oracle, Bounds bounds, boolean sure) {
        this.sure = sure;
        this.scene = scene;
        this.standing = standing;
        this.oracle = oracle;
        this.bounds = bounds;
        this.temperatures = bounds.temperatures();
        this.at = scene.now();
    }

    void from(Moments.Moment moment, boolean said) {
        at = moment.at();
        timed = said;
        moment.doubt().ifPresent(this::doubt);
        halved |= moment.halved();
    }

    Instant at() {
        return at;
    }

    Stage stage() {
        Standing after = standing;
        for (Saying saying : sayings) if (saying.act().isPresent()) after = after.with(saying.report(), saying.at());
        return after.stage(at);
    }

    void say(Report report) {
        Saying saying = new Saying(at, report, timed);
        if (!sayings.contains(saying)) sayings.add(saying);
    }

    void sayAt(Report report, Instant other) {
        sayings.add(new Saying(other, report, true));
    }

    void remark(String words, Remark remark) {
        say(new Remarked(words, remark));
    }

    void note(String words) {
        say(new Noted(words));
    }

    void doubt(Doubt why) {
        if (doubt.isEmpty()) doubt = Optional.of(why);
    }

    void doubt(String key, String... arguments) {
        doubt(Doubt.of(key, arguments));
    }

    /** Steps told so far at this time. */
    List<ActKind> acts() {
        return sayings.stream().flatMap(saying -> saying.act().stream()).toList();
    }

    boolean act(ActKind kind) {
        return acts().contains(kind);
    }

    boolean empty() {
        return sayings.isEmpty();
    }

    boolean says(Class<? extends Report> kind) {
        return sayings.stream().anyMatch(saying -> kind.isInstance(saying.report()));
    }

    Optional<Report.Weighed> weighed() {
        return sayings.stream()
                .filter(saying -> saying.at().equals(at) && saying.report() instanceof Report.Weighed)
                .map(saying -> (Report.Weighed) saying.report())
                .findFirst();
    }

    /** Puts another weight in place of the one told before. */
    void reweigh(Report.Weighed other) {
        sayings.replaceAll(saying -> saying.at().equals(at) && saying.report() instanceof Report.Weighed
                ? new Saying(at, other, saying.timed())
                : saying);
    }

    /** Gives water to the last step of a kind that has none yet. */
    boolean water(ActKind kind, double waterL) {
        for (int i = sayings.size() - 1; i >= 0; i--) {
            boolean fits = sayings.get(i).report() instanceof Did did
                    && did.act() == kind
                    && did.waterL().isEmpty();
            if (!fits) continue;
            sayings.set(
                    i,
                    new Saying(
                            sayings.get(i).at(),
                            new Did(kind, OptionalDouble.of(waterL)),
                            sayings.get(i).timed()));
            return true;
        }
        return false;
    }

    Candidate candidate() {
        return new Candidate(sayings, doubt, halved);
    }
}
