package piecewright.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.history.Contradiction.NoSuchWeight;
import piecewright.journal.Entry;
import piecewright.journal.Remark;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.HeatSet;
import piecewright.journal.Report.SampleDried;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.TemperatureRead;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.reading.Candidate.Doubt;
import piecewright.reading.Standing.Stage;
import piecewright.text.MomentFormat;
import piecewright.text.Phrases;
import piecewright.text.QuantityFormat;

/** What cannot be, and what is so unlikely that it is asked, beside what is known of the batch. */
final class Bounds {
    /** Judgement: steps of one kind closer than this are one step. */
    private static final Duration SAME_STEP = Duration.ofMinutes(30);
    /** Judgement: the same line within this time was typed twice. */
    private static final Duration TYPED_TWICE = Duration.ofMinutes(15);
    /** Judgement: a step this near its planned time was done though what it follows was not written down. */
    private static final Duration NEAR_PLAN = Duration.ofHours(6);
    /** Judgement: whoever writes more than this before the batch began has another batch or a wrong clock. */
    private static final Duration BEFORE_START = Duration.ofDays(2);
    /** Judgement: nobody notes anything of a batch so long before its first step; the clock is wrong. */
    private static final Duration NOTED_BEFORE = Duration.ofDays(120);
    /** Judgement: wet grain does not wait so long after the plan's last step, nor malt so long. */
    private static final Duration GREEN_AFTER = Duration.ofDays(60);
    /** Judgement: malt is weighed, measured or worked on so long after the plan's last step, no longer. */
    private static final Duration MALT_AFTER = Duration.ofDays(400);
    /** Judgement: grain is weighed and looked at so long before it is soaked, no longer. */
    private static final Duration WEIGHED_BEFORE = Duration.ofHours(1);
    /** Judgement: on the kiln a batch loses up to this share of its dry matter before the roots are off. */
    private static final double KILN_LOSS_FRACTION = 0.12;
    /** Judgement: a weight below this share of the one expected is asked about. */
    private static final double LIKELY_FRACTION = 0.75;

    private final Scene scene;
    private final QuantityFormat quantities;
    private final MomentFormat moments;
    private final TemperatureBounds temperatures;

    Bounds(Scene scene) {
        this.scene = scene;
        this.quantities = new QuantityFormat(scene.units());
        this.moments = new MomentFormat(scene.zone(), scene.units().locale());
        this.temperatures = new TemperatureBounds(scene);
    }

    TemperatureBounds temperatures() {
        return temperatures;
    }

    /** What makes a reading doubtful; throws what makes it impossible. */
    Optional<Doubt> judge(List<Saying> sayings, Standing before) throws NotSoException {
        Standing standing = before;
        Optional<Doubt> doubt = Optional.empty();
        for (Saying saying : sayings) {
            Optional<Doubt> found = judge(saying, standing, sayings);
            if (doubt.isEmpty()) doubt = found;
            standing = standing.with(saying.report(), saying.at());
        }
        return doubt;
    }

    private Optional<Doubt> judge(Saying saying, Standing standing, List<Saying> all) throws NotSoException {
        if (saying.at().isAfter(scene.now().plus(Moments.AHEAD)))
            throw new NotSoException("line.ahead", () -> List.of(moments.moment(saying.at())));
        Optional<Doubt> doubt = began(saying, standing);
        if (doubt.isEmpty()) doubt = late(saying, standing);
        if (doubt.isEmpty()) doubt = again(saying, standing);
        Optional<Doubt> more = Optional.empty();
        Report report = saying.report();
        if (saying.act().isPresent()) more = act(saying, saying.act().get(), standing);
        if (report instanceof Did did && did.waterL().isPresent()) {
            Optional<Doubt> water = water(did, standing, saying.at());
            if (more.isEmpty()) more = water;
        }
        if (report instanceof Weighed weighed) more = weight(weighed, saying.at(), standing, all);
        if (report instanceof TemperatureRead read) more = temperatures.read(read, standing.stage(saying.at()));
        if (report instanceof HeatSet heat) more = temperatures.heat(heat.airOnC(), standing.stage(saying.at()));
        if (report instanceof SampleDried sample) more = moisture(sample);
        if (report instanceof Report.Remarked remarked && remarked.remark() instanceof Remark.RootletsWeighed roots)
            more = rootlets(roots.rootletsKg());
        return doubt.isPresent() ? doubt : more;
    }

    private Optional<Doubt> began(Saying saying, Standing standing) throws NotSoException {
        Optional<Instant> first = standing.entries().stream().map(Entry::at).min(Instant::compareTo);
        Optional<Instant> plan = scene.planned().stream().map(Visit::at).min(Instant::compareTo);
        Instant begins = plan.orElse(scene.now());
        if (first.isPresent() && first.get().isBefore(begins)) begins = first.get();
        boolean begun = !standing.acts().isEmpty()
                && saying.act().filter(kind -> kind == ActKind.SOAK).isEmpty();
        Duration slack = begun ? WEIGHED_BEFORE : BEFORE_START;
        if (!saying.at().isBefore(begins.minus(slack))) return Optional.empty();
        boolean ever = saying.at().isAfter(Instant.EPOCH);
        if (ever && standing.acts().isEmpty()) return Optional.of(Doubt.of("ask.long-before", moments.moment(begins)));
        Instant start = begins;
        throw new NotSoException("line.before-batch", () -> List.of(moments.dated(saying.at()), moments.moment(start)));
    }

    /** What makes the hour of a note doubtful. */
    Optional<Doubt> noted(Instant at) {
        Optional<Instant> last = scene.planned().stream().map(Visit::at).max(Instant::compareTo);
        if (last.isPresent() && at.isAfter(last.get().plus(MALT_AFTER)))
            return Optional.of(Doubt.of("ask.long-after", moments.dated(last.get())));
        return scene.planned().stream()
                .map(Visit::at)
                .min(Instant::compareTo)
                .filter(first -> at.isBefore(first.minus(NOTED_BEFORE)))
                .map(first -> Doubt.of("ask.long-before", moments.dated(first)));
    }

    /** Long after the plan's last step: a clock that is wrong. */
    private Optional<Doubt> late(Saying saying, Standing standing) {
        boolean malt = standing.stage(saying.at()) == Stage.OFF;
        return scene.planned().stream()
                .map(Visit::at)
                .max(Instant::compareTo)
                .filter(last -> saying.at().isAfter(last.plus(malt ? MALT_AFTER : GREEN_AFTER)))
                .map(last -> Doubt.of("ask.long-after", moments.dated(last)));
    }

    private Optional<Doubt> again(Saying saying, Standing standing) {
        for (Entry entry : standing.entries()) {
            if (entry.number() == Integer.MAX_VALUE || !twice(saying, entry)) continue;
            return Optional.of(Doubt.of("ask.typed-twice", String.valueOf(entry.number()), moments.moment(entry.at())));
        }
        if (saying.act().isEmpty()) return Optional.empty();
        return standing.acts().stream()
                .filter(act -> act.kind() == saying.act().get() && Standing.near(act.at(), saying.at(), SAME_STEP))
                .filter(act -> !(act.begun() && saying.report() instanceof Did))
                .filter(act -> !(resumes(saying) && !act.begun()))
                .findFirst()
                .map(act -> Doubt.of("ask.step-twice", moments.moment(act.at())));
    }

    /** A stew or a roast goes on after a pause, or with the next load. */
    private static boolean resumes(Saying saying) {
        return saying.report() instanceof Report.Started started
                && (started.act() == ActKind.STEW || started.act() == ActKind.ROAST);
    }

    private boolean twice(Saying saying, Entry entry) {
        if (!Saying.alike(saying.report(), entry.report())) return false;
        boolean justNow =
                Standing.near(entry.writtenAt(), scene.now(), TYPED_TWICE) && Standing.isNow(saying.at(), scene.now());
        return justNow || Standing.isNow(saying.at(), entry.at());
    }

    private Optional<Doubt> act(Saying saying, ActKind kind, Standing standing) throws NotSoException {
        Order.Fit fit = Order.of(kind, saying.at(), standing);
        if (fit == Order.Fit.FINE) return Optional.empty();
        String name = Phrases.say("act." + kind.key() + ".title");
        boolean plannedNear = scene.planned().stream()
                .anyMatch(visit -> visit.kind() == kind && Standing.near(visit.at(), saying.at(), NEAR_PLAN));
        boolean skippedOnly =
                kind != ActKind.SOAK && (kind != ActKind.DRAIN || standing.stage(saying.at()) == Stage.DRY);
        if (fit == Order.Fit.MISSING && plannedNear && skippedOnly) return Optional.empty();
        String key = kind == ActKind.DRAIN && fit == Order.Fit.MISSING
                ? "nothing-soaked"
                : switch (fit) {
                    case EARLY -> "too-early";
                    case LATE -> "too-late";
                    default -> "missing-step";
                };
        boolean now = Standing.near(saying.at(), scene.now(), Moments.AHEAD);
        if (now || fit == Order.Fit.MISSING && kind != ActKind.DRAIN) return Optional.of(Doubt.of("ask." + key, name));
        throw new NotSoException("line." + key, () -> List.of(name, moments.moment(saying.at())));
    }

    private Optional<Doubt> water(Did did, Standing standing, Instant at) throws NotSoException {
        double waterL = did.waterL().orElseThrow();
        double batchKg = standing.heldKg(at)
                .orElse(scene.expectedKg().orElse(scene.limits().grainKg()));
        String shown = quantities.volume(waterL);
        if (did.act() == ActKind.SPRINKLE) {
            if (waterL > 0.5 * batchKg)
                throw new NotSoException("line.much-water", () -> List.of(shown, quantities.mass(batchKg)));
            return waterL > 0.15 * batchKg || waterL < 0.01
                    ? Optional.of(Doubt.of("ask.water", shown))
                    : Optional.empty();
        }
        if (waterL > 20 * scene.limits().grainKg())
            throw new NotSoException("line.much-water", () -> List.of(shown, quantities.mass(batchKg)));
        boolean little = waterL < 0.3 * scene.limits().grainKg();
        return little ? Optional.of(Doubt.of("ask.water", shown)) : Optional.empty();
    }

    private Optional<Doubt> weight(Weighed weighed, Instant at, Standing standing, List<Saying> all)
            throws NotSoException {
        double netKg = weighed.netKg();
        Stage stage = standing.stage(at);
        double dryKg = scene.limits().dryKg();
        boolean roasts = stage == Stage.OVEN || standing.did(at, ActKind.ROAST);
        double mostKg = dryKg * (1 + NoSuchWeight.WETTEST_RATIO);
        if (roasts) mostKg = scene.limits().grainKg();
        else if (stage == Stage.OFF)
            mostKg = Math.max(scene.limits().grainKg(), scene.expectedKg().orElse(0) / LIKELY_FRACTION);
        double leastKg = switch (stage) {
            case OFF, OVEN -> dryKg * NoSuchWeight.LEAST_DRY_FRACTION;
            case KILN -> dryKg * (1 - KILN_LOSS_FRACTION);
            default -> dryKg;
        };
        if (roasts) leastKg = dryKg * (NoSuchWeight.LEAST_DRY_FRACTION - KILN_LOSS_FRACTION);
        if (netKg < leastKg || netKg > mostKg) {
            double leastHereKg = leastKg;
            double mostHereKg = mostKg;
            throw new NotSoException(
                    "line.no-such-weight",
                    () -> List.of(quantities.mass(netKg), quantities.mass(leastHereKg), quantities.mass(mostHereKg)));
        }
        OptionalDouble held = standing.heldKg(at);
        if (held.isPresent() && netKg > held.getAsDouble() * (1 + Weighed.FORBIDDEN_JUMP_FRACTION))
            return heavier(weighed, held.getAsDouble());
        if (stage == Stage.OFF && netKg > scene.limits().grainKg())
            return Optional.of(Doubt.of("ask.wet-malt", quantities.mass(netKg)));
        boolean soaking = stage == Stage.STEEPING
                && all.stream()
                        .noneMatch(said -> said.act()
                                .filter(kind -> kind == ActKind.SOAK
                                        || kind == ActKind.DRAIN && said.at().equals(at))
                                .isPresent());
        if (soaking) return Optional.of(Doubt.of("ask.under-water"));
        boolean late = Duration.between(at, scene.now()).compareTo(NEAR_PLAN) > 0;
        double expectedKg = scene.expectedKg().orElse(0);
        boolean light = !late && stage != Stage.KILN && netKg < expectedKg * LIKELY_FRACTION;
        return light
                ? Optional.of(Doubt.of("ask.unlikely-weight", quantities.mass(netKg), quantities.mass(expectedKg)))
                : Optional.empty();
    }

    private Optional<Doubt> heavier(Weighed weighed, double heldKg) throws NotSoException {
        double netKg = weighed.netKg();
        boolean vessel = weighed.tare().isEmpty() && !explaining(netKg, heldKg).isEmpty();
        if (vessel) return Optional.of(Doubt.of("ask.heavier", quantities.mass(netKg), quantities.mass(heldKg)));
        throw new NotSoException("line.heavier", () -> List.of(quantities.mass(netKg), quantities.mass(heldKg)));
    }

    /** Vessels that were on the scale too, if the weight is to be true. */
    List<Tare> explaining(double grossKg, double heldKg) {
        return scene.journal().vessels().stream()
                .filter(tare -> grossKg - tare.tareKg() <= heldKg * (1 + Weighed.FORBIDDEN_JUMP_FRACTION / 4)
                        && grossKg - tare.tareKg() >= heldKg * 0.85)
                .toList();
    }

    private Optional<Doubt> moisture(SampleDried sample) throws NotSoException {
        double fraction = sample.moisture().wetBasisFraction();
        if (fraction > 0.6) throw new NotSoException("line.too-wet", String.valueOf(Math.round(fraction * 100)));
        return Optional.empty();
    }

    private Optional<Doubt> rootlets(double rootletsKg) throws NotSoException {
        if (rootletsKg > scene.limits().grainKg())
            throw new NotSoException("line.much-rootlets", () -> List.of(quantities.mass(rootletsKg)));
        boolean many = rootletsKg > 0.12 * scene.limits().dryKg();
        return many ? Optional.of(Doubt.of("ask.rootlets", quantities.mass(rootletsKg))) : Optional.empty();
    }
}
