package piecewright.campaign;

import java.time.LocalDate;
import java.util.List;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Who lives in a made-up household, and when they can see to the grain. */
final class Residents {
    private static final LocalDate FIRST = LocalDate.of(2027, 1, 1);

    private final Dice dice;

    Residents(Dice dice) {
        this.dice = dice;
    }

    void live(ObjectNode house) {
        ArrayNode people = house.putArray("people");
        int most = dice.once(0.35) ? 2 : 1;
        for (int i = 0; i < most; i++) {
            ObjectNode person = people.addObject().put("name", i == 0 ? "the one who began it" : "the one who helps");
            week(person.putObject("week"));
            daysAway(person);
        }
        if (dice.once(0.3)) {
            house.putObject("nightActs")
                    .put("most", dice.from(1, 2))
                    .put("from", "23:00")
                    .put("until", "05:30");
        }
    }

    private void week(ObjectNode week) {
        switch (dice.from(0, 4)) {
            case 0 -> {
                hours(week, "weekdays", "06:00-07:30", "17:30-22:30");
                hours(week, "weekend", "07:30-23:00");
            }
            case 1 -> hours(week, "every day", "05:30-08:00", "12:00-13:00", "17:00-21:30");
            case 2 -> {
                hours(week, "monday-wednesday", "12:00-24:00");
                hours(week, "thursday-saturday", "00:00-01:30", "14:30-23:00");
                hours(week, "sunday", "08:00-22:00");
            }
            case 3 -> {
                hours(week, "weekdays", "06:15-07:10", "18:05-21:50");
                hours(week, "saturday-sunday", "00:30-02:30", "09:00-23:30");
            }
            default -> hours(week, "every day", "07:00-22:30");
        }
    }

    private void daysAway(ObjectNode person) {
        ArrayNode exceptions = person.putArray("exceptions");
        int day = 0;
        for (int i = dice.from(0, 12); i > 0; i--) {
            day += dice.from(1, 40);
            ObjectNode one =
                    exceptions.addObject().put("date", FIRST.plusDays(day).toString());
            ArrayNode hours = one.putArray("hours");
            dice.of(List.of(List.of("10:00-12:00"), List.<String>of(), List.of("07:00-23:00"), List.of("19:00-23:59")))
                    .forEach(hours::add);
        }
    }

    private static void hours(ObjectNode week, String days, String... spans) {
        ArrayNode hours = week.putArray(days);
        for (String span : spans) hours.add(span);
    }
}
