package piecewright.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import piecewright.calendar.DatedEvent;

/** A calendar of the program khal on a folder of one file for each event. */
final class KhalFolder {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Program programs;
    private final Path home;
    private final Path events;

    KhalFolder(Program programs, Path home, Path events) throws IOException {
        this.programs = programs;
        this.home = home;
        this.events = Files.createDirectories(events);
        Files.writeString(home.resolve("khal.conf"), """
                [calendars]
                [[malt]]
                path = %s
                [locale]
                local_timezone = Europe/Berlin
                default_timezone = Europe/Berlin
                timeformat = %%H:%%M
                dateformat = %%Y-%%m-%%d
                longdateformat = %%Y-%%m-%%d
                datetimeformat = %%Y-%%m-%%d %%H:%%M
                longdatetimeformat = %%Y-%%m-%%d %%H:%%M
                [default]
                default_calendar = malt
                [sqlite]
                path = %s
                """.formatted(events, home.resolve("khal.db")));
    }

    void load(Path file) throws IOException, InterruptedException {
        programs.run("khal", "-c", config(), "import", "--batch", file.toString());
    }

    /** UID → "start end status title" in Berlin time, as khal lists them from 2031-03-28 for sixty days. */
    Map<String, String> listed() throws IOException, InterruptedException {
        String all = programs.run(
                "khal",
                "-c",
                config(),
                "list",
                "-o",
                "--format",
                "|{uid}|{start-long} {end-long} {status}|{title}|",
                "2031-03-28",
                "60d");
        Map<String, String> events = new TreeMap<>();
        all.lines()
                .filter(line -> line.startsWith("|"))
                .map(line -> line.split("\\|"))
                .forEach(parts -> {
                    if (events.put(parts[1], parts[2].strip() + " " + parts[3]) != null)
                        throw new AssertionError("twice: " + parts[1]);
                });
        return events;
    }

    /** The same of a plan. */
    static Map<String, String> expected(List<DatedEvent> plan) {
        Map<String, String> events = new TreeMap<>();
        for (DatedEvent dated : plan) {
            LocalDateTime start = LocalDateTime.ofInstant(dated.event().span().startsAt(), BERLIN);
            LocalDateTime end = LocalDateTime.ofInstant(dated.event().span().endsAt(), BERLIN);
            events.put(
                    dated.uid().toString(),
                    MINUTE.format(start) + " " + MINUTE.format(end) + " " + dated.status() + " "
                            + dated.event().summary());
        }
        return events;
    }

    TreeSet<String> files() throws IOException {
        try (Stream<Path> files = Files.list(events)) {
            TreeSet<String> names = new TreeSet<>();
            files.forEach(file -> names.add(file.getFileName().toString()));
            return names;
        }
    }

    private String config() {
        return home.resolve("khal.conf").toString();
    }
}
