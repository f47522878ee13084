package piecewright.oracle;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.house.House;
import piecewright.house.LocalHours;
import piecewright.plan.Act;
import piecewright.plan.Begun;
import piecewright.plan.InnerSchedule;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.style.MaltStyle;

/** Copies fields of the program's records into plain data, and judges nothing. */
public final class Copied {
    private Copied() {}

    public static Case of(PlanRequest request, Optional<Begun> begun, Plan plan) {
        Set<String> done = new HashSet<>();
        begun.ifPresent(started -> started.visits().forEach(visit -> done.add(visit.id())));
        List<Case.Busy> others = new ArrayList<>();
        request.besides()
                .forEach(booking ->
                        booking.hands().forEach(hand -> others.add(new Case.Busy(hand.from(), hand.until()))));
        return new Case(home(request.house()), norms(request.style()), told(plan), begun.map(Begun::now), done, others);
    }

    private static Norms norms(MaltStyle style) {
        return new Norms(
                style.growth().warmestGrainC(),
                style.growth().acceptable().lowFraction(),
                style.steep().acceptable().lowFraction());
    }

    static Home home(House house) {
        List<Home.Somebody> people = new ArrayList<>();
        house.people().forEach(person -> {
            Map<DayOfWeek, List<Home.Span>> week = new HashMap<>();
            person.week().forEach((day, hours) -> week.put(day, spans(hours)));
            Map<LocalDate, List<Home.Span>> dated = new HashMap<>();
            person.exceptions().forEach((day, hours) -> dated.put(day, spans(hours)));
            people.add(new Home.Somebody(person.name(), week, dated));
        });
        Home.Nights nights = new Home.Nights(
                house.nights().most(),
                minute(house.nights().from()),
                minute(house.nights().until()));
        Map<String, Home.Stove> stoves = new HashMap<>();
        house.kit()
                .heaters()
                .forEach(heater -> stoves.put(
                        heater.name(),
                        new Home.Stove(
                                heater.control().safeUnattended(),
                                heater.control().holdsSetPoint())));
        return new Home(house.zone(), people, nights, stoves);
    }

    private static List<Home.Span> spans(List<LocalHours> hours) {
        return hours.stream()
                .map(one -> new Home.Span(
                        minute(one.fromInclusive()),
                        one.untilExclusive().equals(LocalTime.MIDNIGHT) ? 1440 : minute(one.untilExclusive())))
                .toList();
    }

    private static int minute(LocalTime time) {
        return time.getHour() * 60 + time.getMinute();
    }

    private static Told told(Plan plan) {
        List<Told.Step> steps = plan.acts().stream().map(Copied::step).toList();
        List<Told.Stretch> phases = plan.phases().stream()
                .map(phase -> new Told.Stretch(phase.id(), phase.kind().key(), phase.from(), phase.until()))
                .toList();
        return new Told(
                plan.subject().readyAt(),
                plan.outcome().rawGrainKg(),
                plan.outcome().finishedMaltKg(),
                plan.outcome().scaleMaltKg(),
                steps,
                phases);
    }

    private static Told.Step step(Act act) {
        OptionalDouble hottest = act.inner().stream()
                .map(InnerSchedule::steps)
                .flatMap(List::stream)
                .flatMapToDouble(inner -> inner.ovenC().stream())
                .max();
        return new Told.Step(
                act.id(),
                act.kind().key(),
                act.startsAt(),
                (int) act.work().toMinutes(),
                act.setting().place().orElse(""),
                act.setting().setC(),
                hottest,
                new Told.Found(
                        act.expect().massKg(),
                        act.expect().moisture().wetBasisFraction(),
                        act.expect().grainC(),
                        act.expect().acrospireFraction()));
    }
}
