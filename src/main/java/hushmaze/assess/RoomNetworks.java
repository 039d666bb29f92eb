package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.network.BranchLaw;
import hushmaze.air.network.CrackLaw;
import hushmaze.air.network.FixedFlow;
import hushmaze.air.network.OrificeLaw;
import hushmaze.air.network.RoomNetwork;
import hushmaze.air.network.RoomNetwork.Branch;
import hushmaze.air.network.SlitLaw;
import hushmaze.project.DoorLeak;
import hushmaze.project.Leakage;
import hushmaze.project.Opening;
import hushmaze.project.Room;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The room with its door shut as a network: one branch for every path, for the door's gaps, the gap below it and the room's
 * leakage, between the room and the house, where the door leads, the outdoors, or a duct with a pressure of its own. The house
 * is taken to be at no pressure.
 *
 * @param room with its door and leakage
 * @param paths in the project's order
 * @param air its state
 */
record RoomNetworks(Room room, List<DrivenPath> paths, AirState air) {
    static final String ROOM = "room";
    static final String DOOR = "door";
    static final String UNDERCUT = "undercut";
    private static final String LEAKAGE = "leakage";
    private static final String HOUSE = "house";
    private static final String OUTSIDE = "outside";
    private static final String DUCT = "duct ";

    static String name(int path) {
        return "path " + path;
    }

    private static boolean isOutdoors(DrivenPath path) {
        return path.path().brief().opening().beyond() == Opening.Beyond.OUTDOORS;
    }

    /** Pressure outdoors over that in the house, Pa. */
    double outside() {
        return room.outsidePressure() == null ? 0 : room.outsidePressure();
    }

    /** Pressure of the place a path comes from or leads to, without that of its drive, Pa. */
    double around(DrivenPath path) {
        return isOutdoors(path) ? outside() : 0;
    }

    /** The same with the paths read from tables. */
    RoomNetworks tabled() {
        return new RoomNetworks(room, paths.stream().map(DrivenPath::tabled).toList(), air);
    }

    RoomNetwork at(Edge edge) {
        return at(edge, -1, 0);
    }

    /** The network in which one path brings a flow whatever happens, m³/s. */
    RoomNetwork at(Edge edge, int fixedPath, double flow) {
        Map<String, Double> places = new LinkedHashMap<>();
        places.put(HOUSE, 0.0);
        places.put(OUTSIDE, outside());
        List<Branch> branches = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            DrivenPath path = paths.get(i);
            BranchLaw law = i == fixedPath ? new FixedFlow(flow) : path.law(edge);
            String outer = isOutdoors(path) ? OUTSIDE : HOUSE;
            if (path.outerPressure() != 0) {
                outer = DUCT + i;
                places.put(outer, path.outerPressure() + around(path));
            }
            branches.add(new Branch(name(i), path.isSupply() ? outer : ROOM, path.isSupply() ? ROOM : outer, law));
        }
        leaks(branches);
        return new RoomNetwork(places, List.of(ROOM), branches);
    }

    private void leaks(List<Branch> branches) {
        DoorLeak door = room.door();
        if (door != null) {
            branches.add(new Branch(DOOR, ROOM, HOUSE, gaps(door)));
            if (door.undercutArea() > 0) {
                BranchLaw below = new OrificeLaw(door.undercutArea(), air.density());
                branches.add(new Branch(UNDERCUT, ROOM, HOUSE, below));
            }
        }
        Leakage leakage = room.leakage();
        if (leakage != null) {
            BranchLaw law = CrackLaw.through(leakage.flow(), leakage.pressure(), leakage.exponent());
            branches.add(new Branch(LEAKAGE, ROOM, HOUSE, law));
        }
    }

    private BranchLaw gaps(DoorLeak door) {
        if (door.depth() == null) {
            return new OrificeLaw(door.length() * door.width(), air.density());
        }
        return new SlitLaw(door.length(), door.width(), door.depth(), 0, air.density(), air.viscosity());
    }
}
