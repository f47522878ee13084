package piecewright.desktop.timeline;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import piecewright.desktop.timeline.ActMark.Standing;
import piecewright.desktop.timeline.PieceChart.Lane;
import piecewright.desktop.timeline.PieceChart.Ribbon;
import piecewright.desktop.timeline.PieceChart.Shelf;
import piecewright.desktop.timeline.PieceChart.Texture;
import piecewright.desktop.timeline.PieceChart.Traces;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Act;
import piecewright.plan.Phase;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.process.Climate;
import piecewright.process.Surroundings;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** Turns a plan into what the timeline draws. Pure. */
public final class ChartWriter {
    private static final Duration BEFORE = Duration.ofHours(9);
    private static final Duration AFTER = Duration.ofHours(15);

    private static final Map<String, Texture> TEXTURES = Map.of(
            "immersion", Texture.WAVES,
            "air-rest", Texture.BLANK,
            "growth", Texture.PLAIN,
            "withering", Texture.LINES,
            "drying", Texture.UPRIGHTS,
            "curing", Texture.UPRIGHTS,
            "resting", Texture.BLANK);

    private final PlanRequest request;
    private final Plan plan;
    private final Wording wording;
    private final QuantityFormat quantities;

    public ChartWriter(PlanRequest request, Plan plan, DisplayUnits units) {
        this.request = request;
        this.plan = plan;
        this.wording = new Wording(units, plan.subject().zone());
        this.quantities = new QuantityFormat(units);
    }

    /**
     * @param standing what has become of each act
     */
    public PieceChart chart(Function<Act, Standing> standing) {
        Instant from = plan.startsAt().minus(BEFORE);
        Instant until = plan.acts().get(plan.acts().size() - 1).endsAt().plus(AFTER);
        Instant end = plan.subject().readyAt().isAfter(until) ? plan.subject().readyAt() : until;
        List<ActMark> acts = plan.acts().stream()
                .map(act -> ActMark.of(act, wording, standing.apply(act)))
                .toList();
        PieceChart.Frame frame = DayShades.frame(request, from, until, end);
        return new PieceChart(
                frame, acts, ribbons(), traces(from, until), PieceChart.Bands.none(), shelves(), List.of());
    }

    private List<Ribbon> ribbons() {
        List<Ribbon> ribbons = new ArrayList<>();
        for (Phase phase : plan.phases()) {
            String key = phase.kind().key();
            Texture texture = TEXTURES.getOrDefault(key, Texture.DOTS);
            ribbons.add(new Ribbon(wording.phaseTitle(phase.kind()), texture, phase.from(), phase.until()));
        }
        return ribbons;
    }

    private Traces traces(Instant from, Instant until) {
        List<Plan.Sample> course = plan.course();
        Instant chitted = course.stream()
                .filter(sample -> sample.state().growth().growthRatio() > 0)
                .map(Plan.Sample::at)
                .findFirst()
                .orElse(Instant.MAX);
        List<Plan.Sample> grown =
                course.stream().filter(sample -> !sample.at().isBefore(chitted)).toList();
        return new Traces(
                Trace.of(course, sample -> sample.state().mass().moisture().wetBasisPercent()),
                Trace.of(course, sample -> sample.state().grainC()),
                air(from, until),
                Trace.of(grown, sample -> sample.state().growth().growthRatio()),
                Trace.of(course, sample -> sample.state().kiln().colourEbc()));
    }

    /** The air of the room in which the grain lies at each time. */
    private Trace air(Instant from, Instant until) {
        Map<String, Surroundings> rooms = new HashMap<>();
        List<Trace.Point> points = new ArrayList<>();
        for (Instant at = from; at.isBefore(until); at = at.plus(Duration.ofMinutes(30))) {
            Place place = roomAt(at);
            Surroundings room = rooms.computeIfAbsent(
                    place.name(), name -> Climate.of(place, request.house().zone(), from, until));
            double hours = Duration.between(from, at).toMinutes() / 60.0;
            points.add(new Trace.Point(at, room.airC(hours)));
        }
        return new Trace(points);
    }

    private Place roomAt(Instant at) {
        House house = request.house();
        Phase phase = plan.phases().get(0);
        for (Phase each : plan.phases()) if (!each.from().isAfter(at)) phase = each;
        String where = phase.place();
        Stream<String> ofKit = Stream.concat(
                house.kit().heaters().stream()
                        .filter(heater -> heater.name().equals(where))
                        .map(heater -> heater.place()),
                house.kit().boxes().stream()
                        .filter(box -> box.name().equals(where))
                        .map(box -> box.place()));
        String room = ofKit.findFirst().orElse(where);
        Optional<Place> found = house.places().stream()
                .filter(place -> place.name().equals(room))
                .findFirst();
        return found.orElse(house.places().get(0));
    }

    private List<Shelf> shelves() {
        List<Shelf> shelves = new ArrayList<>();
        var steep = request.style().steep();
        plan.acts().stream()
                .filter(act -> act.kind().key().equals("floor"))
                .findFirst()
                .ifPresent(cast -> shelves.add(new Shelf(
                        Lane.MOISTURE,
                        WindowWords.say(
                                "chart.steep-out",
                                quantities.percent(steep.acceptable().lowFraction()),
                                quantities.percent(steep.acceptable().highFraction())),
                        cast.startsAt().minus(Duration.ofHours(30)),
                        cast.startsAt().plus(Duration.ofHours(6)),
                        100 * steep.acceptable().lowFraction(),
                        100 * steep.acceptable().highFraction())));
        for (Act act : plan.acts()) {
            OptionalDouble gate = act.setting().gateFraction();
            if (gate.isPresent()) shelves.add(gate(act, 100 * gate.getAsDouble()));
        }
        plan.acts().stream()
                .filter(act -> act.kind().key().equals("load"))
                .findFirst()
                .ifPresent(load -> shelves.add(growthShelf(load)));
        return shelves;
    }

    private Shelf gate(Act act, double gatePercent) {
        String label = WindowWords.say("chart.gate", quantities.percent(gatePercent / 100));
        Duration around = Duration.ofHours(9);
        return new Shelf(
                Lane.MOISTURE,
                label,
                act.startsAt().minus(around),
                act.startsAt().plus(around),
                gatePercent,
                gatePercent);
    }

    private Shelf growthShelf(Act load) {
        var wanted = request.style().growth().acceptable();
        String label = WindowWords.say(
                "chart.growth-stop",
                quantities.percent(wanted.lowFraction()),
                quantities.percent(wanted.highFraction()));
        Duration around = Duration.ofHours(30);
        return new Shelf(
                Lane.GROWTH,
                label,
                load.startsAt().minus(around),
                load.startsAt().plus(Duration.ofHours(4)),
                wanted.lowFraction(),
                wanted.highFraction());
    }
}
