package piecewright.remedy;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.style.MaltStyle;

/** A wish with one change made. */
public final class Changed {
    /** Judgement: the night begins and ends so for whoever never said. */
    private static final LocalTime NIGHT_FROM = LocalTime.of(22, 30);

    /** Judgement: the same. */
    private static final LocalTime NIGHT_UNTIL = LocalTime.of(6, 0);

    private final PlanRequest request;
    private final House house;

    public Changed(PlanRequest request) {
        this.request = request;
        this.house = request.house();
    }

    public PlanRequest by(Change change) {
        if (change instanceof Change.ChilledWater c) return in(house.withSteepWaterC(c.fillC()));
        if (change instanceof Change.ColderPlace c) return in(equipped(movedTo(c.place())));
        if (change instanceof Change.OtherPlace c) return in(keptIn(c.place()));
        if (change instanceof Change.ShallowerBed c)
            return request.arranged(request.arrangement().withBedCm(c.bedCm()));
        if (change instanceof Change.NightActs c) return in(nights(c.most()));
        if (change instanceof Change.LongerHours c) return in(peopled(c.minutes()));
        if (change instanceof Change.MoreTrays c) return in(equipped(more(c)));
        if (change instanceof Change.ShorterRest c) return resting(c.restDays());
        if (change instanceof Change.SmallerPiece c) return wish(smaller(c.massKg()), request.when());
        if (change instanceof Change.OtherStart c) return wish(request.amount(), new When.StartOn(c.day()));
        Change.LaterDay later = (Change.LaterDay) change;
        When.ReadyBy when = (When.ReadyBy) request.when();
        return wish(request.amount(), new When.ReadyBy(later.readyBy(), when.earliestStart()));
    }

    private PlanRequest in(House changed) {
        return request.withHouse(changed);
    }

    private PlanRequest wish(Amount amount, When when) {
        return request.withAmount(amount).withWhen(when);
    }

    private PlanRequest resting(double restDays) {
        MaltStyle style = request.style();
        var finish = new MaltStyle.FinishSchedule(
                restDays,
                style.finish().preferredRestDays(),
                style.finish().colour(),
                style.finish().lever());
        return request.withStyle(style.finishedBy(finish));
    }

    private Amount smaller(double massKg) {
        return request.amount() instanceof Amount.RawGrain
                ? new Amount.RawGrain(massKg)
                : new Amount.FinishedMalt(massKg);
    }

    private House nights(int most) {
        NightActs like = house.nights();
        NightActs nights = like.most() > 0
                ? new NightActs(most, like.from(), like.until())
                : new NightActs(most, NIGHT_FROM, NIGHT_UNTIL);
        return house.withNights(nights);
    }

    private House peopled(int minutes) {
        List<Person> people =
                house.people().stream().map(person -> longer(person, minutes)).toList();
        return house.withPeople(people);
    }

    /** Mornings end later and evenings begin sooner; dated absences stay. */
    private static Person longer(Person person, int minutes) {
        var week = person.week().entrySet().stream()
                .collect(Collectors.toMap(Map.Entry::getKey, day -> longer(day.getValue(), minutes)));
        return new Person(person.name(), week, person.exceptions());
    }

    private static List<LocalHours> longer(List<LocalHours> day, int minutes) {
        List<LocalHours> longer = new ArrayList<>();
        for (LocalHours hours : day) {
            boolean evening = hours.fromInclusive().isAfter(LocalTime.NOON);
            LocalTime from = evening ? hours.fromInclusive().minusMinutes(minutes) : hours.fromInclusive();
            LocalTime until = hours.untilExclusive();
            if (!evening && until.isAfter(LocalTime.MIDNIGHT) && until.isBefore(LocalTime.of(20, 0)))
                until = until.plusMinutes(minutes);
            longer.add(new LocalHours(from, until));
        }
        return longer;
    }

    private House equipped(List<Trays> trays) {
        Kit kit = house.kit();
        return house.withKit(new Kit(kit.vessels(), trays, kit.boxes(), kit.heaters(), kit.scale(), kit.learned()));
    }

    private House keptIn(String place) {
        Kit kit = house.kit();
        List<Vessel> vessels = kit.vessels().stream()
                .map(vessel -> new Vessel(vessel.name(), place, vessel.volumeL()))
                .toList();
        return house.withKit(new Kit(vessels, movedTo(place), kit.boxes(), kit.heaters(), kit.scale(), kit.learned()));
    }

    private List<Trays> movedTo(String place) {
        return house.kit().trays().stream()
                .map(trays -> new Trays(trays.name(), place, trays.count(), trays.areaM2()))
                .toList();
    }

    private List<Trays> more(Change.MoreTrays change) {
        return house.kit().trays().stream()
                .map(trays -> trays.name().equals(change.trays())
                        ? new Trays(trays.name(), trays.place(), change.count(), trays.areaM2())
                        : trays)
                .toList();
    }
}
