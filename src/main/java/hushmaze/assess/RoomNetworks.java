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
import hushmaze.project.Room;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The room with its door shut as a network: one branch for every path, for the door's gaps, the gap below it and the room's
 * leakage, between the room and what lies around it, or a duct that holds a pressure of its own. Places around the room are
 * taken to be at one pressure.
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
    private static final String AROUND = "around";
    private static final String DUCT = "duct ";

    static String name(int path) {
        return "path " + path;
    }

    /** Whether there is any way for air but the paths. */
    boolean leaks() {
        return room.door() != null || room.leakage() != null;
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
        places.put(AROUND, 0.0);
        List<Branch> branches = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            DrivenPath path = paths.get(i);
            BranchLaw law = i == fixedPath ? new FixedFlow(flow) : path.law(edge);
            String outer = AROUND;
            if (path.outerPressure() != 0) {
                outer = DUCT + i;
                places.put(outer, path.outerPressure());
            }
            branches.add(new Branch(name(i), path.isSupply() ? outer : ROOM, path.isSupply() ? ROOM : outer, law));
        }
        leaks(branches);
        return new RoomNetwork(places, List.of(ROOM), branches);
    }

    private void leaks(List<Branch> branches) {
        DoorLeak door = room.door();
        if (door != null) {
            branches.add(new Branch(DOOR, ROOM, AROUND, gaps(door)));
            if (door.undercutArea() > 0) {
                BranchLaw below = new OrificeLaw(door.undercutArea(), air.density());
                branches.add(new Branch(UNDERCUT, ROOM, AROUND, below));
            }
        }
        Leakage leakage = room.leakage();
        if (leakage != null) {
            BranchLaw law = CrackLaw.through(leakage.flow(), leakage.pressure(), leakage.exponent());
            branches.add(new Branch(LEAKAGE, ROOM, AROUND, law));
        }
    }

    private BranchLaw gaps(DoorLeak door) {
        if (door.depth() == null) {
            return new OrificeLaw(door.length() * door.width(), air.density());
        }
        return new SlitLaw(door.length(), door.width(), door.depth(), 0, air.density(), air.viscosity());
    }
}
