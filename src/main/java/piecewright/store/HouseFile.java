package piecewright.store;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.house.House;
import piecewright.house.Kit;
import piecewright.house.NightActs;
import piecewright.house.Person;
import piecewright.house.Place;

/** Reads a household from its JSON file, format 1; logger files lie in the same folder. */
public final class HouseFile {
    private HouseFile() {}

    /** The household in this file, at most 1 MB. */
    public static House read(Path file) throws StoreException {
        return parse(file, TextFile.read(file, TextFile.SMALL_BYTES));
    }

    /** The household in this text; logger files are looked up beside the file. */
    public static House parse(Path file, String text) throws StoreException {
        JsonBlock root =
                JsonBlock.root(file, text, "name", "timeZone", "places", "steepWaterC", "people", "nightActs", "kit");
        String name = root.text("name");
        ZoneId zone = LocalTimes.zone(root, "timeZone");
        List<Place> places = places(root, zone);
        double steepWaterC = root.number("steepWaterC", 0, 40);
        List<Person> people = people(root);
        Optional<JsonBlock> night = root.optionalBlock("nightActs");
        NightActs nights = night.isPresent() ? nights(night.get()) : NightActs.none();
        Kit kit = KitReader.kit(
                root.block("kit"), places.stream().map(Place::name).toList());
        return root.make(() -> new House(name, zone, places, steepWaterC, people, nights, kit));
    }

    private static List<Place> places(JsonBlock root, ZoneId zone) throws StoreException {
        List<Place> places = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (JsonBlock block : root.blocks("places")) {
            Place place = PlaceReader.place(block, zone);
            if (!names.add(place.name())) throw block.refused("name", "is taken by another place; choose another name");
            places.add(place);
        }
        if (places.isEmpty()) throw root.refused("places", "must name at least one room; add it");
        return places;
    }

    private static List<Person> people(JsonBlock root) throws StoreException {
        List<Person> people = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (JsonBlock block : root.blocks("people")) {
            Person person = WeekReader.person(block);
            if (!names.add(person.name()))
                throw block.refused("name", "is taken by another person; choose another name");
            people.add(person);
        }
        if (people.isEmpty()) throw root.refused("people", "must name at least one person with hours; add it");
        return people;
    }

    private static NightActs nights(JsonBlock block) throws StoreException {
        block.onlyKeys("most", "from", "until");
        int most = block.whole("most", 0, 20);
        var from = LocalTimes.time(block, "from");
        var until = LocalTimes.time(block, "until");
        return block.make(() -> new NightActs(most, from, until));
    }
}
