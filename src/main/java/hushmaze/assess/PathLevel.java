package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.project.Brief;
import hushmaze.project.FanSound;
import hushmaze.project.MouthPosition;
import hushmaze.project.Room;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathMethods;
import hushmaze.sound.estimate.PathEstimate.Leg;
import hushmaze.sound.flow.BoxFlow;
import hushmaze.sound.flow.FlowLoss;
import hushmaze.sound.flow.FlowNoise;
import hushmaze.sound.room.CrossTalk;
import hushmaze.sound.room.FanLevel;
import hushmaze.sound.room.OutgoingLevel;
import hushmaze.sound.room.RoomLevel;
import hushmaze.sound.wall.WallRoute.Kind;
import java.util.ArrayList;
import java.util.List;

/**
 * What one path brings to the microphone besides the noise through its box, and what others hear through it: pessimistic
 * edge.
 *
 * @param flow noise of the moving air at the room port
 * @param flowLevel that noise at the microphone, third octaves, dB
 * @param fanLevel of the fan at the microphone; negative infinity without one
 * @param talkLevel from the other room at the microphone; negative infinity without one
 * @param heard what others hear
 */
record PathLevel(FlowNoise flow, Spectrum flowLevel, Spectrum fanLevel, Spectrum talkLevel, List<Heard> heard) {
    /** What a pass is counted to take off the noise of moving air, as a share of the estimate: its pessimistic edge. */
    private static final double LOW_PASS = 0.6;

    static PathLevel of(Room room, VentPath vent, Solid solid, PathAir moving, BoxLoss loss, AirState air) {
        return of(room, vent, solid, moving, loss.methods(), loss.thirds().low(), air);
    }

    /**
     * The same of a box of which only one edge is known.
     *
     * @param methods the path by every method that was run
     * @param low pessimistic edge of what the box loses, third octaves, dB
     */
    static PathLevel of(
            Room room, VentPath vent, Solid solid, PathAir moving, PathMethods methods, Spectrum low, AirState air) {
        Brief brief = vent.brief();
        MouthPosition mouth = brief.roomMouthOrMiddle();
        FlowNoise flow = flow(solid, moving, methods);
        List<Heard> heard = new ArrayList<>();
        if (brief.outgoing() != null) {
            heard.add(new Heard(
                    Heard.Kind.NEIGHBOURS,
                    OutgoingLevel.of(
                            brief.outgoing(), vent.name(), brief.opening().area(), low)));
        }
        Spectrum talk = silence();
        if (brief.sharedDuct() != null) {
            CrossTalk.End here = new CrossTalk.End(vent.name(), brief.opening().area(), low);
            talk = CrossTalk.fromOther(brief.sharedDuct(), room, mouth, here, air.soundSpeed())
                    .chain()
                    .level();
            if (brief.sharedDuct().levelHere() != null) {
                heard.add(new Heard(
                        Heard.Kind.OTHER_ROOM, CrossTalk.toOther(brief.sharedDuct(), here, air.soundSpeed())));
            }
        }
        return new PathLevel(
                flow, RoomLevel.fromPower(flow.power(), room, mouth), fan(brief.fan(), low, room, mouth), talk, heard);
    }

    /** Everything this path brings to the microphone when its box loses this, third octaves, dB. */
    Spectrum total(Spectrum noise, Spectrum lossOfBox) {
        return noise.minus(lossOfBox).energyPlus(flowLevel).energyPlus(fanLevel).energyPlus(talkLevel);
    }

    /** The ways to the microphone; noise through the bare opening, and what the box loses of it. */
    List<SoundRoute> routes(Spectrum noise, BoxLoss loss) {
        List<SoundRoute> routes = new ArrayList<>();
        routes.add(new SoundRoute(SoundRoute.Kind.PATH, noise.minus(loss.path().low())));
        // What path and walls let through together, less the path, is shared out over the walls' parts.
        Spectrum walls = noise.minus(loss.thirds().low())
                .energyMinus(noise.minus(loss.path().low()));
        Spectrum boards = loss.lowWalls().lossThrough(Kind.BOARDS);
        Spectrum joints = loss.lowWalls()
                .lossThrough(Kind.JOINTS)
                .parallelLoss(loss.lowWalls().lossThrough(Kind.COVER));
        Spectrum all = boards.parallelLoss(joints);
        routes.add(new SoundRoute(SoundRoute.Kind.BOARDS, walls.plus(all.minus(boards))));
        routes.add(new SoundRoute(SoundRoute.Kind.JOINTS, walls.plus(all.minus(joints))));
        routes.add(new SoundRoute(SoundRoute.Kind.FLOW, flowLevel));
        routes.add(new SoundRoute(SoundRoute.Kind.FAN, fanLevel));
        routes.add(new SoundRoute(SoundRoute.Kind.TALK, talkLevel));
        return routes;
    }

    private static Spectrum fan(FanSound fan, Spectrum low, Room room, MouthPosition mouth) {
        return fan == null ? silence() : RoomLevel.fromPower(FanLevel.intoRoom(fan, low), room, mouth);
    }

    private static FlowNoise flow(Solid solid, PathAir moving, PathMethods methods) {
        List<FlowLoss> losses = moving.losses().stream()
                .map(l -> new FlowLoss(l.key(), l.part(), Math.max(0, l.zetaHigh()), l.velocity()))
                .toList();
        List<Leg> legs = methods.estimate().legs().stream()
                .map(leg -> new Leg(leg.pass(), times(leg.entry()), times(leg.along())))
                .toList();
        return BoxFlow.of(
                solid, moving.flow(), BoxFlow.passLosses(legs), losses, BoxFlow.mouth(solid, moving.flow(), losses));
    }

    private static Spectrum times(Spectrum lossThirds) {
        return Spectrum.of(lossThirds.bands(), i -> LOW_PASS * lossThirds.value(i));
    }

    private static Spectrum silence() {
        return Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
    }
}
