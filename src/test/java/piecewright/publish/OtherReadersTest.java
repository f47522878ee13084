package piecewright.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.calendar.IcsWriter;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanFixture;
import piecewright.calendar.ReadBack;
import piecewright.calendar.Revision;

/** Readers that are not Java: same UID, same start, same end, across a change of the clocks. */
@Tag("clients")
class OtherReadersTest {
    @TempDir
    Path folder;

    private Program programs;
    private Map<String, String> planned;

    @BeforeEach
    void writeTheFile() throws IOException {
        programs = new Program(folder);
        Revision first =
                Ledger.startedFor(PlanFixture.BATCH).next(PlanFixture.usual().events(), PlanFixture.NOW);
        PlanFixture changed = PlanFixture.usual().withTurns(5).withSoak(Duration.ofHours(11));
        Revision second = first.ledger().next(changed.events(), PlanFixture.NOW.plusSeconds(60));
        planned = ReadBack.planned(second.forImportFile());
        Files.write(folder.resolve("plan.ics"), new IcsWriter().file("Malt – lot 7", second.forImportFile()));
    }

    @Test
    void vobjectReadsTheSameInstantsAndFindsNothingWrong() throws Exception {
        programs.mustBeThere("python3-vobject", Program.PYTHON, "-c", "import vobject");
        assertEquals(planned, read(Program.PYTHON, script("""
                        import vobject, datetime
                        u = datetime.timezone.utc
                        calendar = vobject.readOne(open('plan.ics', encoding='utf-8', newline='').read())
                        calendar.validate(raiseException=True)
                        for e in calendar.vevent_list:
                            e.validate(raiseException=True)
                            print(e.uid.value, *[t.value.astimezone(u).strftime('%Y-%m-%dT%H:%M:%SZ') for t in (e.dtstart, e.dtend)])
                        """)));
    }

    @Test
    void icalendarReadsTheSameInstants() throws Exception {
        programs.mustBeThere("python3-icalendar", Program.PYTHON, "-c", "import icalendar");
        assertEquals(planned, read(Program.PYTHON, script("""
                        import icalendar, datetime
                        u = datetime.timezone.utc
                        for e in icalendar.Calendar.from_ical(open('plan.ics', 'rb').read()).walk('VEVENT'):
                            assert not e.errors, e.errors
                            print(e['UID'], *[e[t].dt.astimezone(u).strftime('%Y-%m-%dT%H:%M:%SZ') for t in ('DTSTART', 'DTEND')])
                        """)));
    }

    @Test
    void libicalReadsTheSameInstantsAndFindsNothingWrong() throws Exception {
        String load = "import gi; gi.require_version('ICalGLib','3.0'); from gi.repository import ICalGLib";
        programs.mustBeThere("gir1.2-ical-3.0 with python3-gi", Program.PYTHON, "-c", load);
        assertEquals(planned, read(Program.PYTHON, script(load + """

                        import datetime
                        calendar = ICalGLib.Component.new_from_string(open('plan.ics', encoding='utf-8', newline='').read())
                        assert calendar.check_restrictions(), 'restrictions'
                        assert calendar.count_errors() == 0, 'errors'
                        kind = ICalGLib.ComponentKind.VEVENT_COMPONENT
                        e = calendar.get_first_component(kind)
                        while e:
                            print(e.get_uid(), *[datetime.datetime.fromtimestamp(t.as_timet_with_zone(t.get_timezone()), datetime.timezone.utc).strftime('%Y-%m-%dT%H:%M:%SZ') for t in (e.get_dtstart(), e.get_dtend())])
                            e = calendar.get_next_component(kind)
                        """)));
    }

    /** Looked for on NODE_PATH. */
    @Test
    void icalJsReadsTheSameInstants() throws Exception {
        programs.mustBeThere("ical.js for node", "node", "-e", "require('ical.js')");
        assertEquals(planned, read("node", "-e", """
                        const I = require('ical.js');
                        const c = new I.Component(I.parse(require('fs').readFileSync('plan.ics', 'utf8')));
                        for (const v of c.getAllSubcomponents('vevent')) {
                          const e = new I.Event(v);
                          const iso = t => t.toJSDate().toISOString().replace('.000', '');
                          console.log(e.uid, iso(e.startDate), iso(e.endDate));
                        }
                        """));
    }

    private String script(String text) throws IOException {
        Path script = folder.resolve("read.py");
        Files.writeString(script, text);
        return script.toString();
    }

    private Map<String, String> read(String... command) throws IOException, InterruptedException {
        Map<String, String> times = new TreeMap<>();
        programs.run(command)
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .forEach(line -> {
                    String[] parts = line.split(" ", 2);
                    times.put(parts[0], parts[1]);
                });
        return times;
    }
}
