package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.AirMedium;
import hushmaze.sound.wave.LinerMedium;
import hushmaze.sound.wave.Medium;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSpace;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The air path of a box as a space of air and liner, read from its solid: the cavity less the baffles, the liner pieces in
 * their places, a {@link FacingMedium} on their faces if they have a facing (not on cut edges), and the port holes through liner and
 * shell. Boards are rigid. Beyond each port a duct of its size leads on
 * for ever.
 *
 * <p>The full space is the solid as it is. The flat one is its section by the fold plane at half the clear height, with
 * three approximations:
 *
 * <ul>
 *   <li>a port lower than the pass keeps its place in the section and has its own height as weight, so that the area steps
 *       as it does in the box;
 *   <li>the air between lined broad faces is a {@link BroadLinedMedium}; the lining of sides, ends and baffles reaches from board
 *       to board, because broad lining lies over its edges;
 *   <li>a port through a broad face is not in the fold plane. A mouth in the long outer side of the same pass stands for it,
 *       at the same place along the pass, as long along it, and with the port's size across the pass as weight, so that
 *       its area, the way the sound turns and the length of the path are kept.
 * </ul>
 */
public final class SolidSpace {
    private static final Medium AIR = new AirMedium();
    /** What a facing takes of its liner, m: so little that it is not missed. */
    private static final double FACING = 1e-4;

    private SolidSpace() {}

    /**
     * The box in all three directions.
     *
     * @param solid of the box
     * @param liner model of every liner piece; not asked for a bare box
     * @param soundSpeed m/s
     */
    public static WaveSpace full(Solid solid, LinerModel liner, double soundSpeed) {
        List<WaveBlock> blocks = new ArrayList<>();
        add(blocks, AIR, Cut.without(solid.cavity(), solid.baffles()));
        for (LinerPiece piece : solid.liners()) {
            Cuboid face = face(piece, solid, liner);
            add(blocks, lining(liner), Cut.without(piece.bounds(), with(piece.taken(), face)));
            if (face != null) {
                add(blocks, facing(liner, soundSpeed), Cut.without(face, piece.taken()));
            }
        }
        PortPlace inlet = solid.openingPort();
        PortPlace outlet = solid.roomPort();
        add(blocks, AIR, List.of(inlet.hole(), outlet.hole()));
        return snapped(new WaveSpace(
                soundSpeed, false, blocks, duct(inlet.role(), inlet.hole()), duct(outlet.role(), outlet.hole())));
    }

    /**
     * The section by the fold plane.
     *
     * @param solid of the box
     * @param liner model of every liner piece; not asked for a bare box
     * @param soundSpeed m/s
     */
    public static WaveSpace flat(Solid solid, LinerModel liner, double soundSpeed) {
        Pass pass = solid.passes().get(0);
        double boardToBoard = solid.cavity().size(Axis.Z);
        List<WaveBlock> blocks = new ArrayList<>();
        for (Cuboid air : Cut.without(solid.cavity(), solid.baffles())) {
            blocks.add(new WaveBlock(betweenBroadFaces(pass, liner, soundSpeed), weighted(air, pass.height())));
        }
        for (LinerPiece piece : solid.liners()) {
            if (isCut(piece.bounds(), pass.clear().centre(Axis.Z))) {
                Cuboid face = face(piece, solid, liner);
                for (Cuboid layer : Cut.without(piece.bounds(), with(List.of(), face))) {
                    blocks.add(new WaveBlock(lining(liner), weighted(layer, boardToBoard)));
                }
                if (face != null) {
                    blocks.add(new WaveBlock(facing(liner, soundSpeed), weighted(face, pass.height())));
                }
            }
        }
        Mouth inlet = Mouth.of(solid.openingPort(), solid, Role.FIRST_SIDE);
        Mouth outlet = Mouth.of(solid.roomPort(), solid, Role.LAST_SIDE);
        add(blocks, AIR, List.of(inlet.hole(), outlet.hole()));
        return snapped(new WaveSpace(
                soundSpeed, true, blocks, duct(inlet.role(), inlet.hole()), duct(outlet.role(), outlet.hole())));
    }

    /** Whether the flat section is a poor picture of a box: a port goes through a broad face, or broad faces are lined. */
    public static boolean needsFull(Solid solid) {
        return hasBroadPort(solid) || solid.passes().get(0).broadLiner() > 0;
    }

    /** Whether a port goes through a broad face, so that the flat section has another in its stead. */
    public static boolean hasBroadPort(Solid solid) {
        return isBroad(solid.openingPort()) || isBroad(solid.roomPort());
    }

    /** What the flat section of a box leaves out. */
    public static List<Notice> flatNotices(Solid solid) {
        List<Notice> notices = new ArrayList<>();
        if (isBroad(solid.openingPort())) {
            notices.add(Notice.of(NoticeKind.FLAT_PORT_STANDS_IN, Severity.NOTE, PortPlace.AT_OPENING));
        }
        if (isBroad(solid.roomPort())) {
            notices.add(Notice.of(NoticeKind.FLAT_PORT_STANDS_IN, Severity.NOTE, PortPlace.IN_ROOM));
        }
        Pass pass = solid.passes().get(0);
        if (pass.broadLiner() > 0) {
            notices.add(Notice.of(
                    NoticeKind.FLAT_BROAD_LINING,
                    Severity.NOTE,
                    "",
                    pass.broadLiner(),
                    pass.height(),
                    Unit.MILLIMETRE));
        }
        return notices;
    }

    /** A port as the flat section has it. */
    private record Mouth(Role role, Cuboid hole) {
        static Mouth of(PortPlace port, Solid solid, Role longSide) {
            Cuboid hole = port.hole();
            if (!isBroad(port)) {
                return new Mouth(port.role(), weighted(hole, hole.size(Axis.Z)));
            }
            boolean first = longSide == Role.FIRST_SIDE;
            Cuboid clear =
                    solid.passes().get(first ? 0 : solid.passes().size() - 1).clear();
            Cuboid beside = first
                    ? hole.with(Axis.Y, solid.outer().y0(), clear.y0())
                    : hole.with(Axis.Y, clear.y1(), solid.outer().y1());
            return new Mouth(longSide, weighted(beside, hole.size(Axis.Y)));
        }
    }

    private static boolean isBroad(PortPlace port) {
        return port.port().face().isBroad();
    }

    private static boolean isCut(Cuboid block, double z) {
        return block.z0() < z && z < block.z1();
    }

    private static Cuboid weighted(Cuboid block, double weight) {
        return block.with(Axis.Z, 0, weight);
    }

    private static Medium betweenBroadFaces(Pass pass, LinerModel liner, double soundSpeed) {
        return pass.broadLiner() > 0 ? new BroadLinedMedium(liner, pass.height(), pass.broadLiner(), soundSpeed) : AIR;
    }

    private static Medium lining(LinerModel liner) {
        return new LinerMedium(InvalidValue.present("liner", liner));
    }

    private static Medium facing(LinerModel liner, double soundSpeed) {
        return new FacingMedium(liner, FACING, soundSpeed);
    }

    /** What the facing of a piece takes of it; null if it has none, or lies under another layer. */
    private static Cuboid face(LinerPiece piece, Solid solid, LinerModel liner) {
        return liner != null && liner.faced() && piece.isOutermost(solid.box().linedFaces())
                ? piece.face(FACING)
                : null;
    }

    private static List<Cuboid> with(List<Cuboid> taken, Cuboid one) {
        return one == null
                ? taken
                : Stream.concat(taken.stream(), Stream.of(one)).toList();
    }

    private static void add(List<WaveBlock> blocks, Medium medium, List<Cuboid> places) {
        places.forEach(place -> blocks.add(new WaveBlock(medium, place)));
    }

    /** The duct that goes on from a hole: its first stretch is half the hole's smaller side. */
    private static WavePort duct(Role role, Cuboid hole) {
        Axis normal = role.normal();
        boolean high = !role.isLow();
        double stretch = Math.min(hole.size(normal.u()), hole.size(normal.v())) / 2;
        Cuboid start = high
                ? hole.with(normal, hole.high(normal), hole.high(normal) + stretch)
                : hole.with(normal, hole.low(normal) - stretch, hole.low(normal));
        return new WavePort(normal, high, start);
    }

    private static WaveSpace snapped(WaveSpace space) {
        Snap snap = Snap.of(Stream.concat(
                space.blocks().stream().map(WaveBlock::place),
                Stream.of(space.inlet().start(), space.outlet().start())));
        return new WaveSpace(
                space.soundSpeed(),
                space.flat(),
                space.blocks().stream()
                        .map(block -> new WaveBlock(block.medium(), snap.to(block.place())))
                        .toList(),
                snapped(space.inlet(), snap),
                snapped(space.outlet(), snap));
    }

    private static WavePort snapped(WavePort port, Snap snap) {
        return new WavePort(port.normal(), port.high(), snap.to(port.start()));
    }
}
